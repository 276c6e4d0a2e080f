// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/plural.hpp.

#include <array>
#include <cstddef>
#include <initializer_list>

#include "platewright/problem/plural.hpp"

namespace platewright {

namespace detail {

struct IrregularPlural {
  std::string_view one;
  std::string_view several;
};

/// Of what cooks count.
constexpr std::array irregular_plurals = {
    IrregularPlural{"goose", "geese"},     IrregularPlural{"loaf", "loaves"},
    IrregularPlural{"half", "halves"},     IrregularPlural{"fish", "fish"},
    IrregularPlural{"potato", "potatoes"}, IrregularPlural{"tomato", "tomatoes"}};

PLATEWRIGHT_BODY bool ends_with_any(std::string_view word,
                                    std::initializer_list<std::string_view> ends) {
  for (const std::string_view end : ends) {
    if (word.ends_with(end)) return true;
  }
  return false;
}

}  // namespace detail

PLATEWRIGHT_BODY std::string several(std::string_view one) {
  const std::string word(one);
  for (const detail::IrregularPlural& row : detail::irregular_plurals) {
    if (!one.ends_with(row.one)) continue;
    return word.substr(0, word.size() - row.one.size()) + std::string(row.several);
  }
  const bool vowel = detail::ends_with_any(one, {"ay", "ey", "oy", "uy"});
  if (one.size() > 1 && one.ends_with('y') && !vowel) {
    return word.substr(0, word.size() - 1) + "ies";
  }
  return word + (detail::ends_with_any(one, {"ch", "sh", "s", "x", "z"}) ? "es" : "s");
}

PLATEWRIGHT_BODY std::string one_of(std::string_view several_words) {
  const std::string word(several_words);
  for (const detail::IrregularPlural& row : detail::irregular_plurals) {
    if (!several_words.ends_with(row.several)) continue;
    return word.substr(0, word.size() - row.several.size()) + std::string(row.one);
  }
  if (several_words.size() > 3 && several_words.ends_with("ies")) {
    return word.substr(0, word.size() - 3) + "y";
  }
  for (const std::size_t cut : {std::size_t{2}, std::size_t{1}}) {
    if (word.size() <= cut) continue;
    std::string one = word.substr(0, word.size() - cut);
    if (several(one) == word) return one;
  }
  return word;
}

}  // namespace platewright
