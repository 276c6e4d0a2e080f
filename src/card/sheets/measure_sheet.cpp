// SPDX-License-Identifier: MIT
#include "platewright/card/measure_sheet.hpp"

#include "card/sheets/shared.hpp"

namespace platewright {
namespace {

/// The exact number in its two forms: the decimal with its repeating part in brackets, and the
/// fraction. A whole number has but one.
void add_exact(Facts& facts, const Amount& shown) {
  const std::string unit = " " + shown.unit.symbol_for(shown.number);
  facts.add("exact", "Exact", words(as_exact(shown.number) + unit));
  if (is_whole(shown.number)) return;
  if (has_finite_decimal(shown.number)) {
    facts.add("fraction", "  as a fraction", words(as_fraction(shown.number) + unit));
    return;
  }
  const std::string decimal = as_repeating_decimal(shown.number);
  const bool is_marked = decimal.find('(') != std::string::npos;
  facts.add("repeating", "  as a decimal",
            words(is_marked ? decimal + unit : "repeats after more than 60 digits"));
}

/// Whose cup it is, where several measuring systems have one.
void add_unit(Facts& facts, const std::string& key, const std::string& label, const Unit& unit) {
  if (!unit.record().bare.empty()) facts.add(key, label, words(unit.name()));
}

/// `1 cup weighs 125 g: USDA SR28, NDB 20081 seq 1`.
std::string row_text(const MeasureWeight& row) {
  return amount_text(row.measure) + " weighs " + as_short_decimal(row.weighs.in(units::gram), 2) +
         " g: " + row.source + (row.row.empty() ? "" : ", " + row.row);
}

void add_weights(Facts& facts, const MeasureAnswer& answer) {
  std::size_t number = 0;
  for (const MeasureWeight* row : answer.through) {
    facts.add("source_" + std::to_string(++number), "Through", words(row_text(*row)));
  }
  number = 0;
  for (const OtherAnswer& other : answer.others) {
    const Amount& amount = other.amount;
    facts.add("other_" + std::to_string(++number), "Not through",
              words(row_text(*other.row) + "; it would give " + as_short_decimal(amount.number, 3) +
                    " " + amount.unit.symbol_for(amount.number) + " (" +
                    signed_percent_text(other.difference) + ")"));
  }
}

}  // namespace

Sheet measure_sheet(const MeasureAnswer& answer, const KitchenView& view) {
  Sheet sheet(SheetKind::measure);
  sheet.title = amount_text(answer.asked);
  if (!answer.ingredient.empty()) sheet.title += " of " + answer.ingredient;
  Facts facts{"measure", "", {}};
  const Amount& shown = answer.converted.value_or(answer.asked);
  add_unit(facts, "asked_unit", "Asked in", answer.asked.unit);
  if (answer.converted) add_unit(facts, "unit", "Given in", shown.unit);
  facts.add("rounded", "Rounded", card::amount_cell(shown, Rounding::half_up, 3));
  add_exact(facts, shown);
  if (shown.dimension() == UnitDimension::volume || shown.dimension() == UnitDimension::mass) {
    facts.add("kitchen", "In the kitchen", view.measure(shown));
    facts.add("measures", "Measures", words(view.described()));
  }
  add_weights(facts, answer);
  sheet.add(std::move(facts));
  return sheet;
}

}  // namespace platewright
