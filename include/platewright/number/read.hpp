// SPDX-License-Identifier: MIT
#pragma once
// Numbers as people type them, read exactly and without any locale.

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

#include "platewright/number/rational.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright {

/// A number at the start of a text, and how many bytes of the text it took.
struct NumberPrefix {
  Rational value;
  std::size_t length = 0;
};

struct FractionSign {
  std::string_view text;
  int numerator;
  int denominator;
};

/// The fractions that Unicode has a sign for.
inline constexpr std::array<FractionSign, 18> fraction_signs{{
    {"\u00BD", 1, 2},
    {"\u00BC", 1, 4},
    {"\u00BE", 3, 4},
    {"\u2153", 1, 3},
    {"\u2154", 2, 3},
    {"\u215B", 1, 8},
    {"\u215C", 3, 8},
    {"\u215D", 5, 8},
    {"\u215E", 7, 8},
    {"\u2155", 1, 5},
    {"\u2156", 2, 5},
    {"\u2157", 3, 5},
    {"\u2158", 4, 5},
    {"\u2159", 1, 6},
    {"\u215A", 5, 6},
    {"\u2150", 1, 7},
    {"\u2151", 1, 9},
    {"\u2152", 1, 10},
}};

inline bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

namespace detail {

/// Reads numbers from the front of one text; the rules are those of `read_number_prefix`.
class NumberReader {
 public:
  explicit NumberReader(std::string_view text) : text_(text) {}

  NumberPrefix read();

 private:
  char peek(std::size_t ahead = 0) const;
  bool follows(std::string_view what) const { return text_.substr(position_, what.size()) == what; }
  [[noreturn]] void fail(Problem problem) const { throw Failure(std::move(problem)); }

  void refuse_sign() const;

  /// One run of digits as a whole number; counts digits against the limit.
  Rational whole();

  Rational decimals();

  Rational denominator();

  /// The `1/2` of `1 1/2`, `1-1/2` or `1½`; 0 where the whole number stands alone.
  Rational fraction_after_whole();

  std::optional<Rational> fraction_sign();

  /// What must not follow a number directly, because it would be read as something else.
  void refuse_tail();

  std::string_view text_;
  std::size_t position_ = 0;
  int digits_ = 0;
};

}  // namespace detail

/// Reads the number at the start of `text`: `3`, `0.75`, `1/3`, `1 1/2`, `1½`, `1-1/2`. The value
/// is exact. Throws Failure for no number, a sign, a decimal comma, an exponent, a zero
/// denominator, two points, and more than 18 digits.
inline NumberPrefix read_number_prefix(std::string_view text) {
  return detail::NumberReader(text).read();
}

/// Reads a text that is a number and nothing else. Throws Failure as `read_number_prefix` does, and
/// for anything that follows.
Rational read_number(std::string_view text);

/// Reads a share: a number, or a number followed by `%`. `12 %`, `0.12` and `3/25` are the same;
/// two weights may be divided as they were weighed: `205/453.59`.
Rational read_share(std::string_view text);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/number/bodies/read.hpp"
#endif
