// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/assignment.hpp.

#include <algorithm>
#include <numeric>

#include "platewright/event/assignment.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY AssignmentSearch::AssignmentSearch(
    const std::vector<std::vector<BuyingWay>>& goods, const std::vector<SupplierCharges>& suppliers,
    std::size_t most_steps)
    : goods_(goods), suppliers_(suppliers), bought_(suppliers.size()), most_steps_(most_steps) {
  order_goods();
}

PLATEWRIGHT_BODY Assignment AssignmentSearch::run() {
  chosen_.assign(goods_.size(), 0);
  best_.ways = chosen_;
  best_.total = cost_of(chosen_);
  search(0);
  best_.bound = open_ && *open_ < best_.total ? *open_ : best_.total;
  return best_;
}

PLATEWRIGHT_BODY Money AssignmentSearch::cost_of(const std::vector<std::size_t>& ways) {
  for (std::size_t i = 0; i < ways.size(); ++i) buy(goods_[i][ways[i]]);
  const Money out = cost_so_far();
  for (std::size_t i = 0; i < ways.size(); ++i) give_back(goods_[i][ways[i]]);
  return out;
}

PLATEWRIGHT_BODY void AssignmentSearch::order_goods() {
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

PLATEWRIGHT_BODY void AssignmentSearch::buy(const BuyingWay& way) {
  Bought& bought = bought_[way.supplier][way.day];
  bought.goods += way.cost;
  ++bought.lines;
}

PLATEWRIGHT_BODY void AssignmentSearch::give_back(const BuyingWay& way) {
  auto& days = bought_[way.supplier];
  const auto day = days.find(way.day);
  day->second.goods = day->second.goods - way.cost;
  if (--day->second.lines == 0) days.erase(day);
}

PLATEWRIGHT_BODY Money AssignmentSearch::at_least(const Money& rest) const {
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

PLATEWRIGHT_BODY std::vector<std::pair<Money, std::size_t>> AssignmentSearch::ways_by_bound(
    std::size_t depth) {
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

PLATEWRIGHT_BODY void AssignmentSearch::search(std::size_t depth) {
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

}  // namespace detail

}  // namespace platewright
