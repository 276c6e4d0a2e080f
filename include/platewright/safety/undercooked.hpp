// SPDX-License-Identifier: MIT
#pragma once
// What may be done where food does not reach its minimum temperature.

#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/safety/food_kind.hpp"

namespace platewright {

enum class Undercooked {
  never,            ///< what is harmful is inside it: cook on
  advised,          ///< guests may choose it once they are told
  held_or_advised,  ///< a whole roast may be held at a lower temperature for longer instead
};

inline std::string_view name_of(Undercooked rule) {
  switch (rule) {
    case Undercooked::never:
      return "never";
    case Undercooked::advised:
      return "told";
    case Undercooked::held_or_advised:
      return "held or told";
  }
  return {};
}

/// Throws Failure for a word that is none.
inline Undercooked undercooked_from(std::string_view text) {
  std::vector<std::string> known;
  for (const Undercooked rule :
       {Undercooked::never, Undercooked::advised, Undercooked::held_or_advised}) {
    if (name_of(rule) == text) return rule;
    known.emplace_back(name_of(rule));
  }
  throw Failure(problems::word_unknown("rule for undercooked food", text, known));
}

/// A row of the table: a kind of food that is not cooked on whatever happens.
struct UndercookedKind {
  FoodKind kind;
  Undercooked rule = Undercooked::never;
  std::string source;
  std::string row;
};

}  // namespace platewright
