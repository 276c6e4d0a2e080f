// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/stage.hpp.

#include <algorithm>

#include "platewright/yield/stage.hpp"

namespace platewright {

PLATEWRIGHT_BODY Stage stage_from(std::string_view name) {
  const auto found = std::find(stage_names.begin(), stage_names.end(), name);
  if (found == stage_names.end()) {
    throw Failure(problems::stage_unknown(
        name, did_you_mean(name, {stage_names.begin(), stage_names.end()})));
  }
  return static_cast<Stage>(found - stage_names.begin());
}

}  // namespace platewright
