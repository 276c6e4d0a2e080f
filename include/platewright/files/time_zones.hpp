// SPDX-License-Identifier: MIT
#pragma once
// The time zones of this machine's tz database.

#include <string_view>

#include "platewright/event/zone_rules.hpp"

namespace platewright {

/// The clock of a zone from 2000 on, by its name in the tz database: `America/Chicago`. Throws
/// Failure for a name that the database does not have, with the nearest that it has; where there is
/// no database; and where it does not reach `day`, so that it could not say when the clocks are
/// turned.
ZoneRules read_time_zone(std::string_view name, const std::chrono::local_days& day);

}  // namespace platewright
