// SPDX-License-Identifier: MIT
// The keys of an event.

#include "files/keys/keys.hpp"

namespace platewright::reading {

const Mapping& event_keys() {
  static constexpr Key keys[] = {
      {"event", KeyShape::text, KeyNeed::needed, "its name", "a Sunday lunch"},
      {"measures", KeyShape::text, KeyNeed::optional, measures_meaning, "us"},
      {"kitchen", KeyShape::map, KeyNeed::optional, kitchen_meaning, {}, kitchen_keys},
      {"with", KeyShape::texts, KeyNeed::optional, with_meaning, "[larder.yaml]"},
      {"caterer", KeyShape::texts, KeyNeed::optional,
       "who caters, a line each: the name, the address", "[the caterer, 2 Sluice Lane]"},
      {"client", KeyShape::texts, KeyNeed::optional, "whom the quote is for, a line each",
       "[a growers' club, 11 Orchard Row]"},
      {"contact", KeyShape::text, KeyNeed::optional, "whom to ask there", "the club's secretary"},
      {"venue", KeyShape::texts, KeyNeed::optional, "where it is served, a line each",
       "[a barn, Old Mill Road]"},
      {"service style", KeyShape::text, KeyNeed::optional, "how it is served",
       "buffet with carving"},
      {"at", KeyShape::text, KeyNeed::optional, "when it is served, and in which time zone",
       "2027-10-09 18:30 America/Chicago"},
      {"guests", KeyShape::pairs, KeyNeed::needed, "how many come, by kind", "70"},
      {"portion shares", KeyShape::pairs, KeyNeed::optional,
       "what a kind of guest eats of a portion", "1/2"},
      {"price shares", KeyShape::pairs, KeyNeed::optional, "what a kind of guest pays of the price",
       "1/2"},
      {"guest prices", KeyShape::pairs, KeyNeed::optional,
       "what a kind of guest pays, in place of a share", "28.00"},
      {"paid by", KeyShape::pairs, KeyNeed::optional, "who pays for a kind of guest", "the club"},
      {"may not eat", KeyShape::named_texts, KeyNeed::optional,
       "the allergens that a kind of guest may not eat", "[gluten]"},
      {"menu", KeyShape::pairs_in_list, KeyNeed::needed, "the dishes, and who has each",
       "everyone"},
      {"over", KeyShape::text, KeyNeed::optional, "how much more is made than is asked for", "3 %"},
      {"invoice", KeyShape::map, KeyNeed::optional, "the bill when all is over", {}, invoice_keys},
      {"quote", KeyShape::map, KeyNeed::optional, "the terms of the quote", {}, quote_keys},
  };
  static constexpr Mapping mapping{"event", "an event", keys, "src/files/keys/event_keys.cpp"};
  return mapping;
}

const Mapping& diet_keys() {
  static constexpr Mapping mapping{"diet",
                                   "what a kind of guest may not eat",
                                   {},
                                   "src/files/keys/event_keys.cpp",
                                   "a kind of guest, and allergens"};
  return mapping;
}

const Mapping& quote_keys() {
  static constexpr Key keys[] = {
      {"q factor", KeyShape::text, KeyNeed::optional,
       "what no one measures, as a share of the food", "4 %"},
      {"labour",
       KeyShape::maps,
       KeyNeed::optional,
       "who works, how long and at what rate",
       {},
       labour_keys},
      {"extras", KeyShape::maps, KeyNeed::optional, "what else it costs", {}, extra_keys},
      {"overhead", KeyShape::text, KeyNeed::optional, "a share of all above, a sum, or both",
       "12 % and 180.00"},
      {"contingency", KeyShape::text, KeyNeed::optional,
       "what is set aside, as a share of the cost", "3 %"},
      {"margin", KeyShape::text, KeyNeed::optional,
       "the rule: what is left, as a share of the price", "30 %"},
      {"mark-up", KeyShape::text, KeyNeed::optional, "the rule: what comes on top of the cost",
       "43 %"},
      {"food cost", KeyShape::text, KeyNeed::optional,
       "the rule: the food, as a share of the price", "28 %"},
      {"round up to", KeyShape::text, KeyNeed::optional,
       "the step to which the price is rounded up", "0.50"},
      {"price steps", KeyShape::pairs, KeyNeed::optional,
       "what is off the price from so many guests on", "3 %"},
      {"minimum charge", KeyShape::text, KeyNeed::optional, "the least that the event is done for",
       "2500.00"},
      {"minimum per guest", KeyShape::text, KeyNeed::optional, "the least price of a guest",
       "40.00"},
      {"agreed price", KeyShape::text, KeyNeed::optional,
       "the price of a guest that stands already", "52.00"},
      {"service", KeyShape::text, KeyNeed::optional, "the service charge, and whether it is taxed",
       "18 %, taxed"},
      {"gratuity", KeyShape::text, KeyNeed::optional, "the gratuity, and whether it is taxed",
       "2 %"},
      {"price taxed", KeyShape::pairs_or_text, KeyNeed::optional,
       "whether the price itself is taxed, by which rate, or how much of it by each", "yes"},
      {"valid until", KeyShape::text, KeyNeed::optional, "the last day of the quote", "2027-08-31"},
      {"guarantee by", KeyShape::text, KeyNeed::optional,
       "the day by which the number of guests is settled", "2027-10-02"},
      {"guaranteed guests", KeyShape::text, KeyNeed::optional,
       "how many pay, whether they come or not", "76"},
      {"deposit", KeyShape::text, KeyNeed::optional, "what is paid ahead: a share or a sum",
       "30 %"},
      {"deposit by", KeyShape::text, KeyNeed::optional, "the day by which it is paid",
       "2027-09-01"},
      {"second deposit", KeyShape::text, KeyNeed::optional, "what is paid ahead a second time",
       "20 %"},
      {"second deposit by", KeyShape::text, KeyNeed::optional, "the day by which it is paid",
       "2027-09-20"},
      {"balance by", KeyShape::text, KeyNeed::optional, "the day by which the rest is paid",
       "2027-10-16"},
      {"cancellation", KeyShape::pairs, KeyNeed::optional,
       "what of the total is due if it is cancelled so many days before", "30 %"},
      {"quote number", KeyShape::text, KeyNeed::optional, "the number of the quote", "2027-031"},
      {"quote date", KeyShape::text, KeyNeed::optional, "the day on which it was written",
       "2027-07-12"},
      {"includes", KeyShape::texts, KeyNeed::optional, "what the price includes, a line each",
       "[the menu, linen and disposables]"},
      {"other terms", KeyShape::texts, KeyNeed::optional, "terms in words, a line each",
       "Ovens and power are the client's."},
      {"prices include tax", KeyShape::answer, KeyNeed::optional,
       "whether prices are with the tax in them", "yes"},
      {"discounts", KeyShape::maps, KeyNeed::optional, "what is off", {}, discount_keys},
      {"payments", KeyShape::maps, KeyNeed::optional, "what is paid already", {}, payment_keys},
      {"tax", KeyShape::pairs_or_text, KeyNeed::optional,
       "the tax on the bill, or several rates by name", "8.25 %"},
  };
  static constexpr Mapping mapping{"quote", "the terms of a quote", keys,
                                   "src/files/keys/event_keys.cpp"};
  return mapping;
}

const Mapping& labour_keys() {
  static constexpr Key keys[] = {
      {"role", KeyShape::text, KeyNeed::needed, "who works", "cook"},
      {"workers", KeyShape::text, KeyNeed::optional, "how many", "2"},
      {"time", KeyShape::text, KeyNeed::needed, "how long each works", "8 h"},
      {"rate", KeyShape::text, KeyNeed::needed, "what one is paid", "27.00 per hour"},
      {"benefits", KeyShape::text, KeyNeed::optional, "what comes on top of the pay", "18 %"},
      {"guests per worker", KeyShape::text, KeyNeed::optional,
       "how many guests one serves, in place of a number of workers", "20"},
  };
  static constexpr Mapping mapping{"labour", "a line of labour", keys,
                                   "src/files/keys/event_keys.cpp"};
  return mapping;
}

const Mapping& extra_keys() {
  static constexpr Key keys[] = {
      {"item", KeyShape::text, KeyNeed::needed, "what it is", "linen hire"},
      {"price", KeyShape::text, KeyNeed::needed, "what it costs", "180.00"},
      {"per guest", KeyShape::answer, KeyNeed::optional, "whether each guest costs that", "yes"},
      {"count", KeyShape::text, KeyNeed::optional, "how many of it", "3"},
      {"billed", KeyShape::answer, KeyNeed::optional, "whether it is a line of its own on the bill",
       "yes"},
      {"taxed", KeyShape::text, KeyNeed::optional, "whether that line is taxed, or by which rate",
       "no"},
  };
  static constexpr Mapping mapping{"extra", "an extra of a quote", keys,
                                   "src/files/keys/event_keys.cpp"};
  return mapping;
}

const Mapping& discount_keys() {
  static constexpr Key keys[] = {
      {"discount", KeyShape::text, KeyNeed::needed, "what it is for", "for a returning client"},
      {"off", KeyShape::text, KeyNeed::needed, "a share or a sum", "10 %"},
      {"of", KeyShape::text, KeyNeed::optional,
       "the billed extra that it is off; without it, off what guests pay", "tent hire"},
  };
  static constexpr Mapping mapping{"discount", "a discount", keys, "src/files/keys/event_keys.cpp"};
  return mapping;
}

const Mapping& payment_keys() {
  static constexpr Key keys[] = {
      {"on", KeyShape::text, KeyNeed::needed, "the day", "2027-09-01"},
      {"amount", KeyShape::text, KeyNeed::needed, "the sum", "500.00"},
      {"by", KeyShape::text, KeyNeed::optional, "who paid", "the client"},
  };
  static constexpr Mapping mapping{"payment", "a payment", keys, "src/files/keys/event_keys.cpp"};
  return mapping;
}

const Mapping& invoice_keys() {
  static constexpr Key keys[] = {
      {"invoice number", KeyShape::text, KeyNeed::needed, "its number", "2027-118"},
      {"invoice date", KeyShape::text, KeyNeed::needed, "the day on which it is written",
       "2027-10-11"},
      {"due by", KeyShape::text, KeyNeed::optional, "the day by which it is paid", "2027-10-25"},
      {"came", KeyShape::pairs, KeyNeed::optional, "how many came, by kind", "72"},
      {"extras", KeyShape::maps, KeyNeed::optional, "what came on top", {}, extra_keys},
  };
  static constexpr Mapping mapping{"invoice", "an invoice", keys, "src/files/keys/event_keys.cpp"};
  return mapping;
}

}  // namespace platewright::reading
