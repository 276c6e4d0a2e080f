// SPDX-License-Identifier: MIT
// The keys of yields of your own.

#include "files/keys/keys.hpp"

namespace platewright::reading {

const Mapping& own_cut_keys() {
  static constexpr Key keys[] = {
      {"cut", KeyShape::text, KeyNeed::needed, "its name", "pork shoulder, our slow roast"},
      {"names", KeyShape::texts, KeyNeed::optional, "other names for it", "[chopped dill]"},
      {"species", KeyShape::text, KeyNeed::optional, "the animal", "pork"},
      {"safety", KeyShape::text, KeyNeed::optional, "which minimum temperature applies",
       "whole cut"},
      {"bought", KeyShape::text, KeyNeed::optional, "what it holds as bought", "bone-in"},
      {"imps", KeyShape::text, KeyNeed::optional, "its number in the purchase specifications",
       "406"},
      {"goods", KeyShape::text, KeyNeed::optional, "the goods, where several cuts are of the same",
       "pork shoulder"},
      {"note", KeyShape::text, KeyNeed::optional, "a remark", "without the hulls"},
      {"rungs",
       KeyShape::maps,
       KeyNeed::optional,
       "its steps on the way to the plate",
       {},
       rung_keys},
  };
  static constexpr Mapping mapping{"cut", "a cut", keys, "src/files/keys/own_yield_keys.cpp"};
  return mapping;
}

const Mapping& rung_keys() {
  static constexpr Key keys[] = {
      {"from", KeyShape::text, KeyNeed::optional, "the state before", "purchased"},
      {"to", KeyShape::text, KeyNeed::needed, "the state after", "cooked"},
      {"yield", KeyShape::text, KeyNeed::needed, "what is left, as a share", "74 %"},
      {"holds", KeyShape::texts, KeyNeed::optional, "the losses in it: cooking, bone, trim ...",
       "[cooking]"},
      {"method", KeyShape::text, KeyNeed::optional, "how it was cooked", "roasted"},
      {"samples", KeyShape::text, KeyNeed::optional, "how many tests it stands on", "3"},
      {"deviation", KeyShape::text, KeyNeed::optional, "the standard deviation of the tests",
       "2 %"},
      {"low", KeyShape::text, KeyNeed::optional, "the lowest of them", "70 %"},
      {"high", KeyShape::text, KeyNeed::optional, "the highest of them", "78 %"},
      {"source", KeyShape::text, KeyNeed::needed, "whose figure it is",
       "our own scale, five spoons"},
      {"row", KeyShape::text, KeyNeed::optional, "its row in the source", "NDB 20081"},
  };
  static constexpr Mapping mapping{"rung", "a step of a cut on the way to the plate", keys,
                                   "src/files/keys/own_yield_keys.cpp"};
  return mapping;
}

const Mapping& own_produce_keys() {
  static constexpr Key keys[] = {
      {"produce", KeyShape::text, KeyNeed::needed, "its name", "leek, white part only"},
      {"names", KeyShape::texts, KeyNeed::optional, "other names for it", "[chopped dill]"},
      {"trim", KeyShape::text, KeyNeed::optional, "what is taken off", "green part and root"},
      {"factor", KeyShape::text, KeyNeed::optional,
       "as purchased over edible portion, in place of the yield", "1.92"},
      {"yield", KeyShape::text, KeyNeed::optional, "what is left, as a share", "52 %"},
      {"source", KeyShape::text, KeyNeed::needed, "whose figure it is",
       "our own scale, five spoons"},
      {"row", KeyShape::text, KeyNeed::optional, "its row in the source", "NDB 20081"},
  };
  static constexpr Mapping mapping{"produce", "a yield of produce", keys,
                                   "src/files/keys/own_yield_keys.cpp"};
  return mapping;
}

const Mapping& own_grain_keys() {
  static constexpr Key keys[] = {
      {"grain", KeyShape::text, KeyNeed::needed, "its name", "pearl barley, boiled"},
      {"names", KeyShape::texts, KeyNeed::optional, "other names for it", "[chopped dill]"},
      {"factor", KeyShape::text, KeyNeed::optional,
       "as purchased over edible portion, in place of the yield", "1.92"},
      {"yield", KeyShape::text, KeyNeed::optional,
       "the weight cooked, as a share of the weight dry", "330 %"},
      {"source", KeyShape::text, KeyNeed::needed, "whose figure it is",
       "our own scale, five spoons"},
      {"row", KeyShape::text, KeyNeed::optional, "its row in the source", "NDB 20081"},
      {"note", KeyShape::text, KeyNeed::optional, "a remark", "without the hulls"},
  };
  static constexpr Mapping mapping{"grain", "what a grain takes up", keys,
                                   "src/files/keys/own_yield_keys.cpp"};
  return mapping;
}

}  // namespace platewright::reading
