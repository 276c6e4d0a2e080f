// SPDX-License-Identifier: MIT
// The keys of a larder.

#include "files/keys/keys.hpp"

namespace platewright::reading {

const Mapping& larder_keys() {
  static constexpr Key keys[] = {
      {"exchange rates", KeyShape::named_or_text, KeyNeed::optional,
       "what another currency is in this one, and whose rate it is", "1.085", exchange_rate_keys},
      {"currency", KeyShape::text, KeyNeed::needed, "the currency of prices that name none", "USD"},
      {"measures", KeyShape::text, KeyNeed::optional, measures_meaning, "us"},
      {"kitchen", KeyShape::map, KeyNeed::optional, kitchen_meaning, {}, kitchen_keys},
      {"with", KeyShape::texts, KeyNeed::optional, with_meaning, "[larder.yaml]"},
      {"suppliers",
       KeyShape::named_maps,
       KeyNeed::optional,
       "how each supplier delivers, by name",
       {},
       supplier_keys},
      {"minimum orders", KeyShape::pairs, KeyNeed::optional,
       "the least sum for which a supplier delivers", "150.00"},
      {"larder",
       KeyShape::named_maps,
       KeyNeed::needed,
       "the ingredients, by name",
       {},
       ingredient_keys},
  };
  static constexpr Mapping mapping{"larder", "a larder", keys, "src/files/keys/larder_keys.cpp"};
  return mapping;
}

const Mapping& ingredient_keys() {
  static constexpr Key keys[] = {
      {"cut", KeyShape::text, KeyNeed::optional, "its row of `platewright tables cuts`",
       "lamb leg, bone-in, roasted"},
      {"produce", KeyShape::text, KeyNeed::optional, "its row of `platewright tables produce`",
       "garlic, peeled"},
      {"grain", KeyShape::text, KeyNeed::optional, "its row of `platewright tables grains`",
       "pearl barley, boiled"},
      {"tested yields",
       KeyShape::maps,
       KeyNeed::optional,
       "yields of your own; they win over the table",
       {},
       tested_yield_keys},
      {"weighs as", KeyShape::text, KeyNeed::optional, "its row of `platewright tables densities`",
       "all-purpose flour"},
      {"weighs", KeyShape::pairs, KeyNeed::optional,
       "what a measure or a piece of it weighs, by your own scale", "5.1 g"},
      {"allergens", KeyShape::texts, KeyNeed::optional, "the allergens in it, or none", "[milk]"},
      {"may contain", KeyShape::texts, KeyNeed::optional, "the allergens that the label warns of",
       "[celery]"},
      {"safety", KeyShape::text, KeyNeed::optional, "which minimum temperature applies, or none",
       "poultry"},
      {"free", KeyShape::answer, KeyNeed::optional, "whether it costs nothing", "yes"},
      {"buy",
       KeyShape::maps,
       KeyNeed::optional,
       "how it is bought: one offer, or several",
       {},
       offer_keys},
      {"in store", KeyShape::text, KeyNeed::optional, "what there is of it already", "3 #10 can"},
      {"kept", KeyShape::text, KeyNeed::optional,
       "where it is kept until it is used: dry, chilled or frozen", "chilled"},
      {"keeps", KeyShape::text, KeyNeed::optional, "how long it keeps", "3 days"},
      {"by-products",
       KeyShape::maps,
       KeyNeed::optional,
       "what is left of it and worth something",
       {},
       by_product_keys},
  };
  static constexpr Mapping mapping{"ingredient", "an ingredient of a larder", keys,
                                   "src/files/keys/larder_keys.cpp"};
  return mapping;
}

const Mapping& tested_yield_keys() {
  static constexpr Key keys[] = {
      {"from", KeyShape::text, KeyNeed::optional,
       "the state before: purchased, trimmed, cooked ...", "cooked"},
      {"to", KeyShape::text, KeyNeed::needed, "the state after", "served"},
      {"yield", KeyShape::text, KeyNeed::needed, "what is left, as a share", "70 %"},
      {"samples", KeyShape::text, KeyNeed::optional, "how many tests it stands on", "3"},
      {"deviation", KeyShape::text, KeyNeed::optional, "the standard deviation of the tests",
       "2 %"},
      {"source", KeyShape::text, KeyNeed::optional, "whose figure it is", "our carving test"},
  };
  static constexpr Mapping mapping{"tested yield", "a yield of your own", keys,
                                   "src/files/keys/larder_keys.cpp"};
  return mapping;
}

const Mapping& offer_keys() {
  static constexpr Key keys[] = {
      {"price", KeyShape::text, KeyNeed::needed, "for the pack, or for a unit of weight or measure",
       "8.95 per lb"},
      {"from", KeyShape::text, KeyNeed::optional, "the supplier", "the butcher"},
      {"on", KeyShape::text, KeyNeed::optional, "the day from which the price counts",
       "2027-06-07"},
      {"deposit", KeyShape::text, KeyNeed::optional, "what comes back with the empties", "1.50"},
      {"days", KeyShape::text, KeyNeed::optional, "the whole days between ordering and delivery",
       "3"},
      {"least", KeyShape::text, KeyNeed::optional, "the fewest packs that are sold", "2"},
      {"piece", KeyShape::text, KeyNeed::optional,
       "what one piece weighs, of goods sold by the piece", "7.5 lb"},
      {"pack", KeyShape::text, KeyNeed::optional, "what a pack holds", "6 x 2.5 kg"},
      {"weighs", KeyShape::text, KeyNeed::optional,
       "what a pack weighs that is sold by count or measure", "2 oz"},
      {"spread", KeyShape::text, KeyNeed::optional, "how far the weights of pieces lie apart",
       "0.6 lb"},
  };
  static constexpr Mapping mapping{"offer", "an offer", keys, "src/files/keys/larder_keys.cpp"};
  return mapping;
}

const Mapping& by_product_keys() {
  static constexpr Key keys[] = {
      {"name", KeyShape::text, KeyNeed::needed, "what it is", "bones"},
      {"share", KeyShape::text, KeyNeed::needed, "its share of the weight as purchased", "12 %"},
      {"worth", KeyShape::text, KeyNeed::optional, "what it is credited with", "0.40 per lb"},
      {"used as", KeyShape::text, KeyNeed::optional,
       "the ingredient that it is used as, in place of buying that", "beef bones"},
  };
  static constexpr Mapping mapping{"by-product", "a by-product of an ingredient", keys,
                                   "src/files/keys/larder_keys.cpp"};
  return mapping;
}

const Mapping& supplier_keys() {
  static constexpr Key keys[] = {
      {"delivers", KeyShape::texts, KeyNeed::optional, "the days of the week on which it delivers",
       "[Tue, Fri]"},
      {"order by", KeyShape::text, KeyNeed::optional, "how late an order may be",
       "14:00, 2 days before"},
      {"closed", KeyShape::texts, KeyNeed::optional, "days on which it does not deliver",
       "2027-12-24 to 2028-01-02"},
      {"minimum", KeyShape::text, KeyNeed::optional,
       "the least sum of goods for which it comes, each time", "150.00"},
      {"delivery charge", KeyShape::text, KeyNeed::optional, "what a delivery costs", "12.00"},
      {"one delivery", KeyShape::answer, KeyNeed::optional, "whether all goods come at once",
       "yes"},
      {"address", KeyShape::text, KeyNeed::optional, "where it is", "Market Hall, gate 3"},
      {"telephone", KeyShape::text, KeyNeed::optional, "its telephone number", "extension 12"},
  };
  static constexpr Mapping mapping{"supplier", "a supplier", keys,
                                   "src/files/keys/larder_keys.cpp"};
  return mapping;
}

}  // namespace platewright::reading
