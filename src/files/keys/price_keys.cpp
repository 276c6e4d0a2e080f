// SPDX-License-Identifier: MIT
// The keys of price files and of lists as suppliers send them.

#include "files/keys/keys.hpp"

namespace platewright::reading {

const Mapping& prices_keys() {
  static constexpr Key keys[] = {
      {"prices", KeyShape::text, KeyNeed::needed,
       "whose prices: the supplier of offers that name none", "the greengrocer"},
      {"exchange rates", KeyShape::named_or_text, KeyNeed::optional,
       "what another currency is in this one, and whose rate it is", "1.085", exchange_rate_keys},
      {"currency", KeyShape::text, KeyNeed::needed, "the currency of prices that name none", "USD"},
      {"measures", KeyShape::text, KeyNeed::optional, measures_meaning, "us"},
      {"with", KeyShape::texts, KeyNeed::optional, with_meaning, "[larder.yaml]"},
      {"on", KeyShape::text, KeyNeed::optional, "the day from which they count", "2027-10-04"},
      {"offers",
       KeyShape::named_or_maps,
       KeyNeed::needed,
       "the offers, by ingredient",
       {},
       offer_keys},
  };
  static constexpr Mapping mapping{"prices", "a file of prices", keys,
                                   "src/files/keys/price_keys.cpp"};
  return mapping;
}

const Mapping& price_list_keys() {
  static constexpr Key keys[] = {
      {"price list", KeyShape::text, KeyNeed::needed, "the CSV file, found beside this one",
       "week-36.csv"},
      {"from", KeyShape::text, KeyNeed::needed, "the supplier", "the market"},
      {"currency", KeyShape::text, KeyNeed::needed, "the currency of prices that name none", "USD"},
      {"on", KeyShape::text, KeyNeed::needed, "the day from which the prices count", "2027-09-06"},
      {"separator", KeyShape::text, KeyNeed::optional,
       "what stands between two values: a comma, a semicolon or tab", ";"},
      {"decimal", KeyShape::text, KeyNeed::optional, "the decimal sign of the list", "."},
      {"thousands", KeyShape::text, KeyNeed::optional, "the sign between thousands", ","},
      {"sign", KeyShape::text, KeyNeed::optional, "the sign of the currency, which is left out",
       "$"},
      {"columns",
       KeyShape::map,
       KeyNeed::needed,
       "the list's names for its columns",
       {},
       column_keys},
      {"items", KeyShape::pairs, KeyNeed::optional, "the list's names for your ingredients",
       "garlic"},
      {"exchange rates", KeyShape::named_or_text, KeyNeed::optional,
       "what another currency is in this one, and whose rate it is", "1.085", exchange_rate_keys},
  };
  static constexpr Mapping mapping{"price list", "how a supplier's CSV list is read", keys,
                                   "src/files/keys/price_keys.cpp"};
  return mapping;
}

const Mapping& column_keys() {
  static constexpr Key keys[] = {
      {"item", KeyShape::text, KeyNeed::optional, "what is sold", "Description"},
      {"pack", KeyShape::text, KeyNeed::optional, "what a pack holds", "Pack"},
      {"piece", KeyShape::text, KeyNeed::optional, "what a piece weighs", "Each"},
      {"weighs", KeyShape::text, KeyNeed::optional, "what a pack weighs", "Net"},
      {"price", KeyShape::text, KeyNeed::optional, "the price", "Price"},
      {"per", KeyShape::text, KeyNeed::optional, "the unit that the price is for", "Unit"},
      {"currency", KeyShape::text, KeyNeed::optional, "the currency of the price", "Currency"},
  };
  static constexpr Mapping mapping{"column", "a column of a price list", keys,
                                   "src/files/keys/price_keys.cpp"};
  return mapping;
}

const Mapping& exchange_rate_keys() {
  static constexpr Key keys[] = {
      {"is", KeyShape::text, KeyNeed::needed, "one unit of it, in the file's own currency",
       "1.085"},
      {"source", KeyShape::text, KeyNeed::optional, "whose rate it is", "our bank, 2027-09-01"},
  };
  static constexpr Mapping mapping{"exchange rate", "an exchange rate", keys,
                                   "src/files/keys/price_keys.cpp"};
  return mapping;
}

}  // namespace platewright::reading
