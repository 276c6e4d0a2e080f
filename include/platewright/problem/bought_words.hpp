// SPDX-License-Identifier: MIT
#pragma once
// The words for how goods come, as the tables write them.

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright {

/// One way in which goods are bought.
struct BoughtWord {
  std::string_view word;
  /// Bone, or shell (its loss is that of the skin), that a rung has to take out before a portion is
  /// all food.
  std::string_view held;
};

/// The words that a row of the table of cuts uses. `part` is a part of a bird with its bones.
inline constexpr std::array<BoughtWord, 10> bought_words{{
    {"bone-in", "bone"},
    {"whole bird", "bone"},
    {"part", "bone"},
    {"boneless", ""},
    {"ground", ""},
    {"whole fish", "bone"},
    {"fish steak", "bone"},
    {"fish fillet", ""},
    {"in the shell", "skin"},
    {"shelled", ""},
}};

/// Throws Failure for any other word.
inline void check_bought(std::string_view bought) {
  std::vector<std::string> known;
  for (const BoughtWord& row : bought_words) {
    if (row.word == bought) return;
    known.emplace_back(row.word);
  }
  throw Failure(problems::word_unknown("way of being bought", bought, known));
}

}  // namespace platewright
