// SPDX-License-Identifier: MIT
#pragma once
// How few guests may come before the event costs more than it brings in.

#include <optional>
#include <utility>

#include "platewright/event/detail/margin_search.hpp"

namespace platewright {

/// From how many guests on an event covers its cost.
struct BreakEven {
  Integer guests;
  /// False where the search ended early: the event covers its cost from `guests` on, and may from
  /// fewer.
  bool is_fewest = true;

  friend bool operator==(const BreakEven&, const BreakEven&) = default;
};

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

/// The fewest guests of the same mix from which on, up to the number expected, what they pay covers
/// what they cost. The full price stays the one that is quoted for the number expected; everything
/// else is planned anew for each number, since whole pieces and workers do not follow the guests in
/// proportion. Where the number expected does not cover the cost, the first number above it that
/// does, up to four times as many; nothing where none is found. What is guaranteed is left out: the
/// number found is the one that is worth being guaranteed.
///
/// Numbers of guests are looked through by halves, a whole range at once where its ends show that
/// all of it is on one side; the answer is that of walking guest by guest. Where a very large event
/// with next to no margin takes more plans than `most_trials`, the search ends early, and says so.
/// Throws Failure as `quote_of` does.
inline std::optional<BreakEven> break_even(const Occasion& occasion) {
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
