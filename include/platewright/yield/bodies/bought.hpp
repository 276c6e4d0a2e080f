// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/bought.hpp.

#include "platewright/yield/bought.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::vector<Loss> held_as_bought(std::string_view bought) {
  for (const BoughtWord& known : bought_words) {
    if (known.word == bought && !known.held.empty()) return {loss_from(known.held)};
  }
  return {};
}

}  // namespace platewright
