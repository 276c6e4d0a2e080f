// SPDX-License-Identifier: MIT
// What holds for any number that is read, written or shared out.

#include <rapidcheck.h>

#include "platewright/number/apportion.hpp"
#include "platewright/number/read.hpp"
#include "platewright/number/write.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

/// A fraction of at most six digits above and below the bar.
Rational any_fraction() {
  return fraction(*rc::gen::inRange<std::int64_t>(0, 1000000),
                  *rc::gen::inRange<std::int64_t>(1, 1000000));
}

Rational any_step() {
  return *rc::gen::element(fraction(1, 100), fraction(1, 8), Rational(1), fraction(5, 2),
                           fraction(1, 3));
}

/// The value of `0.8(3)`: its fixed digits, and its repeating ones over as many nines.
Rational value_of(const std::string& repeating) {
  const std::size_t point = repeating.find('.');
  const std::size_t open = repeating.find('(');
  const Rational fixed = read_number(repeating.substr(0, point + 1) +
                                     repeating.substr(point + 1, open - point - 1) + "0");
  const std::string period = repeating.substr(open + 1, repeating.size() - open - 2);
  const auto fixed_places = static_cast<unsigned>(open - point - 1);
  const auto period_places = static_cast<unsigned>(period.size());
  return fixed +
         read_number(period) / power_of_ten(fixed_places) / (power_of_ten(period_places) - 1);
}

}  // namespace

TEST_CASE("a number that is written is read back as it was") {
  CHECK(rc::check([] {
    const Rational value = any_fraction();
    RC_ASSERT(read_number(as_fraction(value)) == value);
    RC_ASSERT(read_number(as_mixed(value)) == value);
  }));
}

TEST_CASE("the exact form of what has a decimal is read back as it was") {
  CHECK(rc::check([] {
    const auto digits = *rc::gen::inRange<std::int64_t>(0, 1000000000);
    const Rational value = Rational(digits) / power_of_ten(*rc::gen::inRange(0U, 9U));
    RC_ASSERT(read_number(as_exact(value)) == value);
    RC_ASSERT(as_repeating_decimal(value) == as_exact(value));
  }));
}

TEST_CASE("a repeating decimal is the number itself") {
  CHECK(rc::check([] {
    const Rational value = fraction(*rc::gen::inRange<std::int64_t>(1, 5000),
                                    *rc::gen::inRange<std::int64_t>(1, 5000));
    const std::string written = as_repeating_decimal(value, 12);
    if (written.find('(') != std::string::npos) {
      RC_ASSERT(value_of(written) == value);
    } else {
      RC_ASSERT(read_number(written) == value);
    }
  }));
}

TEST_CASE("text that is no number ends in a problem, never in another number") {
  CHECK(rc::check([] {
    const auto text = *rc::gen::container<std::string>(
        rc::gen::elementOf(std::string("0123456789./- ,eE+x%\xC2\xBD")));
    try {
      const NumberPrefix prefix = read_number_prefix(text);
      RC_ASSERT(prefix.length > 0);
      RC_ASSERT(prefix.length <= text.size());
      RC_ASSERT(prefix.value >= 0);
    } catch (const Failure& failure) {
      RC_ASSERT(failure.problem().id.find("number-") == 0U);
    }
  }));
}

TEST_CASE("each rule of rounding stays within a step, half rules within half of one") {
  CHECK(rc::check([] {
    const Rational value = any_fraction() - any_fraction();
    const Rational step = any_step();
    RC_ASSERT(down_to(value, step) <= value);
    RC_ASSERT(value < down_to(value, step) + step);
    RC_ASSERT(up_to(value, step) >= value);
    RC_ASSERT(value > up_to(value, step) - step);
    for (const Rational& rounded : {half_up(value, step), half_even(value, step)}) {
      RC_ASSERT(2 * (rounded - value) <= step);
      RC_ASSERT(2 * (value - rounded) <= step);
      RC_ASSERT(is_whole(rounded / step));
    }
  }));
}

TEST_CASE("rounded lines sum to the rounded total, and none moves by a step") {
  CHECK(rc::check([] {
    const Rational step = any_step();
    std::vector<Rational> lines;
    Rational total;
    for (int count = *rc::gen::inRange(0, 12); count > 0; --count) {
      lines.push_back(any_fraction() - any_fraction());
      total += lines.back();
    }
    const std::vector<Rational> rounded = apportion(lines, step);
    Rational sum;
    for (std::size_t i = 0; i < lines.size(); ++i) {
      sum += rounded[i];
      RC_ASSERT(rounded[i] - lines[i] < step);
      RC_ASSERT(lines[i] - rounded[i] < step);
    }
    RC_ASSERT(sum == half_up(total, step));
  }));
}
