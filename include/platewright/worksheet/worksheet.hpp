#pragma once
// A worksheet as it was read and worked: a trim test, a cooking loss test, or the two in a row.

#include <optional>
#include <string>
#include <vector>

#include "platewright/quantity/currency.hpp"
#include "platewright/worksheet/check_answers.hpp"
#include "platewright/worksheet/cooking_loss_working.hpp"
#include "platewright/worksheet/handbook.hpp"
#include "platewright/worksheet/trim_working.hpp"
#include "platewright/yield/yield_table.hpp"

namespace platewright {

/// The row of the table that the tests are held against.
struct HandbookRow {
  std::string name;
  std::vector<HandbookComparison> comparisons;
};

struct Worksheet {
  std::string name;
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
