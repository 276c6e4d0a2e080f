// SPDX-License-Identifier: MIT
#include "platewright/card/kitchen_notices.hpp"

#include "card/sheets/safety_boxes.hpp"
#include "card/sheets/step_boxes.hpp"
#include "platewright/card/number_text.hpp"

namespace platewright {
namespace {

std::string terms_of(const PullCheck& check) {
  switch (check.advisory) {
    case Advisory::unless_held:
      return "Hold it as the card says, or tell guests in writing (Food Code 3-603.11).";
    case Advisory::needed:
      return "Tell guests in writing (Food Code 3-603.11).";
    case Advisory::no_minimum:
    case Advisory::not_needed:
    case Advisory::cook_on:
      break;
  }
  return "NOT SAFE TO SERVE SO: cook on to that temperature.";
}

std::string undercooked_line(const std::string& dish, const UndercookedFood& food) {
  const MinimumTemperature& minimum = *food.check.cook_to;
  return dish + ": " + card::listed(food.ingredients) + " out at " +
         fahrenheit_text(food.check.pull, Rounding::down) + " inside, below the " +
         fahrenheit_text(minimum.at, Rounding::up) + " of the " + minimum.authority + ". " +
         terms_of(food.check);
}

std::optional<Box> temperatures_box(const std::vector<DishNotice>& notices) {
  Box box{"temperatures", "BELOW THE MINIMUM TEMPERATURE", {}};
  for (const DishNotice& notice : notices) {
    for (const UndercookedFood& food : notice.undercooked) {
      box.lines.push_back(undercooked_line(notice.dish, food));
    }
    for (const UnknownMinimum& food : notice.not_known) {
      box.lines.push_back(notice.dish + ": NOT KNOWN whether " +
                          fahrenheit_text(food.pull, Rounding::down) + " inside is enough for " +
                          card::listed(food.ingredients) + "; say in the larder what it is.");
    }
  }
  if (box.lines.empty()) return std::nullopt;
  box.lines.emplace_back("Local codes and your inspector come first.");
  return box;
}

}  // namespace

std::vector<Box> kitchen_notices(const std::vector<DishNotice>& notices) {
  std::vector<Box> out;
  if (auto box = temperatures_box(notices)) out.push_back(*std::move(box));
  std::vector<UnsafeStep> steps;
  for (const DishNotice& notice : notices) {
    steps.insert(steps.end(), notice.steps.begin(), notice.steps.end());
  }
  if (auto box = card::unsafe_steps_box(steps)) out.push_back(*std::move(box));
  return out;
}

}  // namespace platewright
