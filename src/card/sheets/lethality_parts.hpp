// SPDX-License-Identifier: MIT
#pragma once
// What a curve holds, in words.

#include <string>

#include "platewright/heat/lethality.hpp"

namespace platewright::card {

/// `whole meat roast`, `chicken, 7 log, 5 % fat`.
std::string standard_text(const LethalityStandard& standard);

/// `MET: 12 min at 140 °F (60 °C), by 2 h 41 min`, or what is missing.
std::string verdict_text(const LethalityCheck& check);

}  // namespace platewright::card
