// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with a supplier's price list.

#include <cstddef>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem csv_stray_quote();

Problem csv_quote_not_closed();

Problem csv_field_count(std::size_t found, std::size_t wanted);

Problem csv_heading_row(std::string_view text);

Problem csv_empty();

Problem price_list_number(std::string_view found, std::string_view wanted);

/// `written` stands where the price should: nothing, or a word such as MKT.
Problem price_list_row_without_price(std::string_view item, std::string_view written);

/// Each separator by its name: `,`, `;` or `tab`.
Problem price_list_separator(std::string_view stated, std::string_view found);

Problem price_list_without_larder();

Problem price_list_nothing_taken(std::string_view list);

Problem price_list_row_unmatched(std::string_view item);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/price_lists.hpp"
#endif
