// SPDX-License-Identifier: MIT
#pragma once
// The margin of an event at other numbers of guests, and what it lies between for many at once.

#include <algorithm>
#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/changes.hpp"
#include "platewright/event/trial_bound.hpp"

namespace platewright::detail {

/// Two sums of money that what is asked for lies between.
struct MoneyBand {
  Money least;
  Money most;
};

/// Plans an event anew for one number of guests after another, at most so often. The book is not
/// copied.
class MarginSearch {
 public:
  /// Book and prices must live longer.
  MarginSearch(Event event, const RecipeBook& book, const PriceList& prices)
      : event_(std::move(event)), book_(book), prices_(prices), expected_(event_.guests) {
    for (const GuestKind& kind : event_.guests) mix_.push_back(kind.count / guest_count(event_));
    const Production production = plan_production(event_, book_, prices_);
    left_ = most_trials(size_of_plan(event_, production));
    rises_with_guests_ = rises_with_size(production);
    if (any_delivery_charge(prices_)) most_deliveries_ = most_deliveries(production);
  }

  bool is_spent() const { return left_ == 0; }

  /// What so many guests of the same mix leave. Throws Failure as `quote_of` does.
  Money margin(const Integer& guests) {
    set_guests(guests);
    const Planned planned = plan();
    return quote(planned.food - planned.saved, planned.deliveries).margin;
  }

  /// Whether anyone of so many guests pays.
  bool anyone_pays(const Integer& guests) {
    set_guests(guests);
    return anyone_here_pays();
  }

  /// What the margin lies between for every number of guests from `fewest` to `most`: they pay no
  /// less than the fewest and no more than the most, and cost no less and no more, since each part
  /// of the cost is a share of another, whole pieces, or whole workers. Deliveries may be fewer for
  /// more guests, where longer work moves goods to one day: they are anything from none to one for
  /// each of the goods. Nothing where a recipe takes less of something for more pieces (what covers
  /// them in a vessel), and where so few are too few to plan for.
  std::optional<MoneyBand> between(const Integer& fewest, const Integer& most) {
    if (!rises_with_guests_) return std::nullopt;
    const auto low = side(fewest, Rounding::down);
    const auto high = side(most, Rounding::up);
    if (!low || !high) return std::nullopt;
    const auto highest = cost(most, Rounding::up, high->food - low->saved, most_deliveries_);
    const auto lowest =
        cost(fewest, Rounding::down, std::max(Money(), low->food - high->saved), {});
    if (!highest || !lowest) return std::nullopt;
    return MoneyBand{low->paid - *highest, high->paid - *lowest};
  }

 private:
  struct Planned {
    Money food;  ///< before what by-products save
    Money saved;
    std::vector<DeliveryCost> deliveries;
  };
  struct Side {
    Money paid;
    Money food;
    Money saved;
  };

  static bool rises_with_size(const ScaledRecipe& scaled) {
    return std::none_of(scaled.lines.begin(), scaled.lines.end(), [](const ScaledLine& line) {
      return line.line->scale == ScalingRule::by_cover;
    });
  }
  static bool rises_with_size(const Production& production) {
    const auto rises = [](const auto& made) { return rises_with_size(made.scaled); };
    return std::all_of(production.dishes.begin(), production.dishes.end(), rises) &&
           std::all_of(production.sub_recipes.begin(), production.sub_recipes.end(), rises);
  }

  /// Always from the mix expected: that of a smaller number is rounded already.
  void set_guests(const Integer& guests) {
    event_.guests = expected_;
    change_guests(event_, Rational(guests));
  }

  Planned plan() {
    if (left_ > 0) --left_;
    const Production production = plan_production(event_, book_, prices_);
    const EventCost cost = event_cost(event_, production, book_, prices_);
    return {cost.food + cost.saved, cost.saved, cost.deliveries};
  }

  /// As if each of the goods came on a day of its own.
  std::vector<DeliveryCost> most_deliveries(const Production& production) const {
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

  Quote quote(const Money& food, std::vector<DeliveryCost> deliveries) const {
    EventCost cost;
    cost.food = food;
    cost.deliveries = std::move(deliveries);
    return quote_for(event_, cost, prices_);
  }

  bool anyone_here_pays() const {
    const auto guests = paying_guests(event_);
    return std::any_of(guests.begin(), guests.end(),
                       [](const PayingGuests& kind) { return kind.count > 0 && pays(kind); });
  }

  /// Every kind of guest at its own share of so many, each rounded: whole guests of the same mix
  /// are never fewer, or never more.
  void set_rounded(const Integer& guests, Rounding rounding) {
    for (std::size_t i = 0; i < mix_.size(); ++i) {
      const Rational share = mix_[i] * Rational(guests);
      event_.guests[i].count =
          rounding == Rounding::up ? Rational(ceiling_of(share)) : Rational(floor_of(share));
    }
  }

  std::optional<Side> side(const Integer& guests, Rounding rounding) {
    auto& known = rounding == Rounding::up ? ups_ : downs_;
    const auto found = known.find(guests);
    if (found != known.end()) return found->second;
    return known.emplace(guests, worked_out(guests, rounding)).first->second;
  }

  std::optional<Side> worked_out(const Integer& guests, Rounding rounding) {
    set_rounded(guests, rounding);
    if (!anyone_here_pays()) return std::nullopt;
    try {
      const Planned planned = plan();
      return Side{quote(planned.food, planned.deliveries).income, planned.food, planned.saved};
    } catch (const Failure&) {
      return std::nullopt;
    }
  }

  /// Nothing where there is no such quote: one of nothing, since a bound of its parts is 0.
  std::optional<Money> cost(const Integer& guests, Rounding rounding, const Money& food,
                            const std::vector<DeliveryCost>& deliveries) {
    set_rounded(guests, rounding);
    try {
      return quote(food, deliveries).cost;
    } catch (const Failure&) {
      return std::nullopt;
    }
  }

  Event event_;
  const RecipeBook& book_;
  const PriceList& prices_;
  std::vector<GuestKind> expected_;
  std::vector<Rational> mix_;
  std::size_t left_ = 0;
  bool rises_with_guests_ = false;
  std::vector<DeliveryCost> most_deliveries_;
  std::map<Integer, std::optional<Side>> ups_;
  std::map<Integer, std::optional<Side>> downs_;
};

}  // namespace platewright::detail
