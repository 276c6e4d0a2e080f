// SPDX-License-Identifier: MIT
// The keys of a recipe.

#include "files/keys/keys.hpp"

namespace platewright::reading {

const Mapping& recipe_keys() {
  static constexpr Key keys[] = {
      {"recipe", KeyShape::text, KeyNeed::needed, "its name", "lamb leg with rosemary"},
      {"measures", KeyShape::text, KeyNeed::optional, measures_meaning, "us"},
      {"kitchen", KeyShape::map, KeyNeed::optional, kitchen_meaning, {}, kitchen_keys},
      {"with", KeyShape::texts, KeyNeed::optional, with_meaning, "[larder.yaml]"},
      {"makes", KeyShape::text, KeyNeed::needed,
       "what it makes: portions and what one weighs, or an amount", "10 portions of 6 oz"},
      {"tested on", KeyShape::text, KeyNeed::optional, "the whole pieces that it was tested with",
       "1 leg of 7.5 lb"},
      {"rest", KeyShape::text, KeyNeed::optional, "how long it rests after the oven", "20 min"},
      {"pan", KeyShape::text, KeyNeed::optional, "the vessel that it was tested in",
       "tub of 12 qt, holds 1 leg"},
      {"stands", KeyShape::text, KeyNeed::optional, "how high it stands in the oven", "8 in"},
      {"largest batch", KeyShape::text, KeyNeed::optional, "the most that is made at once",
       "4 times"},
      {"whole batches", KeyShape::answer, KeyNeed::optional, "whether only whole batches are made",
       "yes"},
      {"lost", KeyShape::text, KeyNeed::optional, "what is lost on the way, as a share", "5 %"},
      {"ingredients",
       KeyShape::maps,
       KeyNeed::needed,
       "its lines: an ingredient and an amount each, or a part with lines of its own",
       {},
       line_keys,
       part_keys},
      {"oven", KeyShape::list, KeyNeed::optional, "the settings of the oven, in order",
       "450 F for 25 min"},
      {"steps", KeyShape::maps_or_texts, KeyNeed::optional, "the method, in order", "Rub all over.",
       step_keys},
      {"notes", KeyShape::texts, KeyNeed::optional, "remarks that the card prints", "Holds well."},
  };
  static constexpr Mapping mapping{"recipe", "a recipe", keys, "src/files/keys/recipe_keys.cpp"};
  return mapping;
}

const Mapping& part_keys() {
  static constexpr Key keys[] = {
      {"part", KeyShape::text, KeyNeed::optional, "the name of the part", "the rub"},
      {"lines", KeyShape::maps, KeyNeed::needed, "its lines", {}, line_keys},
  };
  static constexpr Mapping mapping{"part", "a part of a recipe", keys,
                                   "src/files/keys/recipe_keys.cpp"};
  return mapping;
}

const Mapping& line_keys() {
  static constexpr Key keys[] = {
      {"scale", KeyShape::text, KeyNeed::optional,
       "how the line grows: in proportion, by surface, by piece, by pan, by batch, by cover, held "
       "back, fixed or a spice rule",
       "by surface"},
      {"as", KeyShape::text, KeyNeed::optional,
       "the state that the amount is of: purchased, trimmed, cooked ...", "cooked"},
      {"start with", KeyShape::text, KeyNeed::optional,
       "of a line that is held back, the share that goes in at first", "1/2"},
  };
  static constexpr Mapping mapping{"line", "a line of a recipe", keys,
                                   "src/files/keys/recipe_keys.cpp",
                                   "an ingredient or another recipe, and its amount"};
  return mapping;
}

const Mapping& step_keys() {
  static constexpr Key keys[] = {
      {"do", KeyShape::text, KeyNeed::needed, "what is done", "Rub all over."},
      {"uses", KeyShape::texts, KeyNeed::optional, "the lines of the recipe that are used here",
       "[garlic, rosemary]"},
      {"takes", KeyShape::text, KeyNeed::optional,
       "how long it takes, and for how many where it grows", "10 min per leg"},
      {"oven", KeyShape::answer, KeyNeed::optional,
       "whether the oven's settings belong to this step", "yes"},
      {"kind", KeyShape::text, KeyNeed::optional,
       "what kind of step it is, for the rules of safety", "chill"},
      {"where", KeyShape::text, KeyNeed::optional, "where the food thaws, chills or stands",
       "refrigerator"},
      {"at", KeyShape::text, KeyNeed::optional, "the temperature at which it is kept or done",
       "38 F"},
      {"reaches", KeyShape::text, KeyNeed::optional,
       "the temperatures that the food reaches, and by when", "70 F in 2 h, 41 F in 6 h"},
      {"hands", KeyShape::text, KeyNeed::optional, "how long someone works at it",
       "6 min per leg by 2 people"},
      {"role", KeyShape::text, KeyNeed::optional, "who does it", "head cook"},
      {"hobs", KeyShape::text, KeyNeed::optional, "how many hobs it takes", "2"},
  };
  static constexpr Mapping mapping{"step", "a step of a recipe's method", keys,
                                   "src/files/keys/recipe_keys.cpp"};
  return mapping;
}

}  // namespace platewright::reading
