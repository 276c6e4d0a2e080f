#pragma once
// How goods come, and what their weight holds beside what is eaten.

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/catalogue/books.hpp"
#include "platewright/yield/loss.hpp"

namespace platewright {

/// One way in which goods are bought.
struct BoughtWord {
  std::string_view word;
  /// Bone, or shell (`Loss::skin`), that a rung has to take out before a portion is all food.
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

/// The word for what is still held: the shell, where goods come in one.
inline std::string_view held_word(Loss held) {
  return held == Loss::skin ? "shell" : name_of(held);
}

/// What goods that are bought in this way hold beside what is eaten; nothing for other words.
inline std::vector<Loss> held_as_bought(std::string_view bought) {
  for (const BoughtWord& known : bought_words) {
    if (known.word == bought && !known.held.empty()) return {loss_from(known.held)};
  }
  return {};
}

}  // namespace platewright
