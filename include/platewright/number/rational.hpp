// SPDX-License-Identifier: MIT
#pragma once
// The numbers that everything is computed in.

#include <boost/multiprecision/cpp_int.hpp>
#include <compare>
#include <concepts>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <memory>
#include <numeric>
#include <stdexcept>
#include <utility>

#include "platewright/number/wide_whole.hpp"
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
///
/// Nearly every number of a kitchen has two halves of at most 63 binary digits. These are kept in
/// place and worked with in 128 bits; what does not fit is kept elsewhere, and comes back as soon
/// as it fits again.
class Rational {
 public:
  /// 0.
  Rational() = default;
  template <detail::WholeNumber Whole>
  Rational(Whole whole) {
    if (is_small(whole)) {
      top_ = static_cast<std::int64_t>(whole);
    } else {
      take(Large(whole));
    }
  }
  Rational(const Integer& whole) { take(Large(whole)); }
  /// `denominator` must not be 0.
  Rational(const Integer& numerator, const Integer& denominator) {
    take(Large(numerator, denominator));
  }
  // The name of the parameter is what a compiler prints where a double is refused.
  template <std::floating_point Write_fraction_or_read_number_or_exact_value>
  Rational(Write_fraction_or_read_number_or_exact_value) = delete;
  template <std::floating_point Write_fraction_or_read_number_or_exact_value, class Denominator>
  Rational(Write_fraction_or_read_number_or_exact_value, Denominator) = delete;
  template <detail::WholeNumber Whole, std::floating_point Write_whole_numbers_above_and_below>
  Rational(Whole, Write_whole_numbers_above_and_below) = delete;
  template <std::same_as<bool> A_truth_value_is_no_number>
  Rational(A_truth_value_is_no_number) = delete;

  Rational(const Rational& other) : top_(other.top_), bottom_(other.bottom_) {
    if (other.large_) large_ = std::make_unique<Large>(*other.large_);
  }
  Rational& operator=(const Rational& other) {
    if (this == &other) return *this;
    return *this = Rational(other);
  }
  /// What is left behind is some number.
  Rational(Rational&& other) noexcept = default;
  Rational& operator=(Rational&& other) noexcept = default;
  ~Rational() = default;

  friend Integer numerator_of(const Rational& value) {
    return value.large_ ? Integer(boost::multiprecision::numerator(*value.large_))
                        : Integer(value.top_);
  }
  friend Integer denominator_of(const Rational& value) {
    return value.large_ ? Integer(boost::multiprecision::denominator(*value.large_))
                        : Integer(value.bottom_);
  }
  friend bool is_whole(const Rational& value) {
    return value.large_ ? boost::multiprecision::denominator(*value.large_) == 1
                        : value.bottom_ == 1;
  }
  /// See `number/nearest_double.hpp`.
  friend double nearest_double(const Rational& value) { return value.large().convert_to<double>(); }

  Rational& operator+=(const Rational& other) {
    if (!both_fit(other)) return take(large() + other.large());
    return add(other.top_, other.bottom_);
  }
  Rational& operator-=(const Rational& other) {
    if (!both_fit(other)) return take(large() - other.large());
    return add(-other.top_, other.bottom_);
  }
  Rational& operator*=(const Rational& other) {
    if (!both_fit(other)) return take(large() * other.large());
    return multiply(other.top_, other.bottom_);
  }
  Rational& operator/=(const Rational& other) {
    if (!both_fit(other)) return take(large() / other.large());
    if (other.top_ == 0) throw std::overflow_error("a division by zero");
    return other.top_ < 0 ? multiply(-other.bottom_, -other.top_)
                          : multiply(other.bottom_, other.top_);
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
    value.top_ = -value.top_;
    if (value.large_) value.large_->backend().negate();
    return value;
  }
  friend bool operator==(const Rational& left, const Rational& right) {
    // Each number has one form alone.
    if (left.both_fit(right)) return left.top_ == right.top_ && left.bottom_ == right.bottom_;
    return left.large_ && right.large_ && *left.large_ == *right.large_;
  }
  friend std::strong_ordering operator<=>(const Rational& left, const Rational& right) {
    if (!left.both_fit(right)) return left.large().compare(right.large()) <=> 0;
    if (left.bottom_ == right.bottom_) return left.top_ <=> right.top_;
    return Wide{left.top_} * right.bottom_ <=> Wide{right.top_} * left.bottom_;
  }

