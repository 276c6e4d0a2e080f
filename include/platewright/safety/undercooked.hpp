#pragma once
// What may be done where food does not reach its minimum temperature.

#include <array>
#include <string_view>

namespace platewright {

enum class Undercooked {
  never,            ///< what is harmful is inside it: cook on
  advised,          ///< guests may choose it once they are told
  held_or_advised,  ///< a whole roast may be held at a lower temperature for longer instead
};

/// A kind of food, by its key in the table of safety, that is not cooked on whatever happens.
struct UndercookedKind {
  std::string_view key;
  Undercooked rule;
};

/// Held: beef, corned beef, lamb, pork and cured pork roasts (FDA Food Code 2022, 3-401.11(B)).
/// Advised: whole cuts, fish, eggs (3-401.11(D) and 3-603.11). Poultry, ground, tenderised, stuffed
/// and reheated food, and wild game, is never called acceptable here.
inline constexpr std::array<UndercookedKind, 6> undercooked_kinds{{
    {"whole cut", Undercooked::held_or_advised},
    {"cured", Undercooked::held_or_advised},
    {"fish", Undercooked::advised},
    {"eggs", Undercooked::advised},
    {"eggs, held", Undercooked::advised},
    {"ratites", Undercooked::advised},
}};

/// Any kind that is not named is never left undercooked.
inline Undercooked undercooked(std::string_view key) {
  for (const UndercookedKind& kind : undercooked_kinds) {
    if (kind.key == key) return kind.rule;
  }
  return Undercooked::never;
}

}  // namespace platewright
