// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with what a book says of suppliers, and with the order that it makes.

#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/nearest.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem cut_off_malformed(std::string_view text);

Problem closed_days_backwards(std::string_view text);

Problem kept_for_malformed(std::string_view text);

Problem supplier_without_offers(std::string_view name, const std::vector<std::string>& known);

/// `instead` says when they come: `they come on Tue 2027-10-05 and wait 3 days`.
Problem delivery_day_closed(std::string_view supplier, std::string_view day, std::string_view goods,
                            std::string_view instead, std::string remedy);

Problem no_delivery_in_time(std::string_view supplier, std::string_view goods,
                            std::string_view needed, int days, std::string remedy);

Problem delivery_too_early(std::string_view goods, std::string_view supplier, std::string_view day,
                           int waits, int keeps, std::string_view needed, std::string remedy);

Problem order_too_late(std::string_view supplier, std::string_view goods, std::string_view order_by,
                       std::string remedy);

/// `what` is an order, or a delivery of one on some day.
Problem order_below_minimum(const std::string& what, std::string_view supplier,
                            std::string_view total, std::string_view least, std::string_view lacks,
                            std::string remedy);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/orders.hpp"
#endif
