// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/price_lists.hpp.

#include <string>

#include "platewright/problem/catalogue/price_lists.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem csv_stray_quote() {
  return make_problem("csv-stray-quote", "a quotation mark inside a field, or text after its end",
                      "a field that is in quotation marks as a whole, those inside it doubled",
                      "write \"\" for a quotation mark, and put the whole field between two more");
}

PLATEWRIGHT_BODY Problem csv_quote_not_closed() {
  return make_problem("csv-quote-not-closed",
                      "a field that begins with a quotation mark and never ends",
                      "a quotation mark at the end of the field",
                      "close the field where it ends, or take the first quotation mark out");
}

PLATEWRIGHT_BODY Problem csv_field_count(std::size_t found, std::size_t wanted) {
  return make_problem("csv-field-count", std::to_string(found) + " fields",
                      std::to_string(wanted) + " fields, as in the header",
                      "look for a separator too many or too few; a field that holds one stands "
                      "between quotation marks");
}

PLATEWRIGHT_BODY Problem csv_heading_row(std::string_view text) {
  return make_problem("csv-heading-row", "the field " + in_quotes(text) + " alone in its row",
                      "an item and its price", "nothing, if it is a heading: the row is left out");
}

PLATEWRIGHT_BODY Problem csv_empty() {
  return make_problem("csv-empty", "a list without a record", "a header, and a row for each item",
                      "export the list again");
}

PLATEWRIGHT_BODY Problem price_list_number(std::string_view found, std::string_view wanted) {
  return make_problem("price-list-number", "the price " + in_quotes(found), std::string(wanted),
                      "say how the list writes its numbers: `decimal: \",\"`, `thousands: "
                      "\".\"`, `sign: $`; nothing is guessed");
}

PLATEWRIGHT_BODY Problem price_list_row_without_price(std::string_view item,
                                                      std::string_view written) {
  const std::string found = written.empty() ? "no price" : in_quotes(written) + " for a price";
  return make_problem("price-list-row-without-price", found + " of " + in_quotes(item),
                      "a price in every row that is taken in",
                      "ask the supplier; until then the row is left out");
}

PLATEWRIGHT_BODY Problem price_list_separator(std::string_view stated, std::string_view found) {
  return make_problem(
      "price-list-separator",
      "a header without one " + in_quotes(stated) + " and with " + in_quotes(found) +
          " between its words",
      "the separator of the list",
      "write `separator: \"" + std::string(found) + "\"` in the file that says how to read it");
}

PLATEWRIGHT_BODY Problem price_list_without_larder() {
  return make_problem("price-list-without-larder",
                      "a price list, and no larder whose ingredients its rows could belong to",
                      "the larder whose ingredients it has prices of",
                      "name the larder's file: `--book larder.yaml`, or among the files to check");
}

PLATEWRIGHT_BODY Problem price_list_nothing_taken(std::string_view list) {
  return make_problem("price-list-nothing-taken",
                      "no row of " + in_quotes(list, 200) + " that can be taken in",
                      "one row or more whose item the larder or `items` names, with a price",
                      "say in `items` what the larder calls them, as in `items: {\"SALT KOSHER "
                      "3LB\": salt}`");
}

PLATEWRIGHT_BODY Problem price_list_row_unmatched(std::string_view item) {
  return make_problem("price-list-row-unmatched", "the item " + in_quotes(item),
                      "an item that `items` or the larder names",
                      "add it to `items` where you buy it; until then the row is left out");
}

}  // namespace platewright::problems
