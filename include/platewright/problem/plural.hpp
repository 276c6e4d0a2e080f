// SPDX-License-Identifier: MIT
#pragma once
// One piece and several, in English.

#include <string>
#include <string_view>

#include "platewright/problem/body.hpp"

namespace platewright {

/// `legs` for `leg`, `batches` for `batch`, `patties` for `patty`, `geese` for `goose`; of several
/// words the last changes.
std::string several(std::string_view one);

/// `leg` for `legs`: what `several` gives it back for; a word that is no plural stays.
std::string one_of(std::string_view several_words);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/plural.hpp"
#endif
