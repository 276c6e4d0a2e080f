// SPDX-License-Identifier: MIT
#pragma once
// A row of the table of cuts.

#include <optional>
#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/safety/food_kind.hpp"
#include "platewright/yield/bought.hpp"
#include "platewright/yield/ladder.hpp"

namespace platewright {

/// A cut of meat, poultry or game, bought and prepared in one stated way.
struct Cut {
  /// As in `lamb leg, bone-in, roasted`; the key of the row.
  std::string name;
  /// Other names for the same row.
  std::vector<std::string> names;
  std::string species;
  /// Which minimum temperature applies; nothing where nobody said.
  std::optional<FoodKind> safety;
  /// As in `bone-in`, `boneless`, `whole bird`: a word of `bought_words`.
  std::string bought;
  /// Item number of the Institutional Meat Purchase Specifications (USDA AMS), where it has one.
  std::string imps;
  Ladder ladder;
  /// What is bought, as in `lamb leg, bone-in`: rows of the same goods differ in how they are
  /// cooked, how closely they are trimmed and who measured. Empty where no other row is of them.
  std::string goods{};
  /// What whoever uses the row must know of its figures, as in a published one that is left out.
  std::string note{};
};

inline std::string key_of(const Cut& cut) {
  return cut.name;
}
inline std::vector<std::string> other_names_of(const Cut& cut) {
  return cut.names;
}
inline Ladder ladder_of(const Cut& cut) {
  return cut.ladder;
}

/// The goods that the row is of: its own name where no other row is of them.
inline std::string goods_of(const Cut& cut) {
  return cut.goods.empty() ? cut.name : cut.goods;
}

/// The cut with a ladder that knows what the goods hold as they are bought.
Cut as_bought(Cut cut);

/// Throws Failure where the cut weighs more after a rung than before it and the rung names no water
/// taken up.
inline void check_cut(const Cut& cut) {
  for (const Rung& rung : cut.ladder.rungs()) check_meat_yield(rung);
}

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/cut.hpp"
#endif
