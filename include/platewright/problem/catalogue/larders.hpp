// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with an ingredient's entry in the larder.

#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/nearest.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem price_without_pack(std::string_view ingredient);

Problem price_malformed(std::string_view text);

Problem currency_malformed(std::string_view text, const std::vector<std::string>& known);

Problem exchange_rate_missing(std::string_view found, std::string_view of_book);

Problem exchange_rate_of_itself(std::string_view code);

Problem yields_exclude_each_other(std::string_view ingredient);

Problem allergens_not_stated(std::string_view ingredient);

Problem by_product_counted_twice(std::string_view name);

Problem price_of_nothing(std::string_view ingredient);

Problem by_products_above_whole(std::string_view ingredient, std::string_view share);

Problem by_products_worth_more(std::string_view ingredient);

Problem by_product_of_itself(std::string_view ingredient);

Problem pack_ambiguous(std::string_view text, std::string_view many_of);

Problem pack_malformed(std::string_view text);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/larders.hpp"
#endif
