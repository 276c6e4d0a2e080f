// SPDX-License-Identifier: MIT
// Every line and figure that the money sheets print can be asked why.

#include <type_traits>

#include "platewright/card/cost_sheet.hpp"
#include "platewright/card/quote_sheet.hpp"
#include "platewright/event/occasion.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Occasion occasion() {
  const TestKitchen kitchen = supper_kitchen();
  Occasion out{supper(), kitchen.book, kitchen.prices};
  QuoteTerms& terms = out.event.terms;
  terms.rule = PricingRule::margin;
  terms.rule_share = fraction(3, 10);
  terms.q_factor = fraction(1, 20);
  terms.overhead = fraction(1, 10);
  terms.contingency = fraction(1, 50);
  terms.labour = {{"cook", 2, time_of("8 h"), money("25.00") / time_of("1 h")}};
  terms.extras = {{"van", money("80.00")}, {"tent", money("300.00"), false, true}};
  terms.price_steps = {{50, fraction(1, 50)}};
  terms.minimum_charge = money("9000.00");
  terms.service = Charge{fraction(18, 100), true};
  terms.gratuity = Charge{fraction(2, 100)};
  terms.tax = fraction(8, 100);
  terms.conditions.guaranteed_guests = 90;
  terms.conditions.deposit = Deposit{fraction(1, 4), {}, {}};
  return out;
}

/// What stands first in every line with a figure: rows, totals, and facts.
void add_labels(const Sheet& sheet, std::vector<std::string>& out) {
  for (const Block& block : sheet.blocks) {
    if (const auto* table = std::get_if<Table>(&block)) {
      if (table->key == "edible_portions") continue;
      for (const RowGroup& group : table->groups) {
        for (const Row& row : group.rows) {
          if (row.back().exact) out.push_back(row.front().text);
        }
      }
      for (const Row& row : table->totals) out.push_back(row.front().text);
    } else if (const auto* facts = std::get_if<Facts>(&block)) {
      for (const Fact& fact : facts->facts) {
        const bool given = fact.key == "guaranteed_guests" || fact.key == "portions";
        if (fact.value.exact && !given) out.push_back(fact.label);
      }
    }
  }
}

}  // namespace

TEST_CASE("every line of a quote can be asked why") {
  const Occasion asked = occasion();
  const EventCost cost = event_cost(asked);
  const Quote quote = quote_for(asked.event, cost, asked.prices);
  REQUIRE(quote.missing);
  REQUIRE(quote.minimum_raise > Money());
  std::vector<std::string> labels;
  add_labels(quote_sheet(asked.event, quote, std::nullopt), labels);
  CHECK(labels.size() > 25);
  for (const std::string& label : labels) {
    INFO(label);
    CHECK_NOTHROW(why_sheet(asked.event, cost, quote, label, asked.prices));
  }
}

TEST_CASE("every line of a plate cost can be asked why") {
  const Occasion asked = occasion();
  const EventCost event = event_cost(asked);
  const PlateCost& cost = event.dishes.front();
  std::vector<std::string> labels;
  add_labels(cost_sheet(cost, asked.prices), labels);
  CHECK(labels.size() > 5);
  for (const std::string& label : labels) {
    INFO(label);
    CHECK_NOTHROW(why_sheet(cost, label, asked.prices));
    CHECK_NOTHROW(why_sheet(asked.event, event, label, asked.prices));
  }
  CHECK(problem_of([&] { why_sheet(cost, "lamp leg", asked.prices); }).remedy ==
        "did you mean \"lamb leg\"? If not, name a line as the quote or a plate cost prints it");
}
