#pragma once
// How few guests may come before the event costs more than it brings in.

#include <optional>

#include "platewright/event/changes.hpp"

namespace platewright {

namespace detail {

/// What is left of the payments of so many guests of the same mix, at the agreed price.
inline Money margin_at(const Occasion& occasion, const Integer& guests) {
  Occasion other = occasion;
  change_guests(other.event, Rational(guests));
  return quote_of(other).margin;
}

/// Whether anyone of so many guests pays.
inline bool anyone_pays(const Occasion& occasion, const Integer& guests) {
  Event event = occasion.event;
  change_guests(event, Rational(guests));
  for (const GuestKind& kind : event.guests) {
    if (kind.count * kind.price_share > 0) return true;
  }
  return false;
}

}  // namespace detail

/// The fewest guests of the same mix from which on, up to the number expected, what they pay covers
/// what they cost. The full price stays the one that is quoted for the number expected; everything
/// else is planned anew for each number, since whole pieces and workers do not follow the guests in
/// proportion. Where the number expected does not cover the cost, the first number above it that
/// does, up to four times as many; nothing where there is none. What is guaranteed is left out: the
/// number found is the one that is worth being guaranteed. Throws Failure as `quote_of` does.
inline std::optional<Integer> break_even(Occasion occasion) {
  occasion.event.terms.conditions.guaranteed_guests.reset();
  const Quote quote = quote_of(occasion);
  occasion.event.terms.agreed_price = quote.price;
  const Integer expected = floor_of(quote.guests);
  if (quote.margin >= Money()) {
    Integer fewest = expected;
    while (fewest > 1 && detail::anyone_pays(occasion, fewest - 1) &&
           detail::margin_at(occasion, fewest - 1) >= Money()) {
      --fewest;
    }
    return fewest;
  }
  for (Integer more = expected + 1; more <= expected * 4; ++more) {
    if (detail::margin_at(occasion, more) >= Money()) return more;
  }
  return std::nullopt;
}

}  // namespace platewright
