// What must hold for every capacity in kitchen measures.

#include <rapidcheck.h>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <optional>
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

/// All that can be measured in one term of each US unit, in 24ths of a teaspoon, with 0 for none.
std::vector<std::vector<int>> us_terms() {
  std::vector<int> teaspoons{0};
  std::vector<int> cups{0};
  std::vector<int> quarts{0};
  for (int whole = 0; whole < 4; ++whole) {
    for (const int part : {0, 3, 6, 12, 18}) {
      if (whole < 3 && whole * 24 + part > 0) teaspoons.push_back(whole * 24 + part);
    }
    for (const int part : {0, 288, 384, 576, 768, 864}) {
      if (whole * 1152 + part > 0) cups.push_back(whole * 1152 + part);
    }
    for (const int part : {0, 1152, 2304, 3456}) {
      if (whole > 0) quarts.push_back(whole * 4608 + part);
    }
  }
  return {quarts, cups, {0, 72, 144, 216}, teaspoons};
}

struct Fewest {
  int terms = 4;
  std::int64_t error = 0;
};

/// The fewest terms within 2 % of `sevenths`/7 24ths of a teaspoon and their least error (in the
/// same sevenths), by trying every sum of up to three terms.
Fewest by_trying_all(std::int64_t sevenths) {
  static const std::vector<std::vector<int>> all = us_terms();
  Fewest fewest;
  for (const int quarts : all[0]) {
    for (const int cups : all[1]) {
      for (const int tablespoons : all[2]) {
        for (const int teaspoons : all[3]) {
          const int terms = (quarts > 0) + (cups > 0) + (tablespoons > 0) + (teaspoons > 0);
          const std::int64_t sum = quarts + cups + tablespoons + teaspoons;
          const std::int64_t error = std::abs(7 * sum - sevenths);
          if (terms == 0 || terms > 3 || error * 50 > sevenths) continue;
          if (terms < fewest.terms || (terms == fewest.terms && error < fewest.error)) {
            fewest = {terms, error};
          }
        }
      }
    }
  }
  return fewest;
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

TEST_CASE("no sum of up to three terms has fewer terms, or as many and less error") {
  CHECK(rc::check("the fewest", [] {
    const auto sevenths = *rc::gen::inRange<std::int64_t>(1, 4608 * 7 + 1);
    const Volume volume = Volume::of(fraction(sevenths, std::int64_t{7} * 24), units::us_teaspoon);
    const KitchenMeasure measure = kitchen_measure(volume, kitchens[0]);
    const Fewest fewest = by_trying_all(sevenths);
    RC_CLASSIFY(measure.nearest_only);
    if (fewest.terms > 3) {
      RC_ASSERT(measure.nearest_only || measure.parts.size() > 3);
    } else {
      RC_ASSERT(measure.parts.size() == static_cast<std::size_t>(fewest.terms));
      RC_ASSERT(size_of(measure.error()) == fraction(fewest.error, sevenths));
    }
  }));
}
