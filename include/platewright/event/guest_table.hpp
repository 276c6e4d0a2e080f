// SPDX-License-Identifier: MIT
#pragma once
// The price of a guest at several numbers of guests, and what each leaves at the price quoted.

#include <vector>

#include "platewright/event/changes.hpp"
#include "platewright/event/trial_bound.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// The whole quote at one number of guests of the same mix.
struct GuestTableRow {
  Rational guests;
  Quote quote;      ///< priced for so many
  Quote turned_up;  ///< so many come, at the price that is quoted for the number expected
};

/// One row for each number, in the order given; everything is planned anew, since whole pieces and
/// workers do not follow the guests in proportion. Throws Failure as `change_guests` and
/// `quote_of`, and for more rows than `most_trials`.
std::vector<GuestTableRow> guest_table(const Occasion& occasion,
                                       const std::vector<Rational>& counts);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/guest_table.hpp"
#endif
