// SPDX-License-Identifier: MIT
#pragma once
// All that a program needs to write a book down: `using namespace platewright::builders` and
// `platewright::literals`.

#include "platewright/book/book.hpp"
#include "platewright/costing/purchase_builders.hpp"
#include "platewright/quantity/literals.hpp"
#include "platewright/recipe/recipe_builders.hpp"
