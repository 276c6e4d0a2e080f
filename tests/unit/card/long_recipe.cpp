// SPDX-License-Identifier: MIT
// A card of 3 000 lines.

#include "platewright/card/display.hpp"
#include "platewright/card/recipe_card.hpp"
#include "platewright/card/writers.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

TEST_CASE("a recipe of 3 000 lines has them all on its card, within the page's width") {
  Recipe recipe = recipe_for(std::string(4000, 'x'), 10, {});
  MethodStep step;
  step.text = "Stir.";
  for (int i = 0; i < 3000; ++i) {
    recipe.lines.push_back(line("ingredient " + std::to_string(i), "3 tbsp"));
    step.uses.push_back(recipe.lines.back().name);
  }
  recipe.steps.push_back(step);
  Book book{MeasuringSystem::us, built_in_tables(), {}, {}, {}, {}, {}};
  const Sheet card =
      recipe_card(scale(recipe, plan_for_portions(recipe, 84, no_book), no_book), book);
  TextOptions options;
  options.width = 72;
  options.lines_per_page = 60;
  const std::string text = write_text(card, options);
  std::size_t begin = 0;
  int lines = 0;
  bool narrow = true;
  while (begin < text.size()) {
    const std::size_t end = text.find('\n', begin);
    narrow = narrow && display_width(text.substr(begin, end - begin)) <= 72;
    begin = end + 1;
    ++lines;
  }
  CHECK(narrow);
  CHECK(lines > 6000);
  CHECK(text.find("ingredient 2999") != std::string::npos);
}
