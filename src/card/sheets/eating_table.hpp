// SPDX-License-Identifier: MIT
#pragma once
// Who can eat what.

#include <optional>
#include <vector>

#include "platewright/card/blocks.hpp"
#include "platewright/event/eating.hpp"

namespace platewright::card {

/// A row for each dish, a column for each kind of guest who may not eat everything; nothing where
/// all guests may.
std::optional<Table> eating_table(const Event& event, const std::vector<DishNotice>& notices);

}  // namespace platewright::card
