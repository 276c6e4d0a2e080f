// SPDX-License-Identifier: MIT
// The chance to earn too little, against what a normal distribution says on paper.

#include "platewright/event/margin_risk.hpp"

#include <cmath>

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// Food of 600 sold for 1000: a margin of 40 %.
Quote simple_quote() {
  QuoteTerms terms;
  terms.rule = PricingRule::margin;
  terms.rule_share = fraction(2, 5);
  return make_quote(money("600"), {{"guests", 10, 1}}, terms, Currency("USD"));
}

double as_double(const Rational& value) {
  return nearest_double(value);
}

/// P(X > x) of a standard normal X.
double above(double x) {
  return 0.5 * std::erfc(x / std::sqrt(2.0));
}

}  // namespace

TEST_CASE("with one uncertain price the chance is that of a normal distribution") {
  const Quote quote = simple_quote();
  // The margin falls below 34 % where the food costs more than 660: 10 % up, one deviation.
  const MarginRisk risk = margin_risk(quote, {{"lamb", money("600"), fraction(1, 10), 0}},
                                      {fraction(34, 100), 7, 20000});
  CHECK(std::abs(as_double(risk.chance) - above(1.0)) < 4 * as_double(risk.standard_error));
  const double p = as_double(risk.chance);
  CHECK(std::abs(as_double(risk.standard_error) - std::sqrt(p * (1 - p) / 20000)) < 1e-9);
}

TEST_CASE("two uncertain prices add up as the squares of their deviations do") {
  const Quote quote = simple_quote();
  // 300 at 20 % and 300 at 0 %: a deviation of 60; 690 is one and a half of it above.
  const MarginRisk risk =
      margin_risk(quote, {{"lamb", money("300"), fraction(1, 5), 0}, {"beef", money("300"), 0, 0}},
                  {fraction(31, 100), 3, 20000});
  CHECK(std::abs(as_double(risk.chance) - above(1.5)) < 4 * as_double(risk.standard_error));
}

TEST_CASE("an uncertain yield stands below the line") {
  const Quote quote = simple_quote();
  // 600 / y > 660 where y < 1 / 1.1, which is 0.0909 below 1: 0.909 deviations.
  const MarginRisk risk = margin_risk(quote, {{"lamb", money("600"), 0, fraction(1, 10)}},
                                      {fraction(34, 100), 5, 20000});
  CHECK(std::abs(as_double(risk.chance) - above(1.0 / 1.1)) < 4 * as_double(risk.standard_error));
}

TEST_CASE("a seed gives the same draws again, another seed others") {
  const std::vector<UncertainCost> costs{{"lamb", money("600"), fraction(1, 10), 0}};
  const auto below = [&](std::uint64_t seed) {
    return margin_risk(simple_quote(), costs, {fraction(34, 100), seed, 1000}).below;
  };
  CHECK(below(1) == below(1));
  CHECK(below(1) != below(2));
}

TEST_CASE("where nothing is uncertain the chance is 0 or 1") {
  const std::vector<UncertainCost> costs{{"lamb", money("600"), 0, 0}};
  CHECK(margin_risk(simple_quote(), costs, {fraction(39, 100), 1, 100}).chance == 0);
  CHECK(margin_risk(simple_quote(), costs, {fraction(41, 100), 1, 100}).chance == 1);
}

TEST_CASE("what can't be drawn is refused") {
  const std::vector<UncertainCost> wide{{"lamb", money("600"), fraction(1, 2), 0}};
  CHECK(problem_of([&] {
          margin_risk(simple_quote(), wide, {0, 1, 1000});
        }).id == "spread-too-wide");
  CHECK(problem_of([&] {
          margin_risk(simple_quote(), {}, {0, 1, 99});
        }).id == "draws-out-of-range");
  CHECK(problem_of([&] {
          margin_risk(simple_quote(), {}, {1, 1, 1000});
        }).id == "share-out-of-range");
}

TEST_CASE("the spread of a price comes from its history, that of a yield from its rungs") {
  PriceEntry entry;
  for (const char* price : {"90", "100", "110"}) {
    entry.purchases.push_back(pack("10 lb", price));
    entry.purchases.back().on = read_local_day("2027-09-01");
  }
  CHECK(price_deviation(entry) == fraction(1, 10));
  entry.purchases.erase(entry.purchases.begin() + 1, entry.purchases.end());
  CHECK(price_deviation(entry) == 0);
  Rung rung;
  rung.yield = fraction(1, 2);
  rung.spread.standard_deviation = fraction(1, 50);
  rung.spread.samples = 4;
  // 4 % x sqrt(1 + 1/4)
  CHECK(std::abs(as_double(yield_deviation(Ladder({rung}))) - 0.04 * std::sqrt(1.25)) < 1e-12);
}

TEST_CASE("bounds without a deviation are a spread, too, and so is the weight of pieces") {
  Rung rung;
  rung.yield = fraction(3, 4);
  rung.spread.low = fraction(53, 100);
  rung.spread.high = fraction(88, 100);
  // JCGM 100:2008, 4.3.7: (high - low) / sqrt(12).
  CHECK(std::abs(as_double(yield_deviation(Ladder({rung}))) - 0.35 / std::sqrt(12.0) / 0.75) <
        1e-12);
  Purchase leg = piece("7 lb", "56", "the butcher");
  CHECK(weight_deviation(leg, money("1000")) == 0);
  leg.spread = amount("0.7 lb");
  CHECK(weight_deviation(leg, money("40")) == fraction(1, 10));
  CHECK(weight_deviation(leg, money("230")) == fraction(1, 20));
  CHECK(UncertainCost{"leg", money("1"), 0, 0, fraction(1, 10)}.is_known());
  CHECK_FALSE(UncertainCost{"salt", money("1"), 0, 0}.is_known());
}

TEST_CASE("an uncertain weight of pieces moves the cost as an uncertain price does") {
  const std::vector<UncertainCost> costs{{"leg", money("600"), 0, 0, fraction(1, 10)}};
  const MarginRisk risk = margin_risk(simple_quote(), costs, {fraction(34, 100), 7, 20000});
  CHECK(std::abs(as_double(risk.chance) - above(1.0)) < 4 * as_double(risk.standard_error));
}

TEST_CASE("the food by ingredient sums to the food") {
  const TestKitchen kitchen = supper_kitchen();
  const Occasion occasion{supper(), kitchen.book, kitchen.prices};
  Money sum;
  for (const UncertainCost& cost : uncertain_costs(occasion, kitchen.prices)) sum += cost.cost;
  CHECK(sum == event_cost(occasion).food);
}
