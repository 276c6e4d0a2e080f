// SPDX-License-Identifier: MIT
// The tables of FSIS Appendix A (2021) and of FDA Food Code 2022, 3-401.11(B): every row is met by
// a curve that just meets it and missed by one just below.

#include <vector>

#include "platewright/book/tables.hpp"
#include "support/catch.hpp"
#include "support/roast_terms.hpp"
#include "support/tables.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// Cold, then `held` at a temperature, then cold, with a reading every ten minutes or more often.
CoreCurve held_at(const Temperature& at, const Duration& held) {
  const Temperature cold = fahrenheit(100);
  std::vector<CoreReading> readings{{minutes(0), cold}, {minutes(10), at}};
  const Duration until = minutes(10) + held;
  while (readings.back().at < until) {
    readings.push_back({std::min(until, Duration(readings.back().at + minutes(10))), at});
  }
  readings.push_back({until + minutes(1), cold});
  return CoreCurve::of(std::move(readings));
}

void each_row_just_met(const LethalityStandard& standard) {
  const Duration second = Duration::of(1, units::second);
  const TemperatureStep little = TemperatureStep::of(fraction(1, 10), units::fahrenheit_step);
  for (const LethalityStep& step : standard.steps) {
    INFO(standard.food << " " << standard.reduction << " "
                       << nearest_double(step.at.in_fahrenheit()) << " F");
    const LethalityCheck met = check_lethality(held_at(step.at, step.hold), standard);
    CHECK(met.met());
    // A tenth of a degree below, the next lower step counts, whose hold is longer or, where both
    // are instant, no longer.
    const LethalityCheck below = check_lethality(held_at(step.at - little, step.hold), standard);
    const bool lower_is_as_short =
        &step != &standard.steps.front() && (&step - 1)->hold <= step.hold;
    CHECK(below.met().has_value() == lower_is_as_short);
    if (step.hold <= Duration{}) continue;
    const LethalityCheck shorter = check_lethality(held_at(step.at, step.hold - second), standard);
    CHECK_FALSE(shorter.met());
    REQUIRE(shorter.nearest());
    CHECK(shorter.nearest()->missing() <= second);
  }
}

}  // namespace

TEST_CASE("every row of Appendix A and of the roast holds") {
  CHECK(the_tables().lethality.size() == 26U);
  for (const LethalityStandard& standard : the_tables().lethality) each_row_just_met(standard);
  each_row_just_met(roast_standard(the_tables().safety));
}

TEST_CASE("the tables as they are printed") {
  // USDA FSIS, Revised Appendix A (2021): rows typed in once more.
  const auto hold = [](const char* food, const char* reduction, int fat, int degrees) {
    std::optional<Rational> share;
    if (fat > 0) share = fraction(fat, 100);
    const auto standard = standard_for(the_tables().lethality, food, reduction, share);
    for (const LethalityStep& step : standard.steps) {
      if (step.at == fahrenheit(degrees)) return step.hold;
    }
    return Duration::of(-1, units::second);
  };
  CHECK(hold("meat", "6.5 log", 0, 130) == minutes(112));
  CHECK(hold("meat", "7 log", 0, 130) == minutes(121));
  CHECK(hold("meat", "6.5 log", 0, 145) == minutes(4));
  CHECK(hold("meat", "7 log", 0, 157) == Duration::of(15, units::second));
  CHECK(hold("meat", "7 log", 0, 158) == Duration{});
  CHECK(hold("chicken", "7 log", 1, 136) == minutes(fraction(633, 10)));
  CHECK(hold("chicken", "7 log", 12, 136) == minutes(fraction(814, 10)));
  CHECK(hold("turkey", "7 log", 1, 136) == minutes(64));
  CHECK(hold("turkey", "7 log", 12, 165) == Duration{});
}

TEST_CASE("hotter is never longer") {
  std::size_t rows = 0;
  for (const LethalityStandard& standard : the_tables().lethality) {
    rows += standard.steps.size();
    for (std::size_t i = 1; i < standard.steps.size(); ++i) {
      CHECK(standard.steps[i - 1].at < standard.steps[i].at);
      CHECK(standard.steps[i].hold <= standard.steps[i - 1].hold);
    }
  }
  CHECK(rows == 2 * 31 + 2 * 360U);  // two of meat, one of each bird, as printed
}
