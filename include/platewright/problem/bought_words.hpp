// SPDX-License-Identifier: MIT
#pragma once
// The words for how goods come, as the tables write them.

#include <array>
#include <string_view>

#include "platewright/problem/body.hpp"
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
void check_bought(std::string_view bought);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/bought_words.hpp"
#endif
