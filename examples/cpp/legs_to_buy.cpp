// SPDX-License-Identifier: MIT
// How many legs of lamb to buy for so many guests, with nothing but the built-in tables:
// `legs_to_buy 84`.

#include <iostream>
#include <platewright/book.hpp>
#include <platewright/yield.hpp>

using namespace platewright;
using namespace platewright::literals;

int main(int count, char** arguments) {
  if (count != 2) {
    std::cerr << "legs_to_buy GUESTS\n";
    return 2;
  }
  try {
    const Tables tables = built_in_tables();
    const Ladder& ladder = tables.yields.row("lamb leg, bone-in, roasted").ladder;
    const WeightToBuy need = weight_to_buy(ladder, read_number(arguments[1]), 6_oz);
    const PiecesToBuy legs = pieces_to_buy(ladder, need, 7.5_lb);
    std::cout << "6 oz on the plate for each takes "
              << as_decimal(need.purchased.in(units::pound), 2, Rounding::up)
              << " lb as purchased: " << legs.pieces << " legs of 7.5 lb\n";
    for (const LadderStep& step : ladder.walk(need.purchased)) {
      std::cout << "  " << name_of(step.stage) << ": "
                << as_decimal(step.mass.in(units::pound), 2, Rounding::down) << " lb\n";
    }
  } catch (const Failure& failure) {
    std::cerr << failure.what() << "\n";
    return 1;
  }
}
