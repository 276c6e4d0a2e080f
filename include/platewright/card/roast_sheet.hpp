// SPDX-License-Identifier: MIT
#pragma once
// A roast that was worked out, and the log of one.

#include <string>
#include <vector>

#include "platewright/book/tables.hpp"
#include "platewright/card/kitchen_view.hpp"
#include "platewright/card/sheet.hpp"
#include "platewright/heat/lethality.hpp"
#include "platewright/heat/roast_band.hpp"

namespace platewright {

/// The band of times, the rise after the oven and the curve of the core; the minimum temperatures
/// for `kind` of food, and for a whole roast what the planned curves hold; `published` times beside
/// it. It says that the thermometer decides. The least time is rounded down to a minute, the most
/// up.
Sheet roast_sheet(const RoastQuestion& question, const RoastBand& band, const FoodKind& kind,
                  const Tables& tables, const std::vector<PublishedTime>& published,
                  const KitchenView& view);

/// A curve against each table: met or not, by which step, and what is missing. `name` is that of
/// the log.
Sheet lethality_sheet(const std::string& name, const CoreCurve& curve,
                      const std::vector<LethalityStandard>& standards);

}  // namespace platewright
