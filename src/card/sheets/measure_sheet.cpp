#include "platewright/card/measure_sheet.hpp"

#include "card/sheets/shared.hpp"

namespace platewright {

Sheet measure_sheet(const MeasureAnswer& answer, const KitchenView& view) {
  Sheet sheet;
  sheet.kind = "measure";
  sheet.title = amount_text(answer.asked);
  if (!answer.ingredient.empty()) sheet.title += " of " + answer.ingredient;
  Facts facts{"measure", "", {}};
  const Amount& shown = answer.converted.value_or(answer.asked);
  const std::string& symbol = shown.unit.symbol_for(shown.number);
  facts.add("rounded", "Rounded",
            figure_as(as_short_decimal(shown.number, 3) + " " + symbol, shown.number,
                      as_short_decimal(shown.number, 3), shown.unit.name()));
  facts.add("exact", "Exact", words(as_exact(shown.number) + " " + symbol));
  if (!has_finite_decimal(shown.number)) {
    facts.add("repeating", "  as a decimal",
              words(as_repeating_decimal(shown.number) + " " + symbol));
  }
  const bool measured =
      shown.dimension() == UnitDimension::volume || shown.dimension() == UnitDimension::mass;
  if (measured) {
    Cell kitchen = view.measure(shown);
    if (shown.dimension() == UnitDimension::volume) kitchen.text = view.measure_with_error(shown);
    facts.add("kitchen", "In the kitchen", std::move(kitchen));
  }
  std::size_t number = 0;
  for (const std::string& source : answer.sources) {
    facts.add("source_" + std::to_string(++number), "Through", words(source));
  }
  sheet.add(std::move(facts));
  return sheet;
}

}  // namespace platewright
