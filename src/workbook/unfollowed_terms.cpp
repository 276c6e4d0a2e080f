#include "workbook/unfollowed_terms.hpp"

#include <algorithm>

namespace platewright::pages {

std::vector<std::string> unfollowed_terms(const Quote& quote) {
  const QuoteTerms& terms = quote.terms;
  std::vector<std::string> out;
  const auto add = [&](bool there, const char* words) {
    if (there) out.emplace_back(words);
  };
  add(terms.prices_include_tax, "prices with their tax in them");
  add(terms.tax.size() > 1, "several rates of tax");
  add(!terms.discounts.empty(), "discounts");
  add(std::any_of(quote.lines.begin(), quote.lines.end(),
                  [](const QuoteLine& line) { return line.guests.own_price.has_value(); }),
      "guests with a price of their own");
  add(terms.minimum_price.has_value(), "a minimum for a guest");
  add(terms.conditions.second_deposit.has_value(), "two deposits");
  return out;
}

}  // namespace platewright::pages
