// SPDX-License-Identifier: MIT
#pragma once
// The tables that nearly every test asks, made once for a test program.

#include "platewright/book/tables.hpp"
#include "platewright/recipe/recipe_builders.hpp"

namespace platewright::test {

using builders::unit_table;

inline const Tables& the_tables() {
  static const Tables out = built_in_tables();
  return out;
}

}  // namespace platewright::test
