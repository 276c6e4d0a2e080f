// SPDX-License-Identifier: MIT
// The keys of worksheets and trials.

#include "files/keys/keys.hpp"

namespace platewright::reading {

const Mapping& worksheet_keys() {
  static constexpr Key keys[] = {
      {"worksheet", KeyShape::text, KeyNeed::needed, "its name", "leg of veal"},
      {"measures", KeyShape::text, KeyNeed::optional, measures_meaning, "us"},
      {"bought", KeyShape::text, KeyNeed::optional, "what the piece holds as bought", "bone-in"},
      {"currency", KeyShape::text, KeyNeed::optional, "the currency of its prices", "USD"},
      {"new price", KeyShape::text, KeyNeed::optional,
       "another price, for which the cost factor is used", "7.10 per lb"},
      {"trim test",
       KeyShape::map,
       KeyNeed::optional,
       "the piece as bought, and what it is cut into",
       {},
       trim_test_keys},
      {"cooking loss test",
       KeyShape::map,
       KeyNeed::optional,
       "what is left of it when it is cooked and carved",
       {},
       cooking_test_keys},
      {"handbook", KeyShape::text, KeyNeed::optional,
       "a row of `platewright tables cuts` to hold it against", "beef rib roast"},
  };
  static constexpr Mapping mapping{"worksheet", "a worksheet", keys,
                                   "src/files/keys/worksheet_keys.cpp"};
  return mapping;
}

const Mapping& trim_test_keys() {
  static constexpr Key keys[] = {
      {"purchased", KeyShape::text, KeyNeed::needed, "what was bought, and for how much",
       "12 lb at 6.65 per lb"},
      {"labour", KeyShape::text, KeyNeed::optional, "what the cutting costs", "0.40 per lb"},
      {"usable", KeyShape::pairs_or_text, KeyNeed::optional, "the parts that are served",
       "8 lb 4 oz"},
      {"by-products", KeyShape::pairs_or_text, KeyNeed::optional,
       "the parts that are worth something else", "1 lb 8 oz at 2.20 per lb"},
      {"waste", KeyShape::pairs_or_text, KeyNeed::optional, "the parts that are thrown away",
       "1 lb 12 oz"},
      {"cutting loss", KeyShape::pairs_or_text, KeyNeed::optional, "what is missing at the end",
       "the rest"},
      {"portion", KeyShape::text, KeyNeed::optional, "what a portion weighs", "6 oz"},
      {"answers", KeyShape::pairs, KeyNeed::optional, "a student's answers, by step", "180.00"},
  };
  static constexpr Mapping mapping{"trim test", "a trim test", keys,
                                   "src/files/keys/worksheet_keys.cpp"};
  return mapping;
}

const Mapping& cooking_test_keys() {
  static constexpr Key keys[] = {
      {"starts from", KeyShape::text, KeyNeed::needed,
       "the cost that it goes on from: invoice, or net of credits", "net of credits"},
      {"oven-ready", KeyShape::text, KeyNeed::optional,
       "the piece and what it cost, where there is no trim test", "6 lb for 79.80"},
      {"bought at", KeyShape::text, KeyNeed::optional, "what the piece cost as purchased",
       "9.50 per lb"},
      {"cooked", KeyShape::text, KeyNeed::needed, "its weight when cooked", "5 lb 8 oz"},
      {"bones and trim", KeyShape::text, KeyNeed::optional, "what is carved off", "4 oz"},
      {"saleable", KeyShape::text, KeyNeed::optional, "what is served", "5 lb"},
      {"portion", KeyShape::text, KeyNeed::optional, "what a portion weighs", "6 oz"},
      {"answers", KeyShape::pairs, KeyNeed::optional, "a student's answers, by step", "75 %"},
  };
  static constexpr Mapping mapping{"cooking loss test", "a cooking loss test", keys,
                                   "src/files/keys/worksheet_keys.cpp"};
  return mapping;
}

const Mapping& trials_keys() {
  static constexpr Key keys[] = {
      {"trials", KeyShape::text, KeyNeed::needed, "what was tried", "lamb leg, our roast"},
      {"measures", KeyShape::text, KeyNeed::optional, measures_meaning, "us"},
      {"method", KeyShape::text, KeyNeed::optional, "how it was cooked", "roasted"},
      {"water taken up", KeyShape::answer, KeyNeed::optional,
       "whether the food may weigh more than before", "yes"},
      {"source", KeyShape::text, KeyNeed::optional, "whose figures they are", "our own trials"},
      {"average", KeyShape::text, KeyNeed::optional, "mean of ratios, or ratio of totals",
       "mean of ratios"},
      {"stages", KeyShape::texts, KeyNeed::needed, "the states that were weighed",
       "[purchased, cooked, served]"},
      {"weighed", KeyShape::rows, KeyNeed::needed,
       "a test each: the weights in that order, or a worksheet", "10 lb, 6.5 lb, 5 lb",
       trial_worksheet_keys},
  };
  static constexpr Mapping mapping{"trials", "several tests of one cut", keys,
                                   "src/files/keys/worksheet_keys.cpp"};
  return mapping;
}

const Mapping& trial_worksheet_keys() {
  static constexpr Key keys[] = {
      {"worksheet", KeyShape::text, KeyNeed::needed, "the file, found beside this one",
       "lamb.yaml"},
  };
  static constexpr Mapping mapping{"worksheet of a trial", "a worksheet in place of weights", keys,
                                   "src/files/keys/worksheet_keys.cpp"};
  return mapping;
}

}  // namespace platewright::reading
