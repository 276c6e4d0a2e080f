// SPDX-License-Identifier: MIT
#pragma once
// The allergens that must be declared, and the names they go by.

#include <algorithm>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/problem/folded_name.hpp"
#include "platewright/safety/allergen_law.hpp"

namespace platewright {

/// One row: an allergen as one law names it. Two laws' rows for the same thing share their key.
struct Allergen {
  std::string name;
  std::string scheme;                ///< `us` or `eu`
  std::string key;                   ///< what the book writes
  std::vector<std::string> names;    ///< foods that are it or always hold it
  std::vector<std::string> implies;  ///< keys of allergens that come with it
  bool name_the_kind = false;        ///< the law wants the species or the grain named
  std::string source;
};

namespace detail {

/// Everyday words that are wider than one allergen, with what each may mean. Taken for one of them,
/// the other would be lost.
struct WideAllergenWord {
  std::vector<std::string_view> words;
  std::vector<std::string_view> may_mean;
};

inline const std::vector<WideAllergenWord>& wide_allergen_words() {
  static const std::vector<WideAllergenWord> list{
      {{"nut", "nuts"}, {"tree nuts", "peanuts"}},
      {{"shellfish", "shell fish", "shell-fish"}, {"crustaceans", "molluscs"}},
      {{"seafood", "sea food", "sea-food"}, {"fish", "crustaceans", "molluscs"}}};
  return list;
}

/// Whether `word` stands in `text` between spaces or the ends, or is all of it but for a slip of
/// the fingers or two.
inline bool means_word(std::string_view text, std::string_view word) {
  const std::string spaced = " " + std::string(text) + " ";
  if (spaced.find(" " + std::string(word) + " ") != std::string::npos) return true;
  return word.size() > 6 && spelling_distance(text, word) <= 2;
}

}  // namespace detail

/// Finds rows by key or by name; capitals do not matter. Holds what it was given.
class AllergenTable {
 public:
  AllergenTable() = default;
  explicit AllergenTable(std::vector<Allergen> rows) : rows_(std::move(rows)) {}

  const std::vector<Allergen>& rows() const { return rows_; }
  /// Whose list the sheets go by; what a recipe holds does not depend on it.
  AllergenLaw law() const { return law_; }
  void go_by(AllergenLaw law) { law_ = law; }

  /// The rows of one key, a law each.
  std::vector<Allergen> rows_of(std::string_view key) const {
    std::vector<Allergen> out;
    for (const Allergen& row : rows_) {
      if (row.key == key) out.push_back(row);
    }
    return out;
  }

  /// The key of an allergen called so: a key before a law's own name before a food's. Throws
  /// Failure with the nearest names.
  const std::string& key_for(std::string_view text) const {
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

  /// The keys with all that come with them.
  std::set<std::string> with_implied(const std::set<std::string>& keys) const {
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

 private:
  /// The keys that a text with a wide word in it may mean; empty for any other text.
  std::string keys_meant(const std::string& text) const {
    std::string out;
    for (const detail::WideAllergenWord& wide : detail::wide_allergen_words()) {
      const bool said =
          std::any_of(wide.words.begin(), wide.words.end(),
                      [&](std::string_view word) { return detail::means_word(text, word); });
      if (!said) continue;
      for (const std::string_view key : wide.may_mean) {
        if (!rows_of(key).empty()) out += (out.empty() ? "" : ", ") + in_quotes(key);
      }
    }
    return out;
  }

  std::vector<Allergen> rows_;
  AllergenLaw law_ = AllergenLaw::both;
};

}  // namespace platewright