 private:
  using Large = boost::multiprecision::number<
      boost::multiprecision::rational_adaptor<boost::multiprecision::cpp_int_backend<>>,
      boost::multiprecision::et_off>;
  using Wide = SignedWideWhole;

  /// Above and below, so that a sign can always be turned.
  static constexpr std::int64_t most = std::numeric_limits<std::int64_t>::max();

  bool both_fit(const Rational& other) const { return !large_ && !other.large_; }

  Large large() const { return large_ ? *large_ : Large(top_, bottom_); }

  Rational& take(Large value) {
    check_size(value);
    const Integer top = boost::multiprecision::numerator(value);
    const Integer bottom = boost::multiprecision::denominator(value);
    if (is_small(top) && is_small(bottom)) {
      top_ = top.convert_to<std::int64_t>();
      bottom_ = bottom.convert_to<std::int64_t>();
      large_.reset();
    } else {
      large_ = std::make_unique<Large>(std::move(value));
    }
    return *this;
  }

  template <detail::WholeNumber Whole>
  static bool is_small(Whole whole) {
    if constexpr (std::signed_integral<Whole>) return whole >= -most;
    return static_cast<std::uint64_t>(whole) <= std::uint64_t{most};
  }
  static bool is_small(const Integer& whole) {
    return whole.backend().size() == 1 && *whole.backend().limbs() <= std::uint64_t{most};
  }

  /// Of two halves in lowest terms.
  Rational& take(Wide top, Wide bottom) {
    if (top > most || top < -most || bottom > most) {
      return take(Large(whole_of(top), whole_of(bottom)));
    }
    top_ = static_cast<std::int64_t>(top);
    bottom_ = static_cast<std::int64_t>(bottom);
    return *this;
  }

  static Integer whole_of(Wide value) {
    const WideWhole size =
        value < 0 ? -static_cast<WideWhole>(value) : static_cast<WideWhole>(value);
    const Integer out = (Integer(high_half(size)) << 64U) + low_half(size);
    return value < 0 ? Integer(-out) : out;
  }

  /// The greatest common divisor of a whole number and one above 0. One division first: most often
  /// one of the two is 1, or much smaller than the other.
  static std::int64_t common_of(std::int64_t value, std::int64_t divisor) {
    if (divisor == 1 || value == 1) return 1;
    const std::int64_t rest = value % divisor;
    return rest == 0 ? divisor : std::gcd(rest, divisor);
  }

  /// Knuth, The Art of Computer Programming, volume 2, 4.5.1: what the two lines have in common is
  /// taken out first, so that nothing but it can be left to cancel.
  Rational& add(std::int64_t top, std::int64_t bottom) {
    if (bottom_ == bottom && bottom == 1) return take(Wide{top_} + top, 1);
    const std::int64_t common = common_of(bottom_, bottom);
    if (common == 1) return take(Wide{top_} * bottom + Wide{top} * bottom_, Wide{bottom_} * bottom);
    const Wide sum = Wide{top_} * (bottom / common) + Wide{top} * (bottom_ / common);
    const std::int64_t rest = common_of(static_cast<std::int64_t>(sum % common), common);
    return take(sum / rest, Wide{bottom_ / common} * (bottom / rest));
  }

  Rational& multiply(std::int64_t top, std::int64_t bottom) {
    const std::int64_t down = common_of(top_, bottom);
    const std::int64_t up = common_of(top, bottom_);
    return take(Wide{top_ / down} * (top / up), Wide{bottom_ / up} * (bottom / down));
  }

  /// Sums of fractions of ever other denominators have no end. This many binary digits are those of
  /// a thousand figures of eighteen digits, no two of which are alike.
  static void check_size(const Large& value) {
    constexpr std::size_t most_bits = 65'536;
    constexpr std::size_t bits = sizeof(boost::multiprecision::limb_type) * 8;
    const auto& both = value.backend();
    if (both.num().size() * bits > most_bits || both.denom().size() * bits > most_bits) {
      throw Failure(problems::number_too_fine());
    }
  }

  std::int64_t top_ = 0;
  std::int64_t bottom_ = 1;
  std::unique_ptr<Large> large_;  ///< the number, where the two above do not hold it
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

bool is_whole(const Rational& value);

/// `numerator / denominator`; the denominator must not be 0.
inline Rational fraction(std::int64_t numerator, std::int64_t denominator) {
  return Rational(Integer(numerator), Integer(denominator));
}

}  // namespace platewright
