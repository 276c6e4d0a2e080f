// SPDX-License-Identifier: MIT
// What holds for the numbers themselves, in place or not: Boost's own fractions, whose numbers are
// never in place, say what each comes to.

#include "platewright/number/rational.hpp"

#include <rapidcheck.h>

#include "support/catch.hpp"

using namespace platewright;

namespace {

using Reference = boost::multiprecision::number<
    boost::multiprecision::rational_adaptor<boost::multiprecision::cpp_int_backend<>>,
    boost::multiprecision::et_off>;

/// Of 1 to 63 binary digits and either sign, so that results lie on both sides of what is kept in
/// place.
std::int64_t any_whole() {
  const int bits = *rc::gen::inRange(1, 64);
  const auto most =
      static_cast<std::int64_t>((std::uint64_t{1} << static_cast<unsigned>(bits)) - 1);
  const std::int64_t size =
      *rc::gen::oneOf(rc::gen::inRange<std::int64_t>(0, most), rc::gen::just(most));
  return *rc::gen::arbitrary<bool>() ? size : -size;
}

bool is_same(const Rational& ours, const Reference& theirs) {
  return numerator_of(ours) == boost::multiprecision::numerator(theirs) &&
         denominator_of(ours) == boost::multiprecision::denominator(theirs);
}

}  // namespace

TEST_CASE("numbers in place and others are worked with as Boost's fractions are") {
  CHECK(rc::check([] {
    Rational ours;
    Reference theirs;
    for (int i = 0; i < 12; ++i) {
      const std::int64_t top = any_whole();
      const std::int64_t bottom = std::abs(any_whole()) | 1;
      const Rational number = fraction(top, bottom);
      const Reference reference(top, bottom);
      switch (*rc::gen::inRange(0, 5)) {
        case 0:
          ours += number;
          theirs += reference;
          break;
        case 1:
          ours -= number;
          theirs -= reference;
          break;
        case 2:
          ours *= number;
          theirs *= reference;
          break;
        case 3:
          if (top == 0) break;
          ours /= number;
          theirs /= reference;
          break;
        default:
          ours = -ours;
          theirs = -theirs;
      }
      RC_ASSERT(is_same(ours, theirs));
      RC_ASSERT((ours < number) == (theirs < reference));
      RC_ASSERT((ours == number) == (theirs == reference));
      RC_ASSERT(ours == Rational(numerator_of(ours), denominator_of(ours)));
      RC_ASSERT(is_whole(ours) == (boost::multiprecision::denominator(theirs) == 1));
    }
  }));
}
