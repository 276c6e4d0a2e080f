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
  out.minimums = {
      {"steaks, chops and roasts",
       "whole cut",
       chart,
       Audience::consumer,
       fahrenheit(145),
       minutes(3),
       {},
       chart,
       "",
       ""},
      {"ham, uncooked",
       "cured",
       chart,
       Audience::consumer,
       fahrenheit(145),
       minutes(3),
       {},
       chart,
       "",
       ""},
      {"poultry", "poultry", chart, Audience::consumer, fahrenheit(165), {}, {}, chart, "", ""},
      {"intact meat",
       "whole cut",
       code,
       Audience::food_service,
       fahrenheit(145),
       {},
       Duration::of(15, units::second),
       code,
       "3-401.11(A)(1)",
       ""},
      {"raw eggs",
       "eggs",
       code,
       Audience::food_service,
       fahrenheit(145),
       {},
       Duration::of(15, units::second),
       code,
       "3-401.11(A)(1)",
       ""},
      {"egg dishes", "eggs", chart, Audience::consumer, fahrenheit(160), {}, {}, chart, "", ""},
      {"poultry",
       "poultry",
       code,
       Audience::food_service,
       fahrenheit(165),
       {},
       {},
       code,
       "3-401.11(A)(3)",
       ""},
      {"stuffed fish, meat or poultry",
       "stuffed",
       code,
       Audience::food_service,
       fahrenheit(165),
       {},
       {},
       code,
       "3-401.11(A)(3)",
       ""},
      {"ground meat",
       "ground",
       code,
       Audience::food_service,
       fahrenheit(155),
       {},
       Duration::of(17, units::second),
       code,
       "3-401.11(A)(2)",
       ""},
      {"ground meat", "ground", chart, Audience::consumer, fahrenheit(160), {}, {}, chart, "", ""}};
  out.roast_holds = {{fahrenheit(130), minutes(112), code, "3-401.11(B)"},
                     {fahrenheit(131), minutes(89), code, "3-401.11(B)"},
                     {fahrenheit(133), minutes(56), code, "3-401.11(B)"},
                     {fahrenheit(158), Duration{}, code, "3-401.11(B)"}};
  out.limits = {
      {"hot holding, minimum", "hot holding", fahrenheit(135), {}, code, "3-501.16(A)(1)", ""},
      {"time instead of temperature, up to 4 h", "time as control, hot", fahrenheit(135),
       minutes(240), code, "3-501.19(B)", ""},
      {"", "oven, still, small roast", fahrenheit(350), {}, code, "3-401.11(B)(2)", ""},
      {"", "oven, still, large roast", fahrenheit(250), {}, code, "3-401.11(B)(2)", ""},
      {"", "oven, convection, small roast", fahrenheit(325), {}, code, "3-401.11(B)(2)", ""},
      {"", "oven, convection, large roast", fahrenheit(250), {}, code, "3-401.11(B)(2)", ""},
      {"", "oven, humid", fahrenheit(250), {}, code, "3-401.11(B)(2)", ""}};
  return out;
}

}  // namespace platewright::test
