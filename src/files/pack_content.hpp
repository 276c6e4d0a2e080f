// SPDX-License-Identifier: MIT
#pragma once
// What a pack holds, as suppliers write it.

#include <string>

#include "files/reading.hpp"

namespace platewright::reading {

/// `40 lb`; `6 x 2.5 kg` is 15 kg, and so is the trade's `6/2.5 kg`; `6/#10` are six No. 10 cans;
/// `30` and `30 ct` are thirty pieces. A fraction of a measure stays one: `1/2 gal`. Throws Failure
/// for what is no pack, and for a fraction that may be meant either way (`1/5 gal`, `6/8 oz`).
Amount pack_content(const std::string& text, const Reading& reading);

}  // namespace platewright::reading
