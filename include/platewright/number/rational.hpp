#pragma once
// The numbers that everything is computed in.

#include <boost/multiprecision/cpp_int.hpp>
#include <compare>
#include <concepts>
#include <cstddef>
#include <cstdint>
#include <utility>

#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright {

/// A whole number of any size.
using Integer = boost::multiprecision::number<boost::multiprecision::cpp_int_backend<>,
                                              boost::multiprecision::et_off>;

namespace detail {
template <class Type>
concept WholeNumber = std::integral<Type> && !std::same_as<Type, bool>;
}  // namespace detail

/// An exact fraction of any size, always in lowest terms, its sign in the numerator. Whole numbers
/// become one by themselves. A floating-point number never does: 0.1 is not a tenth there. Write
/// `fraction(1, 10)` or read the digits with `read_number("0.1")`; what a double holds to its last
/// binary digit is `exact_value(0.1)`. Dividing by 0 throws std::overflow_error; what comes to more
/// than 65536 binary digits above or below the line throws Failure.
class Rational {
 public:
  /// 0.
  Rational() = default;
  template <detail::WholeNumber Whole>
  Rational(Whole whole) : value_(whole) {}
  Rational(const Integer& whole) : value_(whole) {}
  /// `denominator` must not be 0.
  Rational(const Integer& numerator, const Integer& denominator) : value_(numerator, denominator) {}
  // The name of the parameter is what a compiler prints where a double is refused.
  template <std::floating_point Write_fraction_or_read_number_or_exact_value>
  Rational(Write_fraction_or_read_number_or_exact_value) = delete;
  template <std::floating_point Write_fraction_or_read_number_or_exact_value, class Denominator>
  Rational(Write_fraction_or_read_number_or_exact_value, Denominator) = delete;
  template <detail::WholeNumber Whole, std::floating_point Write_whole_numbers_above_and_below>
  Rational(Whole, Write_whole_numbers_above_and_below) = delete;
  template <std::same_as<bool> A_truth_value_is_no_number>
  Rational(A_truth_value_is_no_number) = delete;

  friend Integer numerator_of(const Rational& value) {
    return boost::multiprecision::numerator(value.value_);
  }
  friend Integer denominator_of(const Rational& value) {
    return boost::multiprecision::denominator(value.value_);
  }
  /// See `number/nearest_double.hpp`.
  friend double nearest_double(const Rational& value) { return value.value_.convert_to<double>(); }

  Rational& operator+=(const Rational& other) {
    value_ += other.value_;
    check_size();
    return *this;
  }
  Rational& operator-=(const Rational& other) {
    value_ -= other.value_;
    check_size();
    return *this;
  }
  Rational& operator*=(const Rational& other) {
    value_ *= other.value_;
    check_size();
    return *this;
  }
  Rational& operator/=(const Rational& other) {
    value_ /= other.value_;
    check_size();
    return *this;
  }
  friend Rational operator+(Rational left, const Rational& right) {
    left += right;
    return left;
  }
  friend Rational operator-(Rational left, const Rational& right) {
    left -= right;
    return left;
  }
  friend Rational operator*(Rational left, const Rational& right) {
    left *= right;
    return left;
  }
  friend Rational operator/(Rational left, const Rational& right) {
    left /= right;
    return left;
  }
  friend Rational operator-(Rational value) {
    value.value_.backend().negate();
    return value;
  }
  friend bool operator==(const Rational& left, const Rational& right) {
    return left.value_ == right.value_;
  }
  friend std::strong_ordering operator<=>(const Rational& left, const Rational& right) {
    return left.value_.compare(right.value_) <=> 0;
  }

 private:
  /// Sums of fractions of ever other denominators have no end. This many binary digits are those of
  /// a thousand figures of eighteen digits, no two of which are alike.
  void check_size() const {
    constexpr std::size_t most_bits = 65'536;
    constexpr std::size_t bits = sizeof(boost::multiprecision::limb_type) * 8;
    const auto& both = value_.backend();
    if (both.num().size() * bits > most_bits || both.denom().size() * bits > most_bits) {
      throw Failure(problems::number_too_fine());
    }
  }

  boost::multiprecision::number<
      boost::multiprecision::rational_adaptor<boost::multiprecision::cpp_int_backend<>>,
      boost::multiprecision::et_off>
      value_;
};

Integer numerator_of(const Rational& value);
Integer denominator_of(const Rational& value);

/// A fraction that fits a table built into the program.
struct Ratio {
  std::int64_t numerator = 0;
  std::int64_t denominator = 1;

  friend constexpr bool operator==(const Ratio&, const Ratio&) = default;
};

inline Rational to_rational(const Ratio& ratio) {
  return Rational(Integer(ratio.numerator), Integer(ratio.denominator));
}

inline bool is_whole(const Rational& value) {
  return denominator_of(value) == 1;
}

/// `numerator / denominator`; the denominator must not be 0.
inline Rational fraction(std::int64_t numerator, std::int64_t denominator) {
  return Rational(Integer(numerator), Integer(denominator));
}

}  // namespace platewright
