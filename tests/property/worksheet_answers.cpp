// SPDX-License-Identifier: MIT
// Laws of marking: a figure written out with any number of places is right, one that is cut off
// short is found to be, every known slip is named, and one wrong figure makes one wrong answer.

#include <rapidcheck.h>

#include <algorithm>
#include <map>

#include "platewright/quantity/units.hpp"
#include "platewright/worksheet/check_answers.hpp"
#include "platewright/worksheet/trim_working.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

Mass any_weight() {
  return Mass::of(*rc::gen::inRange(1, 20'000), units::gram);
}

PricePerMass any_price(int least, int most) {
  return Money::of(fraction(*rc::gen::inRange(least, most), 100), units::currency_unit) /
         Mass::of(1, units::kilogram);
}

Working any_working() {
  TrimTest test;
  test.cut = "any";
  test.price = any_price(100, 10'000);
  if (*rc::gen::arbitrary<bool>()) test.labour = any_price(1, 500);
  test.parts.push_back(TrimPart::usable("usable", any_weight()));
  test.parts.push_back(TrimPart::by_product("fat", any_weight(), any_price(0, 90)));
  test.parts.push_back(TrimPart::waste("bone", any_weight()));
  for (const TrimPart& part : test.parts) test.purchased += *part.weight;
  test.portion = any_weight();
  const bool pounds = *rc::gen::arbitrary<bool>();
  return working_of(work_out(test), pounds ? WeighedIn::pounds : WeighedIn::kilograms,
                    any_price(100, 10'000));
}

/// One of whatever the figure is of.
Figure one_of(const Figure& figure) {
  if (std::holds_alternative<Mass>(figure)) return Mass::of(1, units::kilogram);
  if (std::holds_alternative<Money>(figure)) return Money::of(1, units::currency_unit);
  if (std::holds_alternative<PricePerMass>(figure)) {
    return Money::of(1, units::currency_unit) / Mass::of(1, units::kilogram);
  }
  return Rational(1);
}

/// The step's figure with so many places, rounded by the rule named.
Answer written(const WorkingStep& step, unsigned places, Rounding rounding) {
  const Figure one = one_of(step.value);
  const Rational place = Rational(1) / power_of_ten(places);
  const Rational value = round_to(*ratio_of(step.value, one), place, rounding);
  return {step.name, "", *carry_out(Operation::multiply, one, Figure(value)),
          carry_out(Operation::multiply, one, Figure(place))};
}

}  // namespace

TEST_CASE("every step of any sheet is what its terms come to") {
  REQUIRE(rc::check([] {
    for (const WorkingStep& step : any_working()) {
      RC_ASSERT(worked(step.operation, step.terms) == step.value);
    }
  }));
}

TEST_CASE("a figure rounded to any place is never wrong") {
  REQUIRE(rc::check([] {
    const Working working = any_working();
    const auto places = static_cast<unsigned>(*rc::gen::inRange(1, 6));
    std::vector<Answer> answers;
    for (const WorkingStep& step : working) {
      answers.push_back(written(step, places, Rounding::half_up));
    }
    const auto marked = check_answers(working, answers);
    RC_ASSERT(marked.size() == working.size());
    for (const MarkedAnswer& answer : marked) {
      RC_ASSERT(answer.verdict != Verdict::wrong);
      RC_ASSERT(answer.slips.empty());
    }
  }));
}

TEST_CASE("a figure cut off where it is to be rounded up is found") {
  REQUIRE(rc::check([] {
    const Working working = any_working();
    const auto places = static_cast<unsigned>(*rc::gen::inRange(1, 6));
    for (const WorkingStep& step : working) {
      const Answer cut = written(step, places, Rounding::down);
      const bool same = cut.value == written(step, places, Rounding::half_up).value;
      const MarkedAnswer marked = check_answers(working, {cut}).front();
      RC_ASSERT((marked.verdict == Verdict::wrong) != same);
      RC_ASSERT(marked.went(Astray::truncated) != same);
    }
  }));
}

TEST_CASE("every slip that is known of a step is named when it is made") {
  REQUIRE(rc::check([] {
    const Working working = any_working();
    for (const WorkingStep& step : working) {
      for (const KnownSlip& slip : step.slips) {
        const MarkedAnswer marked =
            check_answers(working, {{step.name, "", slip.value, std::nullopt}}).front();
        RC_ASSERT(marked.verdict == Verdict::wrong);
        RC_ASSERT(std::any_of(marked.slips.begin(), marked.slips.end(),
                              [&](const FoundSlip& found) { return found.what == slip.what; }));
      }
    }
  }));
}

TEST_CASE("whoever goes on rightly from one wrong figure has one wrong answer") {
  REQUIRE(rc::check([] {
    const Working working = any_working();
    const auto astray = static_cast<std::size_t>(*rc::gen::inRange(0, 100)) % working.size();
    // Steps between may be left out, as many students leave them.
    const bool all_written = *rc::gen::arbitrary<bool>();
    std::map<std::string, Figure> own;
    std::vector<Answer> answers;
    for (std::size_t i = astray; i < working.size(); ++i) {
      std::vector<Term> terms = working[i].terms;
      for (Term& term : terms) {
        if (const auto found = own.find(term.name); found != own.end()) term.value = found->second;
      }
      Figure value = *worked(working[i].operation, terms);
      if (i == astray) value = *carry_out(Operation::multiply, value, Figure(fraction(7, 5)));
      own[working[i].name] = value;
      if (i == astray || all_written || i % 3 == 0) {
        answers.push_back({working[i].name, "", value, std::nullopt});
      }
    }
    const auto marked = check_answers(working, answers);
    const bool nothing = ratio_of(working[astray].value, one_of(working[astray].value)) == 0;
    RC_ASSERT((marked.front().verdict == Verdict::right) == nothing);
    for (std::size_t i = 1; i < marked.size(); ++i) {
      RC_ASSERT(marked[i].verdict == Verdict::right ||
                marked[i].verdict == Verdict::right_from_own);
    }
  }));
}
