// SPDX-License-Identifier: MIT
#pragma once
// How a page of HTML looks, on a screen and on paper.

#include "card/html/html.hpp"

namespace platewright::detail {

/// Black on white, or light on dark on a screen that wants it so; on paper always the former. All
/// lengths follow the size of the body's letters.
extern const Literal page_style;

}  // namespace platewright::detail
