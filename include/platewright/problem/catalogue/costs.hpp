// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with prices and quotes.

#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem price_missing(std::string_view ingredient);

Problem price_later(std::string_view ingredient, std::string_view first_day);

Problem quote_nobody_pays();

Problem charge_taxed_after_tax();

Problem charge_after_tax_included();

Problem agreed_below_minimum(std::string_view agreed, std::string_view minimum,
                             std::string_view lacks);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/costs.hpp"
#endif
