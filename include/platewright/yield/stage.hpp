// SPDX-License-Identifier: MIT
#pragma once
// The states that goods pass through between the delivery and the plate.

#include <array>
#include <cstddef>
#include <string>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/yields.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/problem/nearest.hpp"

namespace platewright {

/// In the order of the kitchen. `purchased` is the weight as purchased; `trimmed` the edible
/// portion before cooking; `carved` is off the bone and sliced; `served` is what reaches the plate.
enum class Stage { purchased, thawed, trimmed, cooked, carved, served };

/// The name of each stage, in order.
inline constexpr std::array<std::string_view, 6> stage_names{"purchased", "thawed", "trimmed",
                                                             "cooked",    "carved", "served"};

inline std::string_view name_of(Stage stage) {
  return stage_names[static_cast<std::size_t>(stage)];
}

/// The stage of that name. Throws Failure for any other text, with the nearest names.
Stage stage_from(std::string_view name);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/stage.hpp"
#endif
