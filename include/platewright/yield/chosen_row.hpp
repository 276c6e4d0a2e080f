// SPDX-License-Identifier: MIT
#pragma once
// One cut, several rows: the user says how to choose, and sees what was not chosen.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/nearest.hpp"
#include "platewright/yield/yield_table.hpp"

namespace platewright {

/// `careful` is the row of the lowest yield, so that enough is bought; `middle` the one in the
/// middle, the lower of the two where their number is even.
enum class RowChoice { careful, middle };

/// Rows cooked like the one that the words mean, or rows of the same goods cooked in any way.
enum class RowMethods { alike, any };

struct ChosenRow {
  YieldRow row;
  /// All rows of the same goods that may be meant, the careful one first; empty for a grain and for
  /// an ingredient with a yield of its own.
  std::vector<YieldRow> among;
  /// Where the row's last weight still holds the bone: the careful row of the same goods that takes
  /// it out, where there is one.
  std::optional<YieldRow> takes_out;
  /// What whoever uses the row must know of its figures.
  std::string note;
};

/// Rows whose yields lie further apart than this are named wherever one of them is used (common
/// practice, no source).
const Rational& far_apart();

/// Whether one of the rows that the choice was made from lies further than `far_apart` from it.
bool lies_far_apart(const ChosenRow& chosen);

namespace detail {

inline YieldRow row_of(const Cut& cut) {
  return {cut.name, YieldKind::cut, cut.ladder};
}

/// True where every word of `wanted` is part of `name`.
bool has_words(std::string_view name, std::string_view wanted);

}  // namespace detail

/// The row of that name, with the rows of the same goods: cuts that are cooked like it, produce
/// however it is trimmed. Throws Failure as `YieldTable::row` does.
ChosenRow row_named(const YieldTable& table, std::string_view name);

/// Chooses among the rows of the goods that the words mean: those of the row of that name, which
/// are cooked alike unless `methods` is `any`; where no row has that name, those whose name goes on
/// from the words, or has all of them. Throws Failure where there is none.
ChosenRow choose_cut(const YieldTable& table, std::string_view words, RowChoice choice,
                     RowMethods methods = RowMethods::alike);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/chosen_row.hpp"
#endif
