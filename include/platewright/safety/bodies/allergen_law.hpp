// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/safety/allergen_law.hpp.

#include <string>
#include <vector>

#include "platewright/safety/allergen_law.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string_view name_of(AllergenLaw law) {
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

PLATEWRIGHT_BODY AllergenLaw allergen_law_from(std::string_view text) {
  std::vector<std::string> known;
  for (const AllergenLaw law : all_allergen_laws) {
    if (name_of(law) == text) return law;
    known.emplace_back(name_of(law));
  }
  throw Failure(problems::word_unknown("list of allergens", text, known));
}

}  // namespace platewright
