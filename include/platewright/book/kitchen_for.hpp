// SPDX-License-Identifier: MIT
#pragma once
// The kitchen that a book's sheets are written for.

#include "platewright/book/book.hpp"

namespace platewright {

/// The book's own kitchen where its measures are of `system`; else what is usual in that system,
/// within the book's tolerance and unrounded where the book's kitchen rounds nothing. Throws
/// Failure where the unit table lacks a unit of it.
inline Kitchen kitchen_for(const Book& book, MeasuringSystem system) {
  const auto& own = book.kitchen;
  if (own && own->system == system) return *own;
  Kitchen kitchen = usual_kitchen(system, book.tables.units);
  if (!own) return kitchen;
  kitchen.tolerance = own->tolerance;
  if (own->rounding.policy == KitchenPolicy::exact) {
    kitchen.rounding = rounding_by(KitchenPolicy::exact, system, book.tables.units);
  }
  return kitchen;
}

}  // namespace platewright
