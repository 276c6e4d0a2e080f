// SPDX-License-Identifier: MIT
#pragma once
// Whose list of allergens a sheet goes by.

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright {

/// The nine of the United States (FALCPA 2004 and FASTER Act 2021), the fourteen of the European
/// Union (Regulation (EU) 1169/2011, Annex II), or the names of both.
enum class AllergenLaw { us, eu, both };

inline constexpr std::array all_allergen_laws{AllergenLaw::us, AllergenLaw::eu, AllergenLaw::both};

inline std::string_view name_of(AllergenLaw law) {
  switch (law) {
    case AllergenLaw::us:
      return "us";
    case AllergenLaw::eu:
      return "eu";
    case AllergenLaw::both:
      return "both";
  }
  return {};
}

/// Throws Failure for a word that is none.
inline AllergenLaw allergen_law_from(std::string_view text) {
  std::vector<std::string> known;
  for (const AllergenLaw law : all_allergen_laws) {
    if (name_of(law) == text) return law;
    known.emplace_back(name_of(law));
  }
  throw Failure(problems::word_unknown("list of allergens", text, known));
}

}  // namespace platewright
