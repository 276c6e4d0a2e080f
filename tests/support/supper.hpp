// SPDX-License-Identifier: MIT
#pragma once
// An occasion with its recipes and prices, for the tests of everything that needs a whole one.

#include "platewright/event/event.hpp"
#include "support/kitchen.hpp"

namespace platewright::test {

namespace detail {

inline Ingredient stated(Ingredient out, std::vector<std::string> allergens) {
  out.allergens = std::move(allergens);
  return out;
}

inline Ingredient lamb_leg() {
  Ingredient out = ingredient("lamb leg");
  out.is_cut = true;
  out.safety = FoodKind("whole cut");
  Rung cooked;
  cooked.to = Stage::served;
  cooked.yield = fraction(1, 2);
  cooked.holds = {Loss::bone, Loss::cooking};
  out.ladder = Ladder({cooked});
  out.yield_name = "lamb leg, bone-in, roasted";
  return out;
}

inline Recipe roast_lamb() {
  Recipe out = recipe_for(
      "roast lamb", 10,
      {line("lamb leg", "7.5 lb"), line("garlic", "8 cloves", ScalingRule::by_surface),
       line("olive oil", "2 tbsp"), line("green sauce", "2 cups"), line("salt", "to taste")});
  out.tested = TestedPieces{1, "leg", Mass::of(fraction(15, 2), units::pound)};
  out.oven = {{Temperature::fahrenheit(450), time_of("25 min"), std::nullopt},
              {Temperature::fahrenheit(325), std::nullopt, Temperature::fahrenheit(130)}};
  out.rest = time_of("20 min");
  out.steps = {{"Rub all over; cover; refrigerate.",
                {},
                TimeSpan{time_of("12 h"), time_of("48 h")},
                false,
                {}},
               {"Roast.", {}, std::nullopt, false, {}}};
  return out;
}

}  // namespace detail

inline TestKitchen supper_kitchen() {
  TestKitchen out;
  Purchase leg = piece("7.5 lb", "67.50", "the butcher");
  leg.days = 3;
  out.add(detail::stated(detail::lamb_leg(), {}), leg);
  Ingredient garlic = ingredient("garlic", fraction(3, 4));
  garlic.weights.rows = {weighing("1 clove", grams(3))};
  out.add(garlic, pack("1 kg", "8.00"));
  out.add(detail::stated(ingredient("olive oil"), {}), pack("1 gal", "32.00"));
  out.add(detail::stated(ingredient("anchovy"), {"fish"}), pack("4 oz", "3.00", "the fishmonger"));
  Purchase bunch = pack("1 bunch", "1.80");
  bunch.weighs = amount("2 oz");
  out.add(detail::stated(ingredient("parsley", fraction(1, 2)), {}), bunch);
  out.add(detail::stated(ingredient("flour"), {"wheat"}), pack("25 lb", "20.00"));
  out.add(detail::stated(ingredient("salt"), {}));
  out.add(detail::stated(ingredient("water"), {}));
  out.prices.entries["water"].free = true;

  Recipe paste = recipe_making("anchovy paste", "1 cup",
                               {line("anchovy", "4 oz"), line("olive oil", "1/2 cup")});
  out.add(paste);
  Recipe sauce = recipe_making(
      "green sauce", "1 qt",
      {line("anchovy paste", "1/4 cup"), line("parsley", "4 oz"), line("olive oil", "2 cups"),
       line("water", "1/2 cup"), line("salt", "to taste")});
  sauce.steps = {{"Let it stand.", {}, TimeSpan{time_of("1 h"), time_of("2 h")}, false, {}}};
  out.add(sauce);
  out.add(detail::roast_lamb());
  out.add(recipe_for(
      "flat bread", 20,
      {line("flour", "2-3 lb"), line("garlic", "10 cloves"), line("anchovy paste", "1/2 cup")}));
  return out;
}

/// 79 portions: 70 adults, 10 children who eat and pay half, 4 crew who pay nothing.
inline Event supper() {
  Event out;
  out.name = "an autumn supper";
  out.at = read_local_time("2027-10-09 18:30");
  out.guests = {
      {"adults", 70, 1, 1}, {"children", 10, fraction(1, 2), fraction(1, 2)}, {"crew", 4, 1, 0}};
  out.menu = {{"roast lamb", fraction(2, 5), {}}, {"flat bread", 1, {}}};
  out.over = fraction(1, 20);
  return out;
}

}  // namespace platewright::test
