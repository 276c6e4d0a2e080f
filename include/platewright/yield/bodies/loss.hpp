// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/loss.hpp.

#include <algorithm>

#include "platewright/yield/loss.hpp"

namespace platewright {

PLATEWRIGHT_BODY Loss loss_from(std::string_view name) {
  const auto found = std::find(loss_names.begin(), loss_names.end(), name);
  if (found == loss_names.end()) {
    throw Failure(
        problems::loss_unknown(name, did_you_mean(name, {loss_names.begin(), loss_names.end()})));
  }
  return static_cast<Loss>(found - loss_names.begin());
}

}  // namespace platewright
