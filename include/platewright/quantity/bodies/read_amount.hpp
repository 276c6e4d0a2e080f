// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/quantity/read_amount.hpp.

#include <algorithm>

#include "platewright/quantity/read_amount.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY LineAmount AmountReader::read() {
  if (folded_abbreviation(rest_) == "to taste") return {};
  const Rational number = take_number();
  if (take_range_sign()) {
    const Rational upper = take_number();
    const Unit unit = take_unit();
    return range_to_the_end(Amount{number, unit}, Amount{upper, unit});
  }
  const Amount low = take_parts(Amount{number, take_unit()});
  if (take_range_sign()) {
    const Rational upper = take_number();
    return range_to_the_end(low, take_parts(Amount{upper, take_unit()}));
  }
  expect_the_end();
  return low;
}

PLATEWRIGHT_BODY Amount AmountReader::take_parts(Amount out) {
  while (!rest_.empty()) {
    skip_plus();
    if (!starts_a_number()) break;  // a range, or reported as what follows
    const Rational next = take_number();
    out = sum(out, Amount{next, take_unit()});
  }
  return out;
}

PLATEWRIGHT_BODY LineAmount AmountReader::range_to_the_end(const Amount& low,
                                                           const Amount& high) const {
  const Amount same = in_unit(high, low.unit);
  if (same.number <= low.number) {
    throw Failure(problems::amount_malformed(whole_, "a range goes from less to more"));
  }
  expect_the_end();
  return LineAmount::range(low, same);
}

PLATEWRIGHT_BODY void AmountReader::expect_the_end() const {
  if (rest_.empty()) return;
  throw Failure(problems::amount_malformed(whole_, in_quotes(rest_, 20) + " follows the amount"));
}

PLATEWRIGHT_BODY Rational AmountReader::take_number() {
  const NumberPrefix prefix = read_number_prefix(rest_);
  take(prefix.length);
  return prefix.value;
}

PLATEWRIGHT_BODY bool AmountReader::take_range_sign() {
  for (const std::string_view sign : {"\u2013", "-", "to "}) {
    if (rest_.substr(0, sign.size()) != sign) continue;
    take(sign.size());
    return true;
  }
  return false;
}

PLATEWRIGHT_BODY bool AmountReader::starts_a_number() const {
  const auto begins = [this](const FractionSign& sign) {
    return rest_.substr(0, sign.text.size()) == sign.text;
  };
  return (!rest_.empty() && is_digit(rest_.front())) ||
         std::any_of(fraction_signs.begin(), fraction_signs.end(), begins);
}

PLATEWRIGHT_BODY void AmountReader::skip_plus() {
  for (const std::string_view word : {"plus ", "and ", "+ "}) {
    if (rest_.substr(0, word.size()) == word) {
      take(word.size());
      return;
    }
  }
}

PLATEWRIGHT_BODY bool AmountReader::is_one_word() const {
  return rest_.size() < 20 && std::none_of(rest_.begin(), rest_.end(), [](char c) {
           return c == ' ' || c == '+' || is_digit(c);
         });
}

PLATEWRIGHT_BODY Unit AmountReader::take_unit() {
  if (rest_.empty()) return table_.find("each", system_);
  if (is_one_word()) {
    const Unit unit = table_.find(rest_, system_);
    rest_ = {};
    return unit;
  }
  std::size_t best = 0;
  std::size_t words = 0;
  std::size_t first_word = rest_.size();
  for (std::size_t end = 1; end <= rest_.size() && words < 10; ++end) {
    const bool boundary = end == rest_.size() || rest_[end] == ' ' ||
                          (is_digit(rest_[end]) && !is_digit(rest_[end - 1])) || rest_[end] == '+';
    if (!boundary) continue;
    if (++words == 1) first_word = end;
    if (table_.look_up(rest_.substr(0, end), system_)) best = end;
  }
  if (best == 0) return table_.find(unknown_unit(first_word), system_);
  const Unit unit = table_.find(rest_.substr(0, best), system_);
  take(best);
  return unit;
}

PLATEWRIGHT_BODY std::string_view AmountReader::unknown_unit(std::size_t first_word) const {
  std::size_t end = first_word;
  while (end < rest_.size() && !is_digit(rest_[end]) && end < 40) ++end;
  return trimmed_spaces(rest_.substr(0, end));
}

}  // namespace detail

PLATEWRIGHT_BODY Amount read_amount(std::string_view text, const UnitTable& table,
                                    MeasuringSystem system) {
  const LineAmount amount = read_line_amount(text, table, system);
  if (amount.to_taste() || amount.high()) {
    throw Failure(problems::amount_malformed(text, "one single amount is needed here"));
  }
  return *amount.low();
}

}  // namespace platewright
