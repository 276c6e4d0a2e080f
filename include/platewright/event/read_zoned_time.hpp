// SPDX-License-Identifier: MIT
#pragma once
// When an event is, as typed: `2027-10-09 18:30 America/Chicago`.

#include <functional>
#include <string_view>

#include "platewright/event/zoned_time.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// Gives the rules of a zone by its name, or throws Failure. The day is the one for which they must
/// be known.
using ZoneSource = std::function<ZoneRules(std::string_view name, const std::chrono::local_days&)>;

/// Reads a date and a time (ISO 8601 with a space or a T), then the name of a zone, or an offset
/// and the name, or nothing. Throws Failure for another form, for what does not exist, for what is
/// there twice, and as `zones` does.
ZonedTime read_zoned_time(std::string_view text, const ZoneSource& zones);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/read_zoned_time.hpp"
#endif
