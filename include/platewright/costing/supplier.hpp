// SPDX-License-Identifier: MIT
#pragma once
// How a supplier delivers, and for what.

#include <chrono>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/place.hpp"
#include "platewright/quantity/money.hpp"

namespace platewright {

/// From one day to another, both of them in it.
struct DaySpan {
  std::chrono::local_days first;
  std::chrono::local_days last;

  bool covers(const std::chrono::local_days& day) const { return first <= day && day <= last; }
};

/// By when to order. Of an offer with `days` of its own the more of the two counts.
struct CutOff {
  int days = 0;  ///< whole days before that of the delivery
  /// On that day by the clock of the place; all day where nothing is said.
  std::optional<std::chrono::minutes> hour = std::nullopt;
};

/// What a book says of one whom it buys from. Nothing said of it is a supplier who comes every day
/// and asks for no least and no charge.
struct Supplier {
  std::vector<std::chrono::weekday> delivers = {};  ///< every day where none is named
  std::optional<CutOff> cut_off = std::nullopt;
  /// Nothing is delivered on these days, and no order is taken.
  std::vector<DaySpan> closed = {};
  Money minimum = {};          ///< the least that each delivery must come to, its charge beside it
  Money delivery_charge = {};  ///< for each delivery
  bool one_delivery = false;   ///< all of an order is to come on the earliest of its days
  std::string address = {};
  std::string telephone = {};
  Place place = {};

  /// A day of the week on which it delivers, closed or not.
  bool comes_on(const std::chrono::local_days& day) const;
  bool closed_on(const std::chrono::local_days& day) const;
  /// Whether the book says on which days it delivers.
  bool names_days() const { return !delivers.empty() || !closed.empty(); }
};

/// By name.
using Suppliers = std::map<std::string, Supplier>;

/// What is said of this one, or nothing.
Supplier supplier_called(const std::string& name, const Suppliers& suppliers);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/supplier.hpp"
#endif
