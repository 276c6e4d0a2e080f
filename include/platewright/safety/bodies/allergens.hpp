// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/safety/allergens.hpp.

#include <algorithm>

#include "platewright/safety/allergens.hpp"

namespace platewright {

namespace detail {

/// Everyday words that are wider than one allergen, with what each may mean. Taken for one of them,
/// the other would be lost.
struct WideAllergenWord {
  std::vector<std::string_view> words;
  std::vector<std::string_view> may_mean;
};

PLATEWRIGHT_BODY const std::vector<WideAllergenWord>& wide_allergen_words() {
  static const std::vector<WideAllergenWord> list{
      {{"nut", "nuts"}, {"tree nuts", "peanuts"}},
      {{"shellfish", "shell fish", "shell-fish"}, {"crustaceans", "molluscs"}},
      {{"seafood", "sea food", "sea-food"}, {"fish", "crustaceans", "molluscs"}}};
  return list;
}

/// Whether `word` stands in `text` between spaces or the ends, or is all of it but for a slip of
/// the fingers or two.
PLATEWRIGHT_BODY bool means_word(std::string_view text, std::string_view word) {
  const std::string spaced = " " + std::string(text) + " ";
  if (spaced.find(" " + std::string(word) + " ") != std::string::npos) return true;
  return word.size() > 6 && spelling_distance(text, word) <= 2;
}

}  // namespace detail

PLATEWRIGHT_BODY std::vector<Allergen> AllergenTable::rows_of(std::string_view key) const {
  std::vector<Allergen> out;
  for (const Allergen& row : rows_) {
    if (row.key == key) out.push_back(row);
  }
  return out;
}

PLATEWRIGHT_BODY const std::string& AllergenTable::key_for(std::string_view text) const {
  const std::string wanted = folded_name(text);
  for (const Allergen& row : rows_) {
    if (folded_name(row.key) == wanted) return row.key;
  }
  for (const Allergen& row : rows_) {
    if (folded_name(row.name) == wanted) return row.key;
  }
  std::vector<std::string> known;
  for (const Allergen& row : rows_) {
    for (const std::string& name : row.names) {
      if (folded_name(name) == wanted) return row.key;
      known.push_back(name);
    }
    known.push_back(row.key);
  }
  if (const std::string keys = keys_meant(wanted); !keys.empty()) {
    throw Failure(problems::name_unknown("allergen", text, {},
                                         "say which: " + keys + ", or all that are in it"));
  }
  throw Failure(problems::name_unknown("allergen", text, known,
                                       "list them with `platewright tables allergens`"));
}

PLATEWRIGHT_BODY std::set<std::string> AllergenTable::with_implied(
    const std::set<std::string>& keys) const {
  std::set<std::string> out = keys;
  std::vector<std::string> open(keys.begin(), keys.end());
  while (!open.empty()) {
    const std::string key = std::move(open.back());
    open.pop_back();
    for (const Allergen& row : rows_) {
      if (row.key != key) continue;
      for (const std::string& implied : row.implies) {
        if (out.insert(implied).second) open.push_back(implied);
      }
    }
  }
  return out;
}

PLATEWRIGHT_BODY std::string AllergenTable::keys_meant(const std::string& text) const {
  std::string out;
  for (const detail::WideAllergenWord& wide : detail::wide_allergen_words()) {
    const bool said = std::any_of(wide.words.begin(), wide.words.end(), [&](std::string_view word) {
      return detail::means_word(text, word);
    });
    if (!said) continue;
    for (const std::string_view key : wide.may_mean) {
      if (!rows_of(key).empty()) out += (out.empty() ? "" : ", ") + in_quotes(key);
    }
  }
  return out;
}

}  // namespace platewright
