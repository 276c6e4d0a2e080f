// SPDX-License-Identifier: MIT
#pragma once
// A worksheet as it was read and worked: a trim test, a cooking loss test, or the two in a row.

#include <optional>
#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/quantity/currency.hpp"
#include "platewright/worksheet/check_answers.hpp"
#include "platewright/worksheet/cooking_loss_working.hpp"
#include "platewright/worksheet/handbook_cut.hpp"
#include "platewright/worksheet/trim_working.hpp"

namespace platewright {

/// The row of the table that the tests are held against.
struct HandbookRow {
  std::string name;
  std::vector<HandbookComparison> comparisons;
  /// How the row's goods are bought, as in `bone-in`; empty where it says nothing.
  std::string bought;
  /// Where a comparison is one with another cut: the row that it is to be held against, empty where
  /// the table has none.
  std::string instead;

  bool has_other_cut() const;
};

struct Worksheet {
  std::string name;
  /// How the goods were bought, as in `bone-in`; empty where the sheet does not say.
  std::string bought;
  Currency currency = Currency("USD");
  WeighedIn weights = WeighedIn::pounds;
  /// A purchase price that the factors are used on.
  std::optional<PricePerMass> new_price;
  std::optional<TrimTestResult> trim;
  Working trim_working;
  std::vector<MarkedAnswer> trim_answers;
  std::optional<CookingLossResult> cooking;
  Working cooking_working;
  std::vector<MarkedAnswer> cooking_answers;
  std::optional<HandbookRow> handbook;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/worksheet.hpp"
#endif
