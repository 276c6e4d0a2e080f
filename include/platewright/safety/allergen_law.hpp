// SPDX-License-Identifier: MIT
#pragma once
// Whose list of allergens a sheet goes by.

#include <array>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright {

/// The nine of the United States (FALCPA 2004 and FASTER Act 2021), the fourteen of the European
/// Union (Regulation (EU) 1169/2011, Annex II), or the names of both.
enum class AllergenLaw { us, eu, both };

inline constexpr std::array all_allergen_laws{AllergenLaw::us, AllergenLaw::eu, AllergenLaw::both};

std::string_view name_of(AllergenLaw law);

/// Throws Failure for a word that is none.
AllergenLaw allergen_law_from(std::string_view text);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/safety/bodies/allergen_law.hpp"
#endif
