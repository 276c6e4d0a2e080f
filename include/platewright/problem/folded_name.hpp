// SPDX-License-Identifier: MIT
#pragma once
// Names as they are compared: capitals and the spaces around and between words do not matter.

#include <string>
#include <string_view>

#include "platewright/problem/body.hpp"

namespace platewright {

/// Small ASCII letters and single spaces; letters beyond ASCII stay as they are. Full stops count:
/// a pan of 2.5 in is none of 25 in.
std::string folded_name(std::string_view name);

/// The same without full stops. For words that are written with and without them: `fl. oz.` is
/// `fl oz`.
std::string folded_abbreviation(std::string_view name);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/folded_name.hpp"
#endif
