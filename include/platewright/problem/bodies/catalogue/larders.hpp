// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/larders.hpp.

#include <algorithm>

#include "platewright/problem/catalogue/larders.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem price_without_pack(std::string_view ingredient) {
  return make_problem(
      "price-without-pack", "a price of " + in_quotes(ingredient) + " for no pack",
      "what the price is for: `pack: 40 lb`, or `piece: 7.5 lb` for goods by the piece",
      "write how it is sold");
}

PLATEWRIGHT_BODY Problem price_malformed(std::string_view text) {
  return make_problem("price-malformed", in_quotes(text),
                      "a price such as 12.50 (for the pack), 8.95 per lb or 7.40 EUR per kg",
                      "write it in one of these forms");
}

PLATEWRIGHT_BODY Problem currency_malformed(std::string_view text,
                                            const std::vector<std::string>& known) {
  std::string capitals(text);
  for (char& c : capitals) c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
  const bool small_letters = std::find(known.begin(), known.end(), capitals) != known.end();
  const std::string near =
      did_you_mean(text, small_letters ? std::vector<std::string>{capitals} : known);
  return make_problem("currency-malformed", "the currency " + in_quotes(text),
                      "a code of ISO 4217, such as USD, EUR or GBP",
                      near.empty() ? "write its three capital letters" : near);
}

PLATEWRIGHT_BODY Problem exchange_rate_missing(std::string_view found, std::string_view of_book) {
  return make_problem("exchange-rate-missing",
                      "a price in " + std::string(found) + " where the book reckons in " +
                          std::string(of_book) + ", and no rate between them",
                      "what 1 " + std::string(found) + " is in " + std::string(of_book),
                      "add it to the file or to the larder, as in `exchange rates: {" +
                          std::string(found) + ": 1.085}` with the rate of the day");
}

PLATEWRIGHT_BODY Problem exchange_rate_of_itself(std::string_view code) {
  return make_problem("exchange-rate-of-itself",
                      "an exchange rate of " + in_quotes(code) + ", the book's own currency",
                      "rates of other currencies", "take the line out");
}

PLATEWRIGHT_BODY Problem yields_exclude_each_other(std::string_view ingredient) {
  return make_problem("yield-chosen-twice",
                      in_quotes(ingredient) + " names more than one of cut, produce and grain",
                      "one row of yields for an ingredient",
                      "make two entries of the larder, one for each way it is used");
}

PLATEWRIGHT_BODY Problem allergens_not_stated(std::string_view ingredient) {
  return make_problem("allergens-not-stated",
                      "no word on the allergens of " + in_quotes(ingredient),
                      "`allergens: none`, or a list such as `allergens: [milk]`",
                      "read the label or ask the supplier; until then every card says that it is "
                      "not known");
}

PLATEWRIGHT_BODY Problem by_product_counted_twice(std::string_view name) {
  return make_problem(
      "by-product-counted-twice",
      "the by-product " + in_quotes(name) + " with both or none of worth and used as",
      "either what it is worth, or the ingredient that it is used as",
      "keep one of the two: what is used again is not credited too");
}

PLATEWRIGHT_BODY Problem price_of_nothing(std::string_view ingredient) {
  return make_problem("price-of-nothing", "a price of 0 for " + in_quotes(ingredient),
                      "a price above 0", "write `free: yes` for what costs nothing");
}

PLATEWRIGHT_BODY Problem by_products_above_whole(std::string_view ingredient,
                                                 std::string_view share) {
  return make_problem("by-products-above-whole",
                      "by-products of " + in_quotes(ingredient) + " that are " +
                          std::string(share) + " of its weight together",
                      "less than 100 %", "correct their shares");
}

PLATEWRIGHT_BODY Problem by_products_worth_more(std::string_view ingredient) {
  return make_problem("by-products-worth-more",
                      "by-products worth as much as " + in_quotes(ingredient) + " itself, or more",
                      "a credit below the price of what they are left from",
                      "correct their worth, the unit it is for, or their shares");
}

PLATEWRIGHT_BODY Problem by_product_of_itself(std::string_view ingredient) {
  return make_problem("by-product-of-itself",
                      "a by-product of " + in_quotes(ingredient) + " that is used as the same",
                      "another ingredient", "name what the by-product is used as");
}

PLATEWRIGHT_BODY Problem pack_ambiguous(std::string_view text, std::string_view many_of) {
  return make_problem("pack-ambiguous", in_quotes(text) + ", which may be a part of a measure",
                      "a pack that can be read in one way only",
                      "write " + std::string(many_of) +
                          " for packs in a case; write a part of a measure as a decimal, or in a "
                          "smaller unit");
}

PLATEWRIGHT_BODY Problem pack_malformed(std::string_view text) {
  return make_problem("pack-malformed", in_quotes(text),
                      "a pack such as 40 lb, 6 x 2.5 kg, 1 bunch or 30",
                      "write how many of what a pack holds");
}

}  // namespace platewright::problems
