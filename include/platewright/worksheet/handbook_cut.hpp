// SPDX-License-Identifier: MIT
#pragma once
// Whether the row of a table is of the cut that was tested: a yield of meat with its bone is not
// one of meat without it.

#include <optional>
#include <string>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/worksheet/handbook.hpp"
#include "platewright/yield/yield_table.hpp"

namespace platewright {

/// Whether the bone is in what was tested; nothing where neither the sheet nor a weight says so.
struct TestedBone {
  std::optional<bool> purchased;
  std::optional<bool> oven_ready;
};

/// The word for how goods are bought that stands between commas of a name, as in `lamb leg,
/// bone-in`; empty where none does.
std::string_view bought_in(std::string_view name);

/// `bought` is the word for how the goods were bought, empty where the sheet has none; then a bone
/// that was cut off says that there was one. Where some bone was cut off and some came off after
/// cooking, nobody knows what went into the oven.
TestedBone tested_bone(std::string_view bought, const std::optional<TrimTestResult>& trim,
                       const std::optional<CookingLossResult>& cooking);

/// Whether the comparison is one with another cut: what its rung begins with has the bone in it and
/// what the test begins with has not, or the other way round.
bool is_of_another_cut(const HandbookComparison& comparison, const Cut& cut,
                       const TestedBone& tested);

/// The row that differs from this one in how the goods are bought alone: `beef rib roast, boneless,
/// roasted` for `beef rib roast, bone-in, roasted`. Empty where the table has none.
std::string bought_otherwise(const YieldTable& table, const Cut& cut);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/handbook_cut.hpp"
#endif
