// SPDX-License-Identifier: MIT
#pragma once
// What a yield already accounts for.

#include <array>
#include <cstddef>
#include <string>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/yields.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/problem/nearest.hpp"

namespace platewright {

/// A change of weight that a yield holds. `purge` is the liquid lost in the bag or while thawing;
/// `skin` stands for peel, shell and husk too; `water_taken_up` is the one that adds weight
/// (grains, dried pulses, brined meat).
enum class Loss { purge, trim, bone, skin, cooking, carving, water_taken_up };

/// The name of each loss, in the order of `Loss`.
inline constexpr std::array<std::string_view, 7> loss_names{
    "purge", "trim", "bone", "skin", "cooking", "carving", "water taken up"};

inline std::string_view name_of(Loss loss) {
  return loss_names[static_cast<std::size_t>(loss)];
}

/// The loss of that name. Throws Failure for any other text, with the nearest names.
Loss loss_from(std::string_view name);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/loss.hpp"
#endif
