// SPDX-License-Identifier: MIT
#pragma once
// Some rows of allergens (21 U.S.C. 321(qq); Regulation (EU) 1169/2011, Annex II).

#include "platewright/safety/allergens.hpp"

namespace platewright::test {

inline AllergenTable allergen_rows() {
  return AllergenTable(
      {{"milk", "us", "milk", {"butter", "cream"}, {}, false, "21 U.S.C. 321(qq)"},
       {"crustacean shellfish", "us", "crustaceans", {"shrimp"}, {}, true, "21 U.S.C. 321(qq)"},
       {"wheat",
        "us",
        "wheat",
        {"flour"},
        {"cereals containing gluten"},
        false,
        "21 U.S.C. 321(qq)"},
       {"cereals containing gluten",
        "eu",
        "cereals containing gluten",
        {"rye"},
        {},
        true,
        "Regulation (EU) 1169/2011, Annex II"},
       {"milk, including lactose",
        "eu",
        "milk",
        {"lactose"},
        {},
        false,
        "Regulation (EU) 1169/2011, Annex II"}});
}

}  // namespace platewright::test
