// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/safety/food_kind.hpp.

#include "platewright/safety/food_kind.hpp"

namespace platewright {

PLATEWRIGHT_BODY FoodKind::FoodKind(std::string key) : key_(std::move(key)) {
  if (key_.empty()) throw Failure(problems::key_missing("key", "key: poultry"));
}

}  // namespace platewright
