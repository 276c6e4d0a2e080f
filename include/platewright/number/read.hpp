// SPDX-License-Identifier: MIT
#pragma once
// Numbers as people type them, read exactly and without any locale.

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "platewright/number/rational.hpp"
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

  NumberPrefix read() {
    refuse_sign();
    Rational value;
    if (const auto sign = fraction_sign()) {
      value = *sign;
    } else {
      value = whole();
      if (peek() == '.') {
        value += decimals();
      } else if (peek() == '/' || follows("\u2044")) {
        value = value / denominator();
      } else {
        value += fraction_after_whole();
      }
    }
    refuse_tail();
    return {value, position_};
  }

 private:
  char peek(std::size_t ahead = 0) const {
    return position_ + ahead < text_.size() ? text_[position_ + ahead] : '\0';
  }
  bool follows(std::string_view what) const { return text_.substr(position_, what.size()) == what; }
  [[noreturn]] void fail(Problem problem) const { throw Failure(std::move(problem)); }

  void refuse_sign() const {
    if ((peek() == '-' || peek() == '+') && (is_digit(peek(1)) || peek(1) == '.')) {
      fail(problems::number_signed(text_));
    }
    if (follows("\u2212")) fail(problems::number_signed(text_));
  }

  /// One run of digits as a whole number; counts digits against the limit.
  Rational whole() {
    if (peek() == '.' && is_digit(peek(1))) {
      fail(problems::number_malformed(text_, "no digit before the point"));
    }
    if (!is_digit(peek())) fail(problems::number_missing(text_));
    Integer value = 0;
    while (is_digit(peek())) {
      if (++digits_ > 18) fail(problems::number_too_long(text_));
      value = value * 10 + (peek() - '0');
      ++position_;
    }
    return Rational(value);
  }

  Rational decimals() {
    ++position_;
    if (!is_digit(peek())) fail(problems::number_malformed(text_, "no digit after the point"));
    Rational value;
    Rational place = 1;
    while (is_digit(peek())) {
      if (++digits_ > 18) fail(problems::number_too_long(text_));
      place /= 10;
      value += place * (peek() - '0');
      ++position_;
    }
    if (peek() == '/') fail(problems::number_malformed(text_, "a decimal inside a fraction"));
    return value;
  }

  Rational denominator() {
    position_ += peek() == '/' ? 1 : std::string_view("\u2044").size();
    if (!is_digit(peek()))
      fail(problems::number_malformed(text_, "nothing below the fraction bar"));
    const Rational value = whole();
    if (value == 0) fail(problems::number_zero_denominator(text_));
    return value;
  }

  /// The `1/2` of `1 1/2`, `1-1/2` or `1½`; 0 where the whole number stands alone.
  Rational fraction_after_whole() {
    const std::size_t kept = position_;
    const int digits_kept = digits_;
    bool hyphen = false;
    if (peek() == ' ' || peek() == '-') {
      hyphen = peek() == '-';
      ++position_;
    }
    if (const auto sign = fraction_sign()) return *sign;
    if (position_ != kept && is_digit(peek())) {
      const Rational top = whole();
      if (peek() == '/' || follows("\u2044")) {
        const Rational bottom = denominator();
        if (top < bottom) return top / bottom;
        if (!hyphen)
          fail(problems::number_malformed(text_, "the fraction of a mixed number is not below 1"));
      }
    }
    position_ = kept;
    digits_ = digits_kept;
    return 0;
  }

  std::optional<Rational> fraction_sign() {
    for (const FractionSign& sign : fraction_signs) {
      if (follows(sign.text)) {
        position_ += sign.text.size();
        return fraction(sign.numerator, sign.denominator);
      }
    }
    return std::nullopt;
  }

  /// What must not follow a number directly, because it would be read as something else.
  void refuse_tail() {
    const char c = peek();
    if (c == ',') fail(problems::number_has_comma(text_));
    if (c == '.' && is_digit(peek(1)))
      fail(problems::number_malformed(text_, "two decimal points"));
    if (c == '/') fail(problems::number_malformed(text_, "two fraction bars"));
    if ((c == 'x' || c == 'X') && is_digit(peek(1)) && position_ == 1 && text_[0] == '0') {
      fail(problems::number_malformed(text_, "a number that is not decimal"));
    }
    if ((c == 'e' || c == 'E') &&
        (is_digit(peek(1)) || ((peek(1) == '+' || peek(1) == '-') && is_digit(peek(2))))) {
      fail(problems::number_exponent(text_));
    }
    for (const FractionSign& sign : fraction_signs) {
      if (follows(sign.text)) fail(problems::number_malformed(text_, "two fractions in a row"));
    }
  }

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
inline Rational read_number(std::string_view text) {
  const NumberPrefix prefix = read_number_prefix(text);
  if (prefix.length != text.size()) {
    throw Failure(problems::number_malformed(
        text, "\"" + std::string(text.substr(prefix.length, 20)) + "\" follows the number"));
  }
  return prefix.value;
}

/// Reads a share: a number, or a number followed by `%`. `12 %`, `0.12` and `3/25` are the same;
/// two weights may be divided as they were weighed: `205/453.59`.
inline Rational read_share(std::string_view text) {
  const std::size_t bar = text.find('/');
  if (bar != std::string_view::npos && text.find('.') != std::string_view::npos) {
    const Rational bottom = read_number(text.substr(bar + 1));
    if (bottom == 0) throw Failure(problems::number_zero_denominator(text));
    return read_number(text.substr(0, bar)) / bottom;
  }
  const NumberPrefix prefix = read_number_prefix(text);
  std::string_view rest = text.substr(prefix.length);
  while (!rest.empty() && rest.front() == ' ') rest.remove_prefix(1);
  if (rest.empty()) return prefix.value;
  if (rest == "%" || rest == "per cent" || rest == "percent") return prefix.value / 100;
  throw Failure(problems::number_malformed(text, "only % may follow a share"));
}

}  // namespace platewright
