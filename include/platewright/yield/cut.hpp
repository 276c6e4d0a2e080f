#pragma once
// A row of the table of cuts.

#include <string>
#include <vector>

#include "platewright/yield/ladder.hpp"

namespace platewright {

/// A cut of meat, poultry or game, bought and prepared in one stated way.
struct Cut {
  /// As in `lamb leg, bone-in, roasted`; the key of the row.
  std::string name;
  /// Other names for the same row.
  std::vector<std::string> names;
  std::string species;
  /// The key of its row in the table of safe temperatures.
  std::string safety;
  /// As in `bone-in`, `boneless`, `whole bird`.
  std::string bought;
  /// Item number of the Institutional Meat Purchase Specifications (USDA AMS), where it has one.
  std::string imps;
  Ladder ladder;
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

/// Throws Failure where the cut weighs more after a rung than before it and the rung names no water
/// taken up.
inline void check_cut(const Cut& cut) {
  for (const Rung& rung : cut.ladder.rungs()) check_meat_yield(rung);
}

}  // namespace platewright
