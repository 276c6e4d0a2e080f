// SPDX-License-Identifier: MIT
#pragma once
// The allergens that must be declared, and the names they go by.

#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/problem/body.hpp"
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
  std::vector<Allergen> rows_of(std::string_view key) const;

  /// The key of an allergen called so: a key before a law's own name before a food's. Throws
  /// Failure with the nearest names.
  const std::string& key_for(std::string_view text) const;

  /// The keys with all that come with them.
  std::set<std::string> with_implied(const std::set<std::string>& keys) const;

 private:
  /// The keys that a text with a wide word in it may mean; empty for any other text.
  std::string keys_meant(const std::string& text) const;

  std::vector<Allergen> rows_;
  AllergenLaw law_ = AllergenLaw::both;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/safety/bodies/allergens.hpp"
#endif
