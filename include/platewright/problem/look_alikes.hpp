// SPDX-License-Identifier: MIT
#pragma once
// Names that look like others and are not the same.

#include <optional>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/scripts.hpp"

namespace platewright {

/// A warning of a name that has letters of two scripts in one word: with a letter that only looks
/// like the right one it is another name, with prices, yields and allergens of its own. Nothing for
/// any other name.
std::optional<Problem> look_alike_warning(std::string_view name);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/look_alikes.hpp"
#endif
