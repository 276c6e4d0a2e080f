// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/detail/measure_search.hpp.

#include <algorithm>
#include <utility>

#include "platewright/kitchen/detail/measure_search.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY KitchenSearch::KitchenSearch(const KitchenSet& set, Rational asked)
    : tools_(set.tools()), asked_(std::move(asked)) {
  for (std::size_t i = 0; i < tools_.size(); ++i) {
    if (i == 0 || !(tools_[i].unit == tools_[i - 1].unit)) {
      starts_.push_back(i);
      most_.push_back(0);
    }
    // Only the largest unit may have no end, and no term comes before it that would ask.
    const Rational most = tools_[i].to ? *tools_[i].to * tools_[i].unit.size() : Rational(0);
    most_.back() = std::max(most_.back(), most);
  }
}

PLATEWRIGHT_BODY void KitchenSearch::find(std::size_t terms,
                                          const std::optional<Rational>& tolerance) {
  if (!found_) bound_ = tolerance;
  choose_units(0, terms);
}

PLATEWRIGHT_BODY KitchenMeasure KitchenSearch::result(bool nearest_only) const {
  KitchenMeasure out;
  out.asked = asked_;
  out.nearest_only = nearest_only;
  for (const Term& term : best_) {
    const Amount amount{term.number, tools_[term.tool].unit};
    out.parts.push_back({amount, tools_[term.tool].written});
    out.measured += amount.canonical();
  }
  return out;
}

PLATEWRIGHT_BODY void KitchenSearch::choose_units(std::size_t first, std::size_t terms) {
  if (terms == 0) return choose_numbers(0, asked_);
  for (std::size_t unit = first; unit < starts_.size(); ++unit) {
    units_.push_back(unit);
    choose_units(unit + 1, terms - 1);
    units_.pop_back();
  }
}

PLATEWRIGHT_BODY void KitchenSearch::choose_numbers(std::size_t place, const Rational& rest) {
  const std::size_t unit = units_[place];
  const std::size_t end = unit + 1 < starts_.size() ? starts_[unit + 1] : tools_.size();
  for (std::size_t i = starts_[unit]; i < end; ++i) {
    if (place + 1 < units_.size()) {
      branch(place, i, rest);
    } else {
      const Rational number = rest / tools_[i].unit.size();
      if (const auto above = tools_[i].at_or_above(number)) offer(i, *above, rest);
      if (const auto below = tools_[i].at_or_below(number)) offer(i, *below, rest);
    }
  }
}

PLATEWRIGHT_BODY void KitchenSearch::branch(std::size_t place, std::size_t i,
                                            const Rational& rest) {
  const Rational& size = tools_[i].unit.size();
  Rational reach;
  for (std::size_t next = place + 1; next < units_.size(); ++next) reach += most_[units_[next]];
  auto number = tools_[i].at_or_below((rest + *bound_) / size);
  while (number) {
    const Rational left = rest - *number * size;
    if (left - *bound_ > reach) return;
    current_.push_back({i, *number});
    choose_numbers(place + 1, left);
    current_.pop_back();
    number = tools_[i].before(*number);
  }
}

PLATEWRIGHT_BODY void KitchenSearch::offer(std::size_t tool, const Rational& number,
                                           const Rational& rest) {
  const Rational difference = rest - number * tools_[tool].unit.size();
  const Rational error = difference < 0 ? Rational(-difference) : difference;
  if (bound_ && error > *bound_) return;
  Pourings pourings = pourings_of(number, tools_[tool].written);
  for (const Term& term : current_) {
    pourings += pourings_of(term.number, tools_[term.tool].written);
  }
  if (current_.empty()) pourings.fractions = 0;
  if (found_ && error == *bound_ && !(pourings < pourings_)) return;
  found_ = true;
  bound_ = error;
  pourings_ = pourings;
  best_ = current_;
  best_.push_back({tool, number});
}

}  // namespace platewright::detail
