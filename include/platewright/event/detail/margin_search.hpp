// SPDX-License-Identifier: MIT
#pragma once
// The margin of an event at other numbers of guests, and what it lies between for many at once.

#include <cstddef>
#include <map>
#include <optional>
#include <vector>

#include "platewright/event/changes.hpp"
#include "platewright/event/trial_bound.hpp"
#include "platewright/problem/body.hpp"

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
  MarginSearch(Event event, const RecipeBook& book, const PriceList& prices);

  bool is_spent() const { return left_ == 0; }

  /// What so many guests of the same mix leave. Throws Failure as `quote_of` does.
  Money margin(const Integer& guests);

  /// Whether anyone of so many guests pays.
  bool anyone_pays(const Integer& guests);

  /// What the margin lies between for every number of guests from `fewest` to `most`: they pay no
  /// less than the fewest and no more than the most, and cost no less and no more, since each part
  /// of the cost is a share of another, whole pieces, or whole workers. Deliveries may be fewer for
  /// more guests, where longer work moves goods to one day: they are anything from none to one for
  /// each of the goods. Nothing where a recipe takes less of something for more pieces (what covers
  /// them in a vessel), and where so few are too few to plan for.
  std::optional<MoneyBand> between(const Integer& fewest, const Integer& most);

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

  static bool rises_with_size(const ScaledRecipe& scaled);
  static bool rises_with_size(const Production& production);

  /// Always from the mix expected: that of a smaller number is rounded already.
  void set_guests(const Integer& guests);

  Planned plan();

  /// As if each of the goods came on a day of its own.
  std::vector<DeliveryCost> most_deliveries(const Production& production) const;

  Quote quote(const Money& food, std::vector<DeliveryCost> deliveries) const;

  bool anyone_here_pays() const;

  /// Every kind of guest at its own share of so many, each rounded: whole guests of the same mix
  /// are never fewer, or never more.
  void set_rounded(const Integer& guests, Rounding rounding);

  std::optional<Side> side(const Integer& guests, Rounding rounding);

  std::optional<Side> worked_out(const Integer& guests, Rounding rounding);

  /// Nothing where there is no such quote: one of nothing, since a bound of its parts is 0.
  std::optional<Money> cost(const Integer& guests, Rounding rounding, const Money& food,
                            const std::vector<DeliveryCost>& deliveries);

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

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/detail/margin_search.hpp"
#endif
