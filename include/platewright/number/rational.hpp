#pragma once
// The numbers that everything is computed in.

#include <boost/multiprecision/cpp_int.hpp>
#include <cstdint>

namespace platewright {

/// A whole number of any size.
using Integer = boost::multiprecision::number<boost::multiprecision::cpp_int_backend<>,
                                              boost::multiprecision::et_off>;

/// An exact fraction of any size, always in lowest terms. Never made from text (see
/// `number/read.hpp`) and never from a `double`, except where a function's own comment states the
/// error.
using Rational = boost::multiprecision::number<
    boost::multiprecision::rational_adaptor<boost::multiprecision::cpp_int_backend<>>,
    boost::multiprecision::et_off>;

/// A fraction that fits a table built into the program.
struct Ratio {
  std::int64_t numerator = 0;
  std::int64_t denominator = 1;

  friend constexpr bool operator==(const Ratio&, const Ratio&) = default;
};

inline Rational to_rational(const Ratio& ratio) {
  return Rational(Integer(ratio.numerator), Integer(ratio.denominator));
}

inline Integer numerator_of(const Rational& value) {
  return boost::multiprecision::numerator(value);
}

inline Integer denominator_of(const Rational& value) {
  return boost::multiprecision::denominator(value);
}

inline bool is_whole(const Rational& value) {
  return denominator_of(value) == 1;
}

/// `numerator / denominator`; the denominator must not be 0.
inline Rational fraction(std::int64_t numerator, std::int64_t denominator) {
  return Rational(Integer(numerator), Integer(denominator));
}

}  // namespace platewright
