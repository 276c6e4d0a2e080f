// SPDX-License-Identifier: MIT
#pragma once
// Which goods from whom, so that all of them together cost least.

#include <cstddef>
#include <map>
#include <optional>
#include <utility>
#include <vector>

#include "platewright/event/local_time.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/quantity/money.hpp"

namespace platewright {

/// One way to buy some goods: from whom, for how much, and on which day they come.
struct BuyingWay {
  std::size_t supplier = 0;
  Money cost;
  std::optional<LocalTime> day = std::nullopt;
};

/// What a supplier asks beside the prices.
struct SupplierCharges {
  Money minimum = {};   ///< paid in full for each of these days, however little is bought
  Money delivery = {};  ///< for each of the days on which goods come
};

/// One way for each of the goods.
struct Assignment {
  std::vector<std::size_t> ways;
  Money total;
  /// No assignment costs less. The total itself where the search looked at all of them.
  Money bound;
  bool complete() const { return bound == total; }
};

namespace detail {

/// Depth first over the goods; what can't become less than the best is cut off.
class AssignmentSearch {
 public:
  AssignmentSearch(const std::vector<std::vector<BuyingWay>>& goods,
                   const std::vector<SupplierCharges>& suppliers, std::size_t most_steps);

  Assignment run();

  Money cost_of(const std::vector<std::size_t>& ways);

 private:
  /// What comes from one supplier on one day.
  struct Bought {
    Money goods;
    std::size_t lines = 0;
  };

  /// Goods without a choice first, then those that the choice makes the greatest difference to; and
  /// what the rest costs at least.
  void order_goods();

  void buy(const BuyingWay& way);
  void give_back(const BuyingWay& way);

  Money cost_so_far() const { return at_least(Money()); }

  /// Whatever the rest is bought from, it costs `rest` or more, of which what minimums are still
  /// short of may pay a part.
  Money at_least(const Money& rest) const;

  /// The ways of one of the goods, the least bound first; each with its bound.
  std::vector<std::pair<Money, std::size_t>> ways_by_bound(std::size_t depth);

  void search(std::size_t depth);

  const std::vector<std::vector<BuyingWay>>& goods_;
  const std::vector<SupplierCharges>& suppliers_;
  std::vector<std::size_t> order_;
  std::vector<Money> rest_;
  std::vector<std::map<std::optional<LocalTime>, Bought>> bought_;  ///< of each supplier
  std::vector<std::size_t> chosen_;
  Assignment best_;
  std::optional<Money> open_;  ///< the least bound of what was not looked at
  std::size_t steps_ = 0;
  std::size_t most_steps_;
};

}  // namespace detail

/// What these ways cost together: the goods of each delivery, or the supplier's minimum where that
/// is more, and its charge.
inline Money cost_of_ways(const std::vector<std::vector<BuyingWay>>& goods,
                          const std::vector<SupplierCharges>& suppliers,
                          const std::vector<std::size_t>& ways) {
  return detail::AssignmentSearch(goods, suppliers, 0).cost_of(ways);
}

/// The ways that cost least together; of equal ones the first of each, as far as they go. Branch
/// and bound: exact unless it stops after `most_steps`, and then no worse than the first way of
/// each, with a bound that no assignment is below. Each of the goods has a way, each of a supplier
/// of the list.
inline Assignment least_assignment(const std::vector<std::vector<BuyingWay>>& goods,
                                   const std::vector<SupplierCharges>& suppliers,
                                   std::size_t most_steps = 20'000) {
  return detail::AssignmentSearch(goods, suppliers, most_steps).run();
}

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/assignment.hpp"
#endif
