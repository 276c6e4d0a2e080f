// SPDX-License-Identifier: MIT
#pragma once
// Rules for steps of the FDA Food Code 2022 (3-501.13, 3-501.14, 3-501.16, 3-403.11), and the rate
// of thawing of the USDA FSIS.

#include "support/safety_rows.hpp"

namespace platewright::test {

inline Mass pounds(int count) {
  return Mass::of(count, units::pound);
}

inline SafetyTable step_rows() {
  const auto below = [](int degrees) {
    return BoundTemperature{Temperature::fahrenheit(degrees), Bound::at_most};
  };
  const auto above = [](int degrees) {
    return BoundTemperature{Temperature::fahrenheit(degrees), Bound::at_least};
  };
  const auto hours = [](int count) { return Duration::of(count, units::hour); };
  const std::string code = "FDA Food Code 2022";
  SafetyTable out = safety_rows();
  const auto add = [&](StepKind kind, std::optional<StepPlace> where, StepDemand demand,
                       const std::optional<BoundTemperature>& temperature,
                       const std::optional<Duration>& within, const char* row) {
    out.step_rules.push_back({kind, where, demand, temperature, within, code, row, ""});
  };
  add(StepKind::thaw, StepPlace::refrigerator, StepDemand::stands_at, below(41), {}, "3-501.13");
  add(StepKind::thaw, StepPlace::counter, StepDemand::never, {}, {}, "3-501.13");
  add(StepKind::marinate, {}, StepDemand::stands_at, below(41), {}, "3-501.16(A)(2)");
  add(StepKind::marinate, {}, StepDemand::told, {}, {}, "");
  add(StepKind::chill, {}, StepDemand::reaches, below(70), hours(2), "3-501.14(A)");
  add(StepKind::chill, {}, StepDemand::reaches, below(41), hours(6), "3-501.14(A)");
  add(StepKind::reheat, {}, StepDemand::reaches, above(165), hours(2), "3-403.11(A)");
  add(StepKind::hold_hot, {}, StepDemand::stands_at, above(135), {}, "3-501.16(A)(1)");
  out.thawing_rates = {
      {StepPlace::refrigerator, hours(24), pounds(4), pounds(5), "USDA FSIS", "", ""}};
  return out;
}

}  // namespace platewright::test
