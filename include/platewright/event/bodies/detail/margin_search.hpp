// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/detail/margin_search.hpp.

#include <algorithm>
#include <string>
#include <utility>

#include "platewright/event/detail/margin_search.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY MarginSearch::MarginSearch(Event event, const RecipeBook& book,
                                            const PriceList& prices)
    : event_(std::move(event)), book_(book), prices_(prices), expected_(event_.guests) {
  for (const GuestKind& kind : event_.guests) mix_.push_back(kind.count / guest_count(event_));
  const Production production = plan_production(event_, book_, prices_);
  left_ = most_trials(size_of_plan(event_, production));
  rises_with_guests_ = rises_with_size(production);
  if (any_delivery_charge(prices_)) most_deliveries_ = most_deliveries(production);
}

PLATEWRIGHT_BODY Money MarginSearch::margin(const Integer& guests) {
  set_guests(guests);
  const Planned planned = plan();
  return quote(planned.food - planned.saved, planned.deliveries).margin;
}

PLATEWRIGHT_BODY bool MarginSearch::anyone_pays(const Integer& guests) {
  set_guests(guests);
  return anyone_here_pays();
}

PLATEWRIGHT_BODY std::optional<MoneyBand> MarginSearch::between(const Integer& fewest,
                                                                const Integer& most) {
  if (!rises_with_guests_) return std::nullopt;
  const auto low = side(fewest, Rounding::down);
  const auto high = side(most, Rounding::up);
  if (!low || !high) return std::nullopt;
  const auto highest = cost(most, Rounding::up, high->food - low->saved, most_deliveries_);
  const auto lowest = cost(fewest, Rounding::down, std::max(Money(), low->food - high->saved), {});
  if (!highest || !lowest) return std::nullopt;
  return MoneyBand{low->paid - *highest, high->paid - *lowest};
}

PLATEWRIGHT_BODY bool MarginSearch::rises_with_size(const ScaledRecipe& scaled) {
  return std::none_of(scaled.lines.begin(), scaled.lines.end(), [](const ScaledLine& line) {
    return line.line->scale == ScalingRule::by_cover;
  });
}

PLATEWRIGHT_BODY bool MarginSearch::rises_with_size(const Production& production) {
  const auto rises = [](const auto& made) { return rises_with_size(made.scaled); };
  return std::all_of(production.dishes.begin(), production.dishes.end(), rises) &&
         std::all_of(production.sub_recipes.begin(), production.sub_recipes.end(), rises);
}

PLATEWRIGHT_BODY void MarginSearch::set_guests(const Integer& guests) {
  event_.guests = expected_;
  change_guests(event_, Rational(guests));
}

PLATEWRIGHT_BODY MarginSearch::Planned MarginSearch::plan() {
  if (left_ > 0) --left_;
  const Production production = plan_production(event_, book_, prices_);
  const EventCost cost = event_cost(event_, production, book_, prices_);
  return {cost.food + cost.saved, cost.saved, cost.deliveries};
}

PLATEWRIGHT_BODY std::vector<DeliveryCost> MarginSearch::most_deliveries(
    const Production& production) const {
  std::map<std::string, DeliveryCost> out;
  for (const Need& need : needs_of(production, book_, prices_)) {
    if (!need.offer) continue;
    const Supplier terms = supplier_called(need.offer->supplier, prices_.suppliers);
    DeliveryCost& supplier = out[need.offer->supplier];
    supplier.charge = terms.delivery_charge;
    if (supplier.deliveries == 0 || (event_.at && !terms.one_delivery)) ++supplier.deliveries;
  }
  std::vector<DeliveryCost> all;
  for (auto& [name, supplier] : out) all.push_back(std::move(supplier));
  return all;
}

PLATEWRIGHT_BODY Quote MarginSearch::quote(const Money& food,
                                           std::vector<DeliveryCost> deliveries) const {
  EventCost cost;
  cost.food = food;
  cost.deliveries = std::move(deliveries);
  return quote_for(event_, cost, prices_);
}

PLATEWRIGHT_BODY bool MarginSearch::anyone_here_pays() const {
  const auto guests = paying_guests(event_);
  return std::any_of(guests.begin(), guests.end(),
                     [](const PayingGuests& kind) { return kind.count > 0 && pays(kind); });
}

PLATEWRIGHT_BODY void MarginSearch::set_rounded(const Integer& guests, Rounding rounding) {
  for (std::size_t i = 0; i < mix_.size(); ++i) {
    const Rational share = mix_[i] * Rational(guests);
    event_.guests[i].count =
        rounding == Rounding::up ? Rational(ceiling_of(share)) : Rational(floor_of(share));
  }
}

PLATEWRIGHT_BODY std::optional<MarginSearch::Side> MarginSearch::side(const Integer& guests,
                                                                      Rounding rounding) {
  auto& known = rounding == Rounding::up ? ups_ : downs_;
  const auto found = known.find(guests);
  if (found != known.end()) return found->second;
  return known.emplace(guests, worked_out(guests, rounding)).first->second;
}

PLATEWRIGHT_BODY std::optional<MarginSearch::Side> MarginSearch::worked_out(const Integer& guests,
                                                                            Rounding rounding) {
  set_rounded(guests, rounding);
  if (!anyone_here_pays()) return std::nullopt;
  try {
    const Planned planned = plan();
    return Side{quote(planned.food, planned.deliveries).income, planned.food, planned.saved};
  } catch (const Failure&) {
    return std::nullopt;
  }
}

PLATEWRIGHT_BODY std::optional<Money> MarginSearch::cost(
    const Integer& guests, Rounding rounding, const Money& food,
    const std::vector<DeliveryCost>& deliveries) {
  set_rounded(guests, rounding);
  try {
    return quote(food, deliveries).cost;
  } catch (const Failure&) {
    return std::nullopt;
  }
}

}  // namespace platewright::detail
