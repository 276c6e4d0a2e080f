// SPDX-License-Identifier: MIT
#pragma once
// What may be done where food does not reach its minimum temperature.

#include <string>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/safety/food_kind.hpp"

namespace platewright {

enum class Undercooked {
  never,            ///< what is harmful is inside it: cook on
  advised,          ///< guests may choose it once they are told
  held_or_advised,  ///< a whole roast may be held at a lower temperature for longer instead
};

std::string_view name_of(Undercooked rule);

/// Throws Failure for a word that is none.
Undercooked undercooked_from(std::string_view text);

/// A row of the table: a kind of food that is not cooked on whatever happens.
struct UndercookedKind {
  FoodKind kind;
  Undercooked rule = Undercooked::never;
  std::string source;
  std::string row;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/safety/bodies/undercooked.hpp"
#endif
