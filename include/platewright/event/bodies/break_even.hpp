// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/break_even.hpp.

#include <utility>

#include "platewright/event/break_even.hpp"

namespace platewright {

namespace detail {

/// Looks through numbers of guests, many at once where all of them leave something or none does.
class BreakEvenSearch {
 public:
  BreakEvenSearch(MarginSearch& margins, bool wanted) : margins_(margins), wanted_(wanted) {}

  /// The last number from `first` to `last` that is as wanted; nothing where none is, or where the
  /// search ends early: then what is not looked through ends at `open`.
  std::optional<Integer> last_of(const Integer& first, const Integer& last) {
    if (first > last) return std::nullopt;
    if (margins_.is_spent()) return ends_early(last);
    if (is_as_wanted(last)) return last;
    if (first == last || none_is_as_wanted(first, last)) return std::nullopt;
    const Integer middle = (first + last) / 2;
    if (auto found = last_of(middle + 1, last - 1); found || open) return found;
    return last_of(first, middle);
  }

  /// The same, the first of them.
  std::optional<Integer> first_of(const Integer& first, const Integer& last) {
    if (first > last) return std::nullopt;
    if (margins_.is_spent()) return ends_early(first);
    if (is_as_wanted(first)) return first;
    if (first == last || none_is_as_wanted(first, last)) return std::nullopt;
    const Integer middle = (first + last) / 2;
    if (auto found = first_of(first + 1, middle); found || open) return found;
    return first_of(middle + 1, last);
  }

  std::optional<Integer> open;

 private:
  std::optional<Integer> ends_early(const Integer& at) {
    open = at;
    return std::nullopt;
  }

  bool is_as_wanted(const Integer& guests) {
    const bool covered = margins_.anyone_pays(guests) && margins_.margin(guests) >= Money();
    return covered == wanted_;
  }

  bool none_is_as_wanted(const Integer& first, const Integer& last) {
    const auto band = margins_.between(first, last);
    if (!band) return false;
    return wanted_ ? band->most < Money() : band->least >= Money();
  }

  MarginSearch& margins_;
  bool wanted_;  ///< that the cost is covered
};

}  // namespace detail

PLATEWRIGHT_BODY std::optional<BreakEven> break_even(const Occasion& occasion) {
  Event event = occasion.event;
  event.terms.conditions.guaranteed_guests.reset();
  const Quote quote = quote_for(event, event_cost(occasion), occasion.prices);
  event.terms.agreed_price = quote.price;
  const Integer expected = floor_of(quote.guests);
  detail::MarginSearch margins(std::move(event), occasion.book, occasion.prices);
  const bool covered = quote.margin >= Money();
  detail::BreakEvenSearch search(margins, !covered);
  if (covered) {
    const auto loss = search.last_of(1, expected - 1);
    if (search.open) return BreakEven{*search.open + 1, false};
    return BreakEven{loss ? *loss + 1 : Integer(1), true};
  }
  const auto gain = search.first_of(expected + 1, expected * 4);
  if (!gain) return std::nullopt;
  return BreakEven{*gain, true};
}

}  // namespace platewright
