// SPDX-License-Identifier: MIT
#pragma once
// Which goods from whom, so that all of them together cost least.

#include <algorithm>
#include <cstddef>
#include <map>
#include <numeric>
#include <optional>
#include <utility>
#include <vector>

#include "platewright/event/local_time.hpp"
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
                   const std::vector<SupplierCharges>& suppliers, std::size_t most_steps)
      : goods_(goods), suppliers_(suppliers), bought_(suppliers.size()), most_steps_(most_steps) {
    order_goods();
  }

  Assignment run() {
    chosen_.assign(goods_.size(), 0);
    best_.ways = chosen_;
    best_.total = cost_of(chosen_);
    search(0);
    best_.bound = open_ && *open_ < best_.total ? *open_ : best_.total;
    return best_;
  }

  Money cost_of(const std::vector<std::size_t>& ways) {
    for (std::size_t i = 0; i < ways.size(); ++i) buy(goods_[i][ways[i]]);
    const Money out = cost_so_far();
    for (std::size_t i = 0; i < ways.size(); ++i) give_back(goods_[i][ways[i]]);
    return out;
  }

 private:
  /// What comes from one supplier on one day.
  struct Bought {
    Money goods;
    std::size_t lines = 0;
  };

  /// Goods without a choice first, then those that the choice makes the greatest difference to; and
  /// what the rest costs at least.
  void order_goods() {
    order_.resize(goods_.size());
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    std::vector<Money> spread;
    std::vector<Money> least;
    for (const auto& ways : goods_) {
      const auto [low, high] = std::minmax_element(
          ways.begin(), ways.end(),
          [](const auto& left, const auto& right) { return left.cost < right.cost; });
      spread.push_back(high->cost - low->cost);
      least.push_back(low->cost);
    }
    std::stable_sort(order_.begin(), order_.end(), [&](std::size_t left, std::size_t right) {
      const bool forced = goods_[left].size() == 1;
      if (forced != (goods_[right].size() == 1)) return forced;
      return spread[right] < spread[left];
    });
    rest_.assign(goods_.size() + 1, Money());
    for (std::size_t i = goods_.size(); i-- > 0;) rest_[i] = rest_[i + 1] + least[order_[i]];
  }

  void buy(const BuyingWay& way) {
    Bought& bought = bought_[way.supplier][way.day];
    bought.goods += way.cost;
    ++bought.lines;
  }
  void give_back(const BuyingWay& way) {
    auto& days = bought_[way.supplier];
    const auto day = days.find(way.day);
    day->second.goods = day->second.goods - way.cost;
    if (--day->second.lines == 0) days.erase(day);
  }

  Money cost_so_far() const { return at_least(Money()); }

  /// Whatever the rest is bought from, it costs `rest` or more, of which what minimums are still
  /// short of may pay a part.
  Money at_least(const Money& rest) const {
    Money with_minimums;
    Money goods = rest;
    for (std::size_t i = 0; i < suppliers_.size(); ++i) {
      for (const auto& [day, bought] : bought_[i]) {
        with_minimums += std::max(bought.goods, suppliers_[i].minimum) + suppliers_[i].delivery;
        goods += bought.goods + suppliers_[i].delivery;
      }
    }
    return std::max(with_minimums, goods);
  }

  /// The ways of one of the goods, the least bound first; each with its bound.
  std::vector<std::pair<Money, std::size_t>> ways_by_bound(std::size_t depth) {
    std::vector<std::pair<Money, std::size_t>> out;
    const auto& ways = goods_[order_[depth]];
    for (std::size_t i = 0; i < ways.size(); ++i) {
      buy(ways[i]);
      out.emplace_back(at_least(rest_[depth + 1]), i);
      give_back(ways[i]);
    }
    std::stable_sort(out.begin(), out.end(),
                     [](const auto& left, const auto& right) { return left.first < right.first; });
    return out;
  }

  void search(std::size_t depth) {
    if (depth == goods_.size()) {
      const Money total = cost_so_far();
      if (total < best_.total) best_ = {chosen_, total, {}};
      return;
    }
    const std::size_t good = order_[depth];
    for (const auto& [bound, way] : ways_by_bound(depth)) {
      if (bound >= best_.total) return;
      if (steps_ == most_steps_) {
        if (!open_ || bound < *open_) open_ = bound;
        return;
      }
      ++steps_;
      chosen_[good] = way;
      buy(goods_[good][way]);
      search(depth + 1);
      give_back(goods_[good][way]);
    }
  }

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
