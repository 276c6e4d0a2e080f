// SPDX-License-Identifier: MIT
// The keys of tables of your own: units, weights and rules for steps.

#include "files/keys/keys.hpp"

namespace platewright::reading {

const Mapping& own_tables_keys() {
  static constexpr Key keys[] = {
      {"tables", KeyShape::anything, KeyNeed::needed, "what they are", "weighed in our kitchen"},
      {"measures", KeyShape::text, KeyNeed::optional, measures_meaning, "us"},
      {"kitchen", KeyShape::map, KeyNeed::optional, kitchen_meaning, {}, kitchen_keys},
      {"with", KeyShape::texts, KeyNeed::optional, with_meaning, "[larder.yaml]"},
      {"units", KeyShape::maps, KeyNeed::optional, "measures of your own", {}, own_unit_keys},
      {"densities",
       KeyShape::maps,
       KeyNeed::optional,
       "what measures of a food weigh",
       {},
       density_keys},
      {"pieces",
       KeyShape::maps,
       KeyNeed::optional,
       "what pieces of a food weigh",
       {},
       piece_weight_keys},
      {"cuts", KeyShape::maps, KeyNeed::optional, "yields of cuts", {}, own_cut_keys},
      {"produce", KeyShape::maps, KeyNeed::optional, "yields of produce", {}, own_produce_keys},
      {"grains", KeyShape::maps, KeyNeed::optional, "what grains take up", {}, own_grain_keys},
      {"allergen law", KeyShape::text, KeyNeed::optional,
       "whose list of allergens a sheet goes by: us or eu", "eu"},
      {"step rules",
       KeyShape::maps,
       KeyNeed::optional,
       "rules for steps, in place of the built-in ones",
       {},
       step_rule_keys},
  };
  static constexpr Mapping mapping{"tables", "tables of your own", keys,
                                   "src/files/keys/own_table_keys.cpp"};
  return mapping;
}

const Mapping& own_unit_keys() {
  static constexpr Key keys[] = {
      {"unit", KeyShape::text, KeyNeed::needed, "its name", "house ladle"},
      {"names", KeyShape::texts, KeyNeed::optional, "other names for it",
       "[house ladle, house ladles]"},
      {"symbol", KeyShape::text, KeyNeed::optional, "how a sheet writes it", "ladle"},
      {"plural", KeyShape::text, KeyNeed::optional, "how a sheet writes several", "ladles"},
      {"is", KeyShape::text, KeyNeed::needed, "its size in a unit that is there already", "110 mL"},
      {"source", KeyShape::text, KeyNeed::needed, "whose figure it is",
       "our own scale, five spoons"},
      {"row", KeyShape::text, KeyNeed::optional, "its row in the source", "NDB 20081"},
      {"note", KeyShape::text, KeyNeed::optional, "a remark", "without the hulls"},
  };
  static constexpr Mapping mapping{"unit", "a measure of your own", keys,
                                   "src/files/keys/own_table_keys.cpp"};
  return mapping;
}

const Mapping& density_keys() {
  static constexpr Key keys[] = {
      {"of", KeyShape::text, KeyNeed::needed, "the food", "dill, chopped"},
      {"names", KeyShape::texts, KeyNeed::optional, "other names for it", "[chopped dill]"},
      {"source", KeyShape::text, KeyNeed::needed, "whose figure it is",
       "our own scale, five spoons"},
      {"row", KeyShape::text, KeyNeed::optional, "its row in the source", "NDB 20081"},
      {"measures",
       KeyShape::maps,
       KeyNeed::optional,
       "the measures and their weights",
       {},
       density_measure_keys},
  };
  static constexpr Mapping mapping{"density", "what measures of a food weigh", keys,
                                   "src/files/keys/own_table_keys.cpp"};
  return mapping;
}

const Mapping& density_measure_keys() {
  static constexpr Key keys[] = {
      {"measure", KeyShape::text, KeyNeed::needed, "the measure", "1 tbsp"},
      {"weighs", KeyShape::text, KeyNeed::needed, "what it weighs", "2.1 g"},
      {"row", KeyShape::text, KeyNeed::optional, "its row in the source", "NDB 20081"},
  };
  static constexpr Mapping mapping{"weight of a measure", "the weight of a measure", keys,
                                   "src/files/keys/own_table_keys.cpp"};
  return mapping;
}

const Mapping& piece_weight_keys() {
  static constexpr Key keys[] = {
      {"of", KeyShape::text, KeyNeed::needed, "the food", "garlic"},
      {"names", KeyShape::texts, KeyNeed::optional, "other names for it", "[chopped dill]"},
      {"piece", KeyShape::text, KeyNeed::needed, "the word for one", "clove"},
      {"weighs", KeyShape::text, KeyNeed::needed, "what one weighs", "3 g"},
      {"size", KeyShape::text, KeyNeed::optional, "the size of it", "large"},
      {"usual", KeyShape::answer, KeyNeed::optional,
       "whether this size is meant where none is said", "yes"},
      {"source", KeyShape::text, KeyNeed::needed, "whose figure it is",
       "our own scale, five spoons"},
      {"row", KeyShape::text, KeyNeed::optional, "its row in the source", "NDB 20081"},
  };
  static constexpr Mapping mapping{"piece", "the weight of a piece", keys,
                                   "src/files/keys/own_table_keys.cpp"};
  return mapping;
}

const Mapping& step_rule_keys() {
  static constexpr Key keys[] = {
      {"source", KeyShape::text, KeyNeed::needed, "whose figure it is",
       "our own scale, five spoons"},
      {"row", KeyShape::text, KeyNeed::optional, "its row in the source", "NDB 20081"},
      {"step", KeyShape::text, KeyNeed::needed, "the kind of step", "chill"},
      {"where", KeyShape::text, KeyNeed::optional, "where the food is", "refrigerator"},
      {"demand", KeyShape::text, KeyNeed::needed, "what is asked for", "reaches"},
      {"at", KeyShape::text, KeyNeed::optional, "the temperature", "41 F"},
      {"bound", KeyShape::text, KeyNeed::optional, "whether that is the most or the least",
       "at most"},
      {"within", KeyShape::text, KeyNeed::optional, "the longest time", "6 h"},
      {"note", KeyShape::text, KeyNeed::optional, "a remark", "without the hulls"},
  };
  static constexpr Mapping mapping{"step rule", "a rule for steps", keys,
                                   "src/files/keys/own_table_keys.cpp"};
  return mapping;
}

}  // namespace platewright::reading
