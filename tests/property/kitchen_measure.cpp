// SPDX-License-Identifier: MIT
// What must hold for every capacity in kitchen measures.

#include <rapidcheck.h>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <optional>
#include <tuple>
#include <vector>

#include "platewright/kitchen/measure.hpp"
#include "platewright/kitchen/usual_measures.hpp"
#include "support/catch.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::unit_table;

namespace {

const std::array<KitchenSet, 3> kitchens{us_kitchen(unit_table()), imperial_kitchen(unit_table()),
                                         metric_kitchen(unit_table())};

/// A capacity from a drop to some hundred litres, of awkward fractions too.
Volume any_volume() {
  const auto numerator = *rc::gen::inRange<std::int64_t>(1, 1000000);
  const auto denominator = *rc::gen::element<std::int64_t>(1, 2, 3, 7, 48, 1000, 9973);
  return Volume::of(fraction(numerator, denominator), units::millilitre);
}

bool measurable(const KitchenPart& part, const KitchenSet& set) {
  return std::any_of(set.tools().begin(), set.tools().end(), [&](const KitchenTool& tool) {
    return tool.unit == part.amount.unit &&
           tool.at_or_below(part.amount.number) == std::optional<Rational>(part.amount.number);
  });
}

Rational size_of(const Rational& value) {
  return value < 0 ? Rational(-value) : value;
}

/// What can be measured in one term, in 24ths of a teaspoon, and the work that it is.
struct Term {
  std::int64_t size = 0;
  int fractions = 0;
  int fillings = 0;
};

/// All terms of one US unit from `first` to `last` whole measures, with the term that is none.
std::vector<Term> terms_of(int size, int first, int last, const std::vector<int>& marks) {
  std::vector<Term> out{{}};
  for (int whole = first; whole <= last; ++whole) {
    if (whole > 0) out.push_back({std::int64_t{whole} * size, 0, whole});
    for (const int mark : marks) out.push_back({std::int64_t{whole} * size + mark, 1, whole + 1});
  }
  return out;
}

struct Fewest {
  int terms = 4;
  std::int64_t error = 0;
  int fractions = 0;
  int fillings = 0;

  friend bool operator<(const Fewest& left, const Fewest& right) {
    return std::tie(left.terms, left.error, left.fractions, left.fillings) <
           std::tie(right.terms, right.error, right.fractions, right.fillings);
  }
};

/// All US units, the largest first; a term of spoons is ended by the next larger spoon.
const std::vector<std::vector<Term>>& us_terms() {
  static const std::vector<std::vector<Term>> all = [] {
    std::vector<Term> tablespoons = terms_of(72, 1, 3, {});
    std::vector<Term> teaspoons = terms_of(24, 0, 2, {3, 6, 12, 18});
    return std::vector<std::vector<Term>>{
        terms_of(18432, 1, 7, {9216}), terms_of(4608, 1, 3, {1152, 2304, 3456}),
        terms_of(1152, 0, 3, {288, 384, 576, 768, 864}), tablespoons, teaspoons};
  }();
  return all;
}

/// The best sum from unit `unit` on, by trying every sum of up to three terms.
void try_all(std::size_t unit, std::int64_t sevenths, std::int64_t sum, const Fewest& so_far,
             Fewest& best) {
  if (so_far.terms > 3 || 7 * sum * 50 > sevenths * 51) return;
  if (unit == us_terms().size()) {
    Fewest whole = so_far;
    whole.error = std::abs(7 * sum - sevenths);
    if (whole.terms == 1) whole.fractions = 0;
    if (whole.terms > 0 && whole.error * 50 <= sevenths && whole < best) best = whole;
    return;
  }
  for (const Term& term : us_terms()[unit]) {
    Fewest next = so_far;
    next.terms += term.size > 0 ? 1 : 0;
    next.fractions += term.fractions;
    next.fillings += term.fillings;
    try_all(unit + 1, sevenths, sum + term.size, next, best);
  }
}

/// The sum of up to three terms within 2 % of `sevenths`/7 24ths of a teaspoon that has the fewest
/// terms, then the least error (in the same sevenths), the fewest fractions, the fewest fillings.
Fewest by_trying_all(std::int64_t sevenths) {
  Fewest best;
  try_all(0, sevenths, 0, Fewest{0, 0, 0, 0}, best);
  return best;
}

}  // namespace

TEST_CASE("a kitchen measure is the sum of its parts, within the tolerance unless it says not") {
  CHECK(rc::check("sum and tolerance", [] {
    const KitchenSet& set = kitchens[*rc::gen::inRange<std::size_t>(0, kitchens.size())];
    const Volume volume = any_volume();
    const KitchenMeasure measure = kitchen_measure(volume, set);
    Rational sum;
    for (const KitchenPart& part : measure.parts) {
      RC_ASSERT(part.amount.number > 0);
      RC_ASSERT(measurable(part, set));
      sum += part.amount.canonical();
    }
    RC_ASSERT(measure.measured == sum);
    RC_ASSERT(measure.asked == volume.in(units::millilitre));
    RC_ASSERT((size_of(measure.error()) <= fraction(2, 100)) != measure.nearest_only);
  }));
}

TEST_CASE("a sum that can be measured exactly is found exactly at no tolerance") {
  CHECK(rc::check("there and back", [] {
    const KitchenSet& set = kitchens[*rc::gen::inRange<std::size_t>(0, kitchens.size())];
    const KitchenMeasure first = kitchen_measure(any_volume(), set);
    const Volume again = Volume::of(first.measured, units::millilitre);
    const KitchenMeasure second = kitchen_measure(again, set, 0);
    RC_ASSERT(second.error() == 0);
    RC_ASSERT(!second.nearest_only);
    RC_ASSERT(second.parts.size() <= first.parts.size());
  }));
}

TEST_CASE("no sum of up to three terms is less work: fewer terms, less error, fewer pourings") {
  CHECK(rc::check("the fewest", [] {
    const std::int64_t most = *rc::gen::element<std::int64_t>(4608, 6 * 18432);
    const auto sevenths = *rc::gen::inRange<std::int64_t>(1, most * 7 + 1);
    // Half of them what a recipe says: whole half cups.
    constexpr std::int64_t half_cup = std::int64_t{7} * 576;
    const bool plain = sevenths > half_cup && *rc::gen::arbitrary<bool>();
    const std::int64_t asked = plain ? sevenths / half_cup * half_cup : sevenths;
    const Volume volume = Volume::of(fraction(asked, std::int64_t{7} * 24), units::us_teaspoon);
    const KitchenMeasure measure = kitchen_measure(volume, kitchens[0]);
    const Fewest fewest = by_trying_all(asked);
    RC_CLASSIFY(measure.nearest_only);
    if (fewest.terms > 3) {
      RC_ASSERT(measure.nearest_only || measure.parts.size() > 3);
    } else {
      RC_ASSERT(measure.parts.size() == static_cast<std::size_t>(fewest.terms));
      RC_ASSERT(size_of(measure.error()) == fraction(fewest.error, asked));
      RC_ASSERT(pourings_of(measure) == (Pourings{fewest.fractions, fewest.fillings}));
    }
  }));
}
