// SPDX-License-Identifier: MIT
#pragma once
// An occasion: who comes, what they eat, and when.

#include <optional>
#include <string>
#include <vector>

#include "platewright/costing/quote_terms.hpp"
#include "platewright/event/paper.hpp"
#include "platewright/event/zoned_time.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/place.hpp"

namespace platewright {

/// Guests who eat and pay alike. A portion share of 1/2 eats half a portion; a price share of 0
/// pays nothing.
struct GuestKind {
  std::string name;
  Rational count;
  Rational portion_share = 1;
  Rational price_share = 1;
  std::vector<std::string> without = {};  ///< allergens that they may not eat, by key
  std::optional<Money> own_price = {};    ///< instead of a share of the full price
  std::string payer = {};                 ///< who pays for them; empty is the client
};

/// A recipe of the menu and the share of the guests who take it: of all, or of one kind.
struct MenuLine {
  std::string recipe;
  Rational share = 1;
  Place place;
  std::string guests = {};  ///< the kind that it is for; empty where it is for all
};

struct Event {
  std::string name;
  std::optional<ZonedTime> at;  ///< when the food is served
  std::vector<GuestKind> guests;
  std::vector<MenuLine> menu;
  Rational over;  ///< over-production, as a share of the portions
  QuoteTerms terms;
  Paper paper;
  std::optional<InvoiceTerms> invoice = {};  ///< after the event
  bool has_terms = false;                    ///< the book says how to quote
  Place place;
};

/// The day that an event's prices are those of, where it says when it is.
std::optional<LocalDay> day_of(const Event& event);

/// All heads.
Rational guest_count(const Event& event);

/// Heads by what they eat: two children at half a portion are one.
Rational portion_count(const Event& event);

/// The same of those for whom a line of the menu is.
Rational portion_count(const Event& event, const MenuLine& line);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/event.hpp"
#endif
