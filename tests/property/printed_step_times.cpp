// SPDX-License-Identifier: MIT
// The time of a step as a card prints it: never turned round, whatever its fractions are.

#include <rapidcheck.h>

#include <sstream>
#include <variant>

#include "platewright/card/recipe_card.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// The seconds of `1 d 2 h`, `12 min`, `8 min 34 s`.
long seconds_of(const std::string& text) {
  std::istringstream words(text);
  long out = 0;
  long number = 0;
  std::string unit;
  while (words >> number >> unit) {
    out += number * (unit == "d" ? 86400 : unit == "h" ? 3600 : unit == "min" ? 60 : 1);
  }
  return out;
}

std::string printed_time(const Duration& least, const Duration& most) {
  static const Book book = [] {
    Book out;
    out.add(ingredient("rice"));
    return out;
  }();
  Recipe recipe = recipe_for("rice", 4, {line("rice", amount("1 lb"))});
  recipe.name = "boiled rice";
  recipe.steps = {MethodStep{"Wait.", {}, TimeSpan{least, most}, false, {}}};
  const Sheet sheet =
      recipe_card(scale(recipe, plan_for_factor(recipe, 1, book.recipes), book.recipes), book);
  for (const Block& block : sheet.blocks) {
    if (const auto* steps = std::get_if<Steps>(&block)) return steps->steps.at(0).takes.text;
  }
  return {};
}

}  // namespace

TEST_CASE("a step's shortest time is printed before its longest, and neither is passed") {
  CHECK(rc::check([] {
    const auto part = *rc::gen::element<std::int64_t>(1, 2, 3, 7, 60, 61);
    const auto first = *rc::gen::inRange<std::int64_t>(1, 5000 * part);
    const auto more = *rc::gen::element<std::int64_t>(0, 1, part, 40 * part);
    const Duration least = Duration::of(fraction(first, part), units::minute);
    const Duration most = Duration::of(fraction(first + more, part), units::minute);
    const std::string text = printed_time(least, most);
    const std::size_t to = text.find(" to ");
    const Rational from = seconds_of(text.substr(0, to));
    RC_ASSERT(from >= least.in(units::second));
    if (to == std::string::npos) return;
    const Rational until = seconds_of(text.substr(to + 4));
    RC_ASSERT(from < until);
    RC_ASSERT(until <= most.in(units::second));
  }));
}
