// SPDX-License-Identifier: MIT
#pragma once
// Some rows of the FDA Food Code 2022 (3-401.11, 3-501.16, 3-501.19) and of the USDA FSIS chart of
// safe minimum internal temperatures.

#include "platewright/quantity/units.hpp"
#include "platewright/safety/safety_table.hpp"

namespace platewright::test {

inline SafetyTable safety_rows() {
  const auto fahrenheit = [](int degrees) { return Temperature::fahrenheit(degrees); };
  const auto minutes = [](int count) { return Duration::of(count, units::minute); };
  const std::string code = "FDA Food Code 2022";
  const std::string chart = "USDA FSIS";
  SafetyTable out;
  out.minimums = {{"steaks, chops and roasts",
                   FoodKind("whole cut"),
                   chart,
                   Audience::consumer,
                   fahrenheit(145),
                   minutes(3),
                   {},
                   chart,
                   "",
                   ""},
                  {"ham, uncooked",
                   FoodKind("cured"),
                   chart,
                   Audience::consumer,
                   fahrenheit(145),
                   minutes(3),
                   {},
                   chart,
                   "",
                   ""},
                  {"poultry",
                   FoodKind("poultry"),
                   chart,
                   Audience::consumer,
                   fahrenheit(165),
                   {},
                   {},
                   chart,
                   "",
                   ""},
                  {"intact meat",
                   FoodKind("whole cut"),
                   code,
                   Audience::food_service,
                   fahrenheit(145),
                   {},
                   Duration::of(15, units::second),
                   code,
                   "3-401.11(A)(1)",
                   ""},
                  {"raw eggs",
                   FoodKind("eggs"),
                   code,
                   Audience::food_service,
                   fahrenheit(145),
                   {},
                   Duration::of(15, units::second),
                   code,
                   "3-401.11(A)(1)",
                   ""},
                  {"egg dishes",
                   FoodKind("eggs"),
                   chart,
                   Audience::consumer,
                   fahrenheit(160),
                   {},
                   {},
                   chart,
                   "",
                   ""},
                  {"poultry",
                   FoodKind("poultry"),
                   code,
                   Audience::food_service,
                   fahrenheit(165),
                   {},
                   {},
                   code,
                   "3-401.11(A)(3)",
                   ""},
                  {"stuffed fish, meat or poultry",
                   FoodKind("stuffed"),
                   code,
                   Audience::food_service,
                   fahrenheit(165),
                   {},
                   {},
                   code,
                   "3-401.11(A)(3)",
                   ""},
                  {"ground meat",
                   FoodKind("ground"),
                   code,
                   Audience::food_service,
                   fahrenheit(155),
                   {},
                   Duration::of(17, units::second),
                   code,
                   "3-401.11(A)(2)",
                   ""},
                  {"ground meat",
                   FoodKind("ground"),
                   chart,
                   Audience::consumer,
                   fahrenheit(160),
                   {},
                   {},
                   chart,
                   "",
                   ""}};
  out.roast_holds = {{fahrenheit(130), minutes(112), code, "3-401.11(B)"},
                     {fahrenheit(131), minutes(89), code, "3-401.11(B)"},
                     {fahrenheit(133), minutes(56), code, "3-401.11(B)"},
                     {fahrenheit(158), Duration{}, code, "3-401.11(B)"}};
  const auto least = [&](int degrees) {
    return BoundTemperature{fahrenheit(degrees), Bound::at_least};
  };
  out.limits = {{"hot holding, minimum", "hot holding", least(135), {}, code, "3-501.16(A)(1)", ""},
                {"time instead of temperature, up to 4 h", "time as control, hot", least(135),
                 minutes(240), code, "3-501.19(B)", ""},
                {"", "oven, still, small roast", least(350), {}, code, "3-401.11(B)(2)", ""},
                {"", "oven, still, large roast", least(250), {}, code, "3-401.11(B)(2)", ""},
                {"", "oven, convection, small roast", least(325), {}, code, "3-401.11(B)(2)", ""},
                {"", "oven, convection, large roast", least(250), {}, code, "3-401.11(B)(2)", ""},
                {"",
                 "oven, humid",
                 BoundTemperature{fahrenheit(250), Bound::at_most},
                 {},
                 code,
                 "3-401.11(B)(2)",
                 ""}};
  const auto may_stay_below = [&](const char* kind, Undercooked rule) {
    out.undercooked_kinds.push_back({FoodKind(kind), rule, code, "3-401.11(B), (D)"});
  };
  may_stay_below("whole cut", Undercooked::held_or_advised);
  may_stay_below("cured", Undercooked::held_or_advised);
  may_stay_below("eggs", Undercooked::advised);
  return out;
}

}  // namespace platewright::test
