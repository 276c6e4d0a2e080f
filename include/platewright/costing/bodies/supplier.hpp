// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/supplier.hpp.

#include <algorithm>

#include "platewright/costing/supplier.hpp"

namespace platewright {

PLATEWRIGHT_BODY bool Supplier::comes_on(const std::chrono::local_days& day) const {
  return delivers.empty() ||
         std::find(delivers.begin(), delivers.end(), std::chrono::weekday(day)) != delivers.end();
}

PLATEWRIGHT_BODY bool Supplier::closed_on(const std::chrono::local_days& day) const {
  return std::any_of(closed.begin(), closed.end(),
                     [&](const DaySpan& span) { return span.covers(day); });
}

PLATEWRIGHT_BODY Supplier supplier_called(const std::string& name, const Suppliers& suppliers) {
  const auto found = suppliers.find(name);
  return found == suppliers.end() ? Supplier() : found->second;
}

}  // namespace platewright
