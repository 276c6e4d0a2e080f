#pragma once
// The price of a guest at several numbers of guests.

#include <vector>

#include "platewright/event/changes.hpp"

namespace platewright {

/// The whole quote at one number of guests of the same mix.
struct GuestTableRow {
  Rational guests;
  Quote quote;
};

/// One row for each number, in the order given; everything is planned anew, since whole pieces and
/// workers do not follow the guests in proportion. Throws Failure as `change_guests` and
/// `quote_of`.
inline std::vector<GuestTableRow> guest_table(const Occasion& occasion,
                                              const std::vector<Rational>& counts) {
  std::vector<GuestTableRow> out;
  for (const Rational& count : counts) {
    Occasion other = occasion;
    change_guests(other.event, count);
    out.push_back({count, quote_of(other)});
  }
  return out;
}

}  // namespace platewright
