// SPDX-License-Identifier: MIT
#pragma once
// What kind of food something is, for its minimum temperature.

#include <string>
#include <utility>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright {

/// A kind of food that a table of minimum temperatures tells apart, as `whole cut` or `poultry`, or
/// food for which no minimum applies, as flour. Which kinds there are is the table's business, as
/// another country's has others: `SafetyTable::kind_called` finds one by its name. Where a book
/// does not say what a food is there is no kind, and never one that was taken for granted.
class FoodKind {
 public:
  /// By its key in the table. Throws Failure for an empty one.
  explicit FoodKind(std::string key);
  static FoodKind without_minimum() { return FoodKind("none", false); }

  bool has_minimum() const { return has_minimum_; }
  /// What a book and a sheet call it; `none` where no minimum applies.
  const std::string& key() const { return key_; }

  friend bool operator==(const FoodKind&, const FoodKind&) = default;

 private:
  FoodKind(std::string key, bool has_minimum) : key_(std::move(key)), has_minimum_(has_minimum) {}

  std::string key_;
  bool has_minimum_ = true;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/safety/bodies/food_kind.hpp"
#endif
