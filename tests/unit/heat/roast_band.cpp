// SPDX-License-Identifier: MIT
#include "platewright/heat/roast_band.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/roast_terms.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

RoastQuestion leg(int weight, int oven = 325, int pull = 130) {
  return RoastQuestion::of(roast_terms(RoastShape::sphere(pounds(weight)), oven, pull));
}

}  // namespace

TEST_CASE("a roast comes out when its core is at the temperature asked for") {
  const RoastBand band = roast_band(leg(6));
  for (const RoastCourse* course :
       {&band.courses.least, &band.courses.likely, &band.courses.most}) {
    const auto& readings = course->curve.readings();
    CHECK(nearest_double(readings.front().core.in_fahrenheit()) == Approx(40));
    const auto out =
        std::find_if(readings.begin(), readings.end(),
                     [&](const CoreReading& reading) { return reading.at == course->in_oven; });
    REQUIRE(out != readings.end());
    CHECK(nearest_double((out->core - fahrenheit(130)).in(units::fahrenheit_step)) ==
          Approx(0).margin(0.01));
    CHECK(nearest_double((readings.back().at - course->in_oven).in(units::minute)) == Approx(20));
  }
}

TEST_CASE("the answer is a band, and the core rises after the oven") {
  const RoastBand band = roast_band(leg(6));
  CHECK(band.in_oven.least < band.in_oven.likely);
  CHECK(band.in_oven.likely < band.in_oven.most);
  CHECK(band.highest.least > fahrenheit(130));
  CHECK(band.highest.least <= band.highest.likely);
  CHECK(band.highest.likely <= band.highest.most);
  CHECK_FALSE(band.calibrated);
}

TEST_CASE("a hot start shortens the rest of the roast and is followed by the clock") {
  RoastTerms terms = roast_terms(RoastShape::sphere(pounds(6)), 325, 130);
  terms.oven = {{fahrenheit(450), minutes(25)}, {fahrenheit(325), {}}};
  CHECK(roast_band(RoastQuestion::of(terms)).in_oven.likely < roast_band(leg(6)).in_oven.likely);
  // Done in the first step: the second is never reached.
  terms.shape = RoastShape::slab(pounds(1), Length::of(1, units::inch));
  CHECK(roast_band(RoastQuestion::of(terms)).in_oven.most < minutes(25));
}

TEST_CASE("a fan oven is the faster one") {
  RoastTerms terms = roast_terms(RoastShape::sphere(pounds(6)), 325, 130);
  terms.oven_kind = OvenKind::fan;
  CHECK(roast_band(RoastQuestion::of(terms)).in_oven.likely < roast_band(leg(6)).in_oven.likely);
}

TEST_CASE("a roast that is never done") {
  const RoastQuestion question = leg(60, 135, 134);
  CHECK(problem_of([&] { roast_band(question); }).id == "roast-never-done");
}

TEST_CASE("the cook's own timed roast narrows the band") {
  const Calibration own = calibrated_by(leg(6), minutes(150));
  const RoastBand same = roast_band(leg(6), own);
  CHECK(same.calibrated);
  CHECK(nearest_double(same.in_oven.likely.in(units::minute)) == Approx(150).margin(0.02));
  CHECK(nearest_double(same.in_oven.least.in(units::minute)) == Approx(135).margin(0.02));
  CHECK(nearest_double(same.in_oven.most.in(units::minute)) == Approx(165).margin(0.02));
  const RoastBand other = roast_band(leg(9), own);
  const RoastBand unfitted = roast_band(leg(9));
  CHECK(other.in_oven.likely > same.in_oven.likely);
  const auto width = [](const RoastBand& band) {
    return (band.in_oven.most - band.in_oven.least) / band.in_oven.likely;
  };
  CHECK(width(other) > width(same));
  CHECK(width(other) < width(unfitted));
}

TEST_CASE("a timed roast with steps by the clock is met as well") {
  RoastTerms terms = roast_terms(RoastShape::sphere(pounds(6)), 325, 130);
  terms.oven = {{fahrenheit(450), minutes(25)}, {fahrenheit(325), {}}};
  const RoastQuestion question = RoastQuestion::of(terms);
  const RoastBand band = roast_band(question, calibrated_by(question, minutes(110)));
  CHECK(nearest_double(band.in_oven.likely.in(units::minute)) == Approx(110).margin(0.02));
}

TEST_CASE("a timed roast that can't be this one") {
  CHECK(problem_of([] { calibrated_by(leg(6), minutes(20)); }).id == "timed-roast");
  CHECK(problem_of([] { calibrated_by(leg(6), minutes(1500)); }).id == "timed-roast");
}
