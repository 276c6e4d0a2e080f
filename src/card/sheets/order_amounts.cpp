// SPDX-License-Identifier: MIT
#include "card/sheets/order_amounts.hpp"

#include <array>
#include <string_view>

#include "card/sheets/shared.hpp"

namespace platewright::card {
namespace {

/// From how many of a small unit on the larger one is the one that a cook speaks of.
struct LargerUnit {
  std::string_view name;
  int from;
  std::string_view larger;
  std::string_view symbol;
  int holds;  ///< small ones in the larger
};

constexpr std::array<LargerUnit, 4> larger_units{{
    {"ounce", 100, "pound", "lb", 16},
    {"gram", 1000, "kilogram", "kg", 1000},
    {"US fluid ounce", 128, "US quart", "qt", 32},
    {"millilitre", 1000, "litre", "L", 1000},
}};

Cell whole_things(const Amount& amount, Rounding rounding) {
  const Rational whole(steps_of(amount.number, Rational(1), rounding));
  const std::string shown = as_decimal(whole, 0);
  return figure_as(shown + " " + amount.unit.symbol_for(whole == 1 ? 1 : 2), amount.number, shown,
                   amount.unit.name());
}

Cell in_larger(const Amount& amount, const LargerUnit& unit, Rounding rounding) {
  const Rational number = amount.number / unit.holds;
  const std::string shown = as_short_decimal(number, 2, rounding);
  return figure_as(shown + " " + std::string(unit.symbol), number, shown, std::string(unit.larger));
}

}  // namespace

std::string packs_text(const OrderLine& line) {
  const std::string count = line.packs.str() + " \u00D7 ";
  if (line.purchase.by_the_piece) {
    return count + "about " + as_short_decimal(line.purchase.content.number, 2) + " " +
           line.purchase.content.unit.symbol_for(line.purchase.content.number);
  }
  return count + line.purchase.pack_text;
}

std::pair<Cell, Cell> needed_and_left(const OrderLine& line) {
  if (line.need.dimension() == UnitDimension::pieces) {
    return {whole_things(line.need, Rounding::up), whole_things(line.left_over, Rounding::down)};
  }
  for (const LargerUnit& unit : larger_units) {
    if (line.ordered.unit.name() != unit.name || line.ordered.number < unit.from) continue;
    return {in_larger(line.need, unit, Rounding::up),
            in_larger(line.left_over, unit, Rounding::down)};
  }
  return {amount_cell(line.need, Rounding::up), amount_cell(line.left_over, Rounding::down)};
}

}  // namespace platewright::card
