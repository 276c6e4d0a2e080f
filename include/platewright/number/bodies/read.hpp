// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/number/read.hpp.

#include <string>

#include "platewright/number/read.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY NumberPrefix NumberReader::read() {
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

PLATEWRIGHT_BODY char NumberReader::peek(std::size_t ahead) const {
  return position_ + ahead < text_.size() ? text_[position_ + ahead] : '\0';
}

PLATEWRIGHT_BODY void NumberReader::refuse_sign() const {
  if ((peek() == '-' || peek() == '+') && (is_digit(peek(1)) || peek(1) == '.')) {
    fail(problems::number_signed(text_));
  }
  if (follows("\u2212")) fail(problems::number_signed(text_));
}

PLATEWRIGHT_BODY Rational NumberReader::whole() {
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

PLATEWRIGHT_BODY Rational NumberReader::decimals() {
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

PLATEWRIGHT_BODY Rational NumberReader::denominator() {
  position_ += peek() == '/' ? 1 : std::string_view("\u2044").size();
  if (!is_digit(peek())) fail(problems::number_malformed(text_, "nothing below the fraction bar"));
  const Rational value = whole();
  if (value == 0) fail(problems::number_zero_denominator(text_));
  return value;
}

PLATEWRIGHT_BODY Rational NumberReader::fraction_after_whole() {
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

PLATEWRIGHT_BODY std::optional<Rational> NumberReader::fraction_sign() {
  for (const FractionSign& sign : fraction_signs) {
    if (follows(sign.text)) {
      position_ += sign.text.size();
      return fraction(sign.numerator, sign.denominator);
    }
  }
  return std::nullopt;
}

PLATEWRIGHT_BODY void NumberReader::refuse_tail() {
  const char c = peek();
  if (c == ',') fail(problems::number_has_comma(text_));
  if (c == '.' && is_digit(peek(1))) fail(problems::number_malformed(text_, "two decimal points"));
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

}  // namespace detail

PLATEWRIGHT_BODY Rational read_number(std::string_view text) {
  const NumberPrefix prefix = read_number_prefix(text);
  if (prefix.length != text.size()) {
    throw Failure(problems::number_malformed(
        text, "\"" + std::string(text.substr(prefix.length, 20)) + "\" follows the number"));
  }
  return prefix.value;
}

PLATEWRIGHT_BODY Rational read_share(std::string_view text) {
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
