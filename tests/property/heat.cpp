// SPDX-License-Identifier: MIT
// Laws of conduction into a roast that hold for any figures.

#include <rapidcheck.h>

#include <cmath>

#include "platewright/heat/roast_band.hpp"
#include "support/catch.hpp"
#include "support/roast_terms.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

double any(int least, int most, double unit) {
  return *rc::gen::inRange(least, most) * unit;
}

HeatPath any_path() {
  return {any(1, 30, 0.01), any(0, 21, 0.1)};
}

ThermalProperties any_meat() {
  return {any(30, 60, 0.01), any(900, 1200, 1), any(2500, 4000, 1)};
}

Surroundings any_oven() {
  Surroundings out{any(0, 300, 1), any(1, 100, 1)};
  if (*rc::gen::arbitrary<bool>()) out.hottest_surface = 100;
  return out;
}

}  // namespace

TEST_CASE("what comes in through the surface is what the body has more") {
  REQUIRE(rc::check([] {
    const HeatPath path = any_path();
    const ThermalProperties meat = any_meat();
    ConductingBody body(path, meat, any(0, 40, 1));
    const double before = body.heat();
    double came_in = 0;
    double most = std::abs(before);
    for (int change = 0; change < 3; ++change) {
      const Surroundings around = any_oven();
      const double step = any(1, 200, 1);
      for (int i = 0; i < 20; ++i) {
        came_in += body.step(step, around);
        most = std::max(most, std::abs(body.heat()));
      }
    }
    RC_ASSERT(std::abs(body.heat() - before - came_in) <= 1e-9 * most);
  }));
}

TEST_CASE("no part of a body leaves the span between its start and its oven") {
  REQUIRE(rc::check([] {
    const HeatPath path = any_path();
    const double start = any(0, 40, 1);
    const Surroundings oven = any_oven();
    ConductingBody body(path, any_meat(), start);
    const double step = body.longest_step();
    const double low = std::min(start, oven.celsius) - 1e-6;
    const double high = std::max(start, oven.celsius) + 1e-6;
    for (int i = 0; i < 300; ++i) {
      body.step(step, oven);
      RC_ASSERT(body.core() >= low);
      RC_ASSERT(body.core() <= high);
      RC_ASSERT(body.surface(oven) <= oven.hottest_surface);
    }
  }));
}

TEST_CASE("time grows as weight to the power of two thirds where the surface keeps pace") {
  // The same Biot number: the exchange coefficient falls as the radius grows.
  REQUIRE(rc::check([] {
    const RoastTerms terms = roast_terms(RoastShape::sphere(pounds(5)), 325, 130);
    const double larger = any(11, 40, 0.1);
    RoastModel model = roast_models(terms).likely;
    const RoastQuestion question = RoastQuestion::of(terms);
    const double first = nearest_double(roast_course(model, question).in_oven.in(units::second));
    model.path.radius *= std::cbrt(larger);
    model.oven_exchange /= std::cbrt(larger);
    const double second = nearest_double(roast_course(model, question).in_oven.in(units::second));
    RC_ASSERT(std::abs(second / first / std::pow(larger, 2.0 / 3) - 1) < 1e-3);
  }));
}

TEST_CASE("time in an oven that changes nothing but the pace goes with the pace") {
  REQUIRE(rc::check([] {
    const RoastTerms terms = roast_terms(RoastShape::sphere(pounds(4)), 350, 140);
    const RoastQuestion question = RoastQuestion::of(terms);
    const RoastModel model = roast_models(terms).likely;
    const double pace = any(5, 20, 0.1);
    const double first = nearest_double(roast_course(model, question).in_oven.in(units::second));
    const double second =
        nearest_double(roast_course(at_pace(model, pace), question).in_oven.in(units::second));
    RC_ASSERT(std::abs(second / first / pace - 1) < 1e-3);
  }));
}
