// SPDX-License-Identifier: MIT
#pragma once
// Steps that say their kind, made up at random.

#include <rapidcheck.h>

#include "platewright/recipe/recipe.hpp"

namespace platewright::test {

namespace detail {

inline Temperature random_temperature() {
  return Temperature::fahrenheit(
      *rc::gen::element<std::int64_t>(34, 38, 41, 42, 50, 70, 75, 110, 134, 135, 140, 165, 170));
}

inline StepControl random_control() {
  const auto index = *rc::gen::inRange<std::size_t>(0, all_step_kinds.size());
  StepControl out{all_step_kinds.at(index)};
  if (takes_place(out.kind) && *rc::gen::arbitrary<bool>()) {
    out.where = all_step_places.at(*rc::gen::inRange<std::size_t>(0, all_step_places.size()));
  }
  if (takes_temperature(out.kind) && *rc::gen::arbitrary<bool>()) out.at = random_temperature();
  if (!takes_reached(out.kind)) return out;
  const std::int64_t marks = *rc::gen::inRange<std::int64_t>(0, 3);
  for (std::int64_t i = 0; i < marks; ++i) {
    out.reaches.push_back(
        {random_temperature(),
         Duration::of(i * 4 + *rc::gen::inRange<std::int64_t>(1, 5), units::hour)});
  }
  return out;
}

}  // namespace detail

/// One to four steps; each may say its kind, what it uses of the recipe's lines, and its time.
inline std::vector<MethodStep> random_steps(const Recipe& recipe) {
  std::vector<MethodStep> out;
  const int count = *rc::gen::inRange(1, 5);
  for (int i = 0; i < count; ++i) {
    MethodStep step;
    step.text = "step " + std::to_string(i + 1);
    if (*rc::gen::inRange(0, 4) != 0) step.control = detail::random_control();
    if (*rc::gen::inRange(0, 4) != 0) {
      const auto least = *rc::gen::inRange<std::int64_t>(1, 200);
      step.takes =
          TimeSpan{Duration::of(least, units::hour),
                   Duration::of(least + *rc::gen::inRange<std::int64_t>(0, 48), units::hour)};
    }
    for (const RecipeLine& line : recipe.lines) {
      if (*rc::gen::arbitrary<bool>()) step.uses.push_back(line.name);
    }
    step.place.line = i + 1;
    step.place.file = recipe.name;
    out.push_back(std::move(step));
  }
  return out;
}

}  // namespace platewright::test
