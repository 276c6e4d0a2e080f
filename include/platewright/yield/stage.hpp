// SPDX-License-Identifier: MIT
#pragma once
// The states that goods pass through between the delivery and the plate.

#include <algorithm>
#include <array>
#include <cstddef>
#include <string>
#include <string_view>

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
inline Stage stage_from(std::string_view name) {
  const auto found = std::find(stage_names.begin(), stage_names.end(), name);
  if (found == stage_names.end()) {
    throw Failure(problems::stage_unknown(
        name, did_you_mean(name, {stage_names.begin(), stage_names.end()})));
  }
  return static_cast<Stage>(found - stage_names.begin());
}

}  // namespace platewright
