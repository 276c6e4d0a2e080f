// SPDX-License-Identifier: MIT
// The keys of a kitchen.

#include "files/keys/keys.hpp"

namespace platewright::reading {

const Mapping& kitchen_keys() {
  static constexpr Key keys[] = {
      {"owns", KeyShape::texts, KeyNeed::optional, "the measures that it has",
       "1/4 cup, 1/2 cup, 1 cup"},
      {"scale", KeyShape::texts, KeyNeed::optional, "how finely it weighs", "1/4 oz"},
      {"tolerance", KeyShape::text, KeyNeed::optional, "how far a rounded amount may be off",
       "3 %"},
      {"rounding", KeyShape::text, KeyNeed::optional, "a published or own rule of rounding",
       "nearest 5 g and 1/2 tsp"},
      {"ovens", KeyShape::maps, KeyNeed::optional, "its ovens", {}, oven_keys},
      {"hobs", KeyShape::text, KeyNeed::optional, "how many hobs it has", "6"},
      {"hot box", KeyShape::text, KeyNeed::optional, "the places for pans where food is held hot",
       "10 of full sheet pan"},
      {"cold room", KeyShape::text, KeyNeed::optional,
       "the places for pans where food is held cold", "40 of full sheet pan"},
      {"people", KeyShape::maps, KeyNeed::optional, "who works there, and when", {}, crew_keys},
  };
  static constexpr Mapping mapping{"kitchen", "a kitchen", keys, "src/files/keys/kitchen_keys.cpp"};
  return mapping;
}

const Mapping& oven_keys() {
  static constexpr Key keys[] = {
      {"oven", KeyShape::text, KeyNeed::needed, "its name", "upper deck"},
      {"racks", KeyShape::text, KeyNeed::needed, "its places for pans, and of which pan",
       "5 of full sheet pan"},
      {"fan", KeyShape::answer, KeyNeed::optional, "whether it moves its air", "yes"},
      {"apart", KeyShape::text, KeyNeed::optional, "the height between two racks", "4 in"},
      {"from", KeyShape::text, KeyNeed::optional, "its lowest temperature", "150 F"},
      {"to", KeyShape::text, KeyNeed::optional, "its highest temperature", "500 F"},
      {"change", KeyShape::text, KeyNeed::optional,
       "how long it takes from one temperature to another", "15 min"},
  };
  static constexpr Mapping mapping{"oven", "an oven", keys, "src/files/keys/kitchen_keys.cpp"};
  return mapping;
}

const Mapping& crew_keys() {
  static constexpr Key keys[] = {
      {"role", KeyShape::text, KeyNeed::needed, "what they are", "head cook"},
      {"workers", KeyShape::text, KeyNeed::optional, "how many", "2"},
      {"hours", KeyShape::text, KeyNeed::optional, "when they are there", "09:00 to 23:00"},
  };
  static constexpr Mapping mapping{"people", "people of a kitchen", keys,
                                   "src/files/keys/kitchen_keys.cpp"};
  return mapping;
}

}  // namespace platewright::reading
