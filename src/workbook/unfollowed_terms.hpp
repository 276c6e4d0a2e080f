#pragma once
// Which terms of a quote its sheet in a workbook has no formulas for.

#include <string>
#include <vector>

#include "platewright/costing/quote.hpp"

namespace platewright::pages {

/// In words, in the plural: `discounts`; none where the sheet can follow the whole quote.
std::vector<std::string> unfollowed_terms(const Quote& quote);

}  // namespace platewright::pages
