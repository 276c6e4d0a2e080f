// SPDX-License-Identifier: MIT
#pragma once
// What a recipe's temperature inside leaves undercooked, or leaves unsaid.

#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/recipe/recipe_safety.hpp"
#include "platewright/safety/pull_temperature.hpp"

namespace platewright {

/// Ingredients of one kind that come out of the oven below its minimum.
struct UndercookedFood {
  std::vector<std::string> ingredients;
  PullCheck check;
};

/// A temperature inside of which no one can say whether it is enough.
struct UnknownMinimum {
  std::vector<std::string> ingredients;
  Temperature pull = Temperature::celsius(0);
};

struct TemperatureNotices {
  std::vector<UndercookedFood> undercooked;
  std::vector<UnknownMinimum> not_known;
};

/// The notices of one recipe; none where it is not cooked to a temperature inside. Every sheet and
/// every check of a book says these and no others. It never fails.
TemperatureNotices temperature_notices(const Recipe& recipe, const RecipeBook& book,
                                       const SafetyTable& table);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/temperature_notices.hpp"
#endif
