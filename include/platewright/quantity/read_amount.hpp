// SPDX-License-Identifier: MIT
#pragma once
// Amounts from text: `2 1/4 cups`, `2 lb 3 oz`, `1 cup plus 2 tbsp`, `2-3 tbsp`,
// `2 tbsp to 1/4 cup`, `to taste`.

#include <string>
#include <string_view>
#include <utility>

#include "platewright/number/read.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/quantity/amount.hpp"
#include "platewright/quantity/unit_table.hpp"

namespace platewright {

namespace detail {

/// Reads amounts from the front of one text.
class AmountReader {
 public:
  AmountReader(std::string_view text, const UnitTable& table, MeasuringSystem system)
      : whole_(text), rest_(trimmed_spaces(text)), table_(table), system_(system) {}

  LineAmount read();

 private:
  /// The amount with what is added to it: `1 cup plus 2 tbsp`, `2 lb 3 oz`.
  Amount take_parts(Amount out);

  /// Both ends in the unit of the first.
  LineAmount range_to_the_end(const Amount& low, const Amount& high) const;

  void expect_the_end() const;

  void take(std::size_t bytes) { rest_ = trimmed_spaces(rest_.substr(bytes)); }

  Rational take_number();

  bool take_range_sign();

  bool starts_a_number() const;

  void skip_plus();

  /// The longest run of words that is a unit, or `each` where no word follows the number.
  Unit take_unit();

  /// Most amounts end with one word, which is looked up once.
  bool is_one_word() const;

  /// What to show as the unit that is not known: all words up to the next number.
  std::string_view unknown_unit(std::size_t first_word) const;

  std::string_view whole_;
  std::string_view rest_;
  const UnitTable& table_;
  MeasuringSystem system_;
};

}  // namespace detail

/// Reads what a recipe's line may say. Bare cups and pints are those of `system`. Throws Failure
/// for a malformed number, an unknown or ambiguous unit, and parts that do not mix.
inline LineAmount read_line_amount(std::string_view text, const UnitTable& table,
                                   MeasuringSystem system) {
  return detail::AmountReader(text, table, system).read();
}

/// Reads one amount; a range or "to taste" is refused. Throws Failure as `read_line_amount` does.
Amount read_amount(std::string_view text, const UnitTable& table, MeasuringSystem system);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/quantity/bodies/read_amount.hpp"
#endif
