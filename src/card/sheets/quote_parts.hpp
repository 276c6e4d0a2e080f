// SPDX-License-Identifier: MIT
#pragma once
// Parts that the sheets of a quote share.

#include <string>
#include <vector>

#include "card/sheets/shared.hpp"
#include "platewright/card/sheet.hpp"
#include "platewright/costing/quote.hpp"

namespace platewright::card {

/// What a line of a quote stands for.
enum class QuoteStepKind {
  food,
  q_factor,
  labour,
  extra,
  delivery,
  overhead,
  contingency,
  billed,
  service,
  gratuity,
  tax,
  discount
};

/// The label of a caterer's income where it is not the subtotal.
inline constexpr const char* income_label = "What we keep of it, without tax";

/// One line of a quote: what it is, how it is worked out, and how much it comes to.
struct QuoteStep {
  QuoteStepKind kind;
  std::string name;
  std::string working;
  Money sum;
};

/// Food, Q factor, labour, extras, overhead and contingency: they sum to the cost of the event.
std::vector<QuoteStep> cost_steps(const Quote& quote, const PriceList& money);

/// What is off, below 0.
std::vector<QuoteStep> discount_steps(const std::vector<DiscountLine>& discounts,
                                      const PriceList& money);

/// The tax of each rate, on top of the prices or in them.
std::vector<QuoteStep> tax_steps(const Quote& quote, const PriceList& money);

/// Billed extras with what is off them, service charge, gratuity and tax that comes on top, as far
/// as there are any: with the subtotal they sum to the total.
std::vector<QuoteStep> charge_steps(const Quote& quote, const PriceList& money);

/// What the client pays, line by line.
Table bill_table(const Quote& quote, const PriceList& money, std::string title = "The quote");

/// Which part of the total each payer pays; nothing where the client pays all.
void add_payers(const Quote& quote, const PriceList& money, Sheet& sheet);

/// The pricing rule with its formula.
std::string rule_text(const QuoteTerms& terms);

/// Title, date, guests and place of an event's sheet.
void begin_event_sheet(const Event& event, Sheet& sheet);

}  // namespace platewright::card
