// SPDX-License-Identifier: MIT
#pragma once
// The search behind kitchen_measure: branch and bound over the tools, largest unit first.

#include <algorithm>
#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

#include "platewright/kitchen/measure_set.hpp"
#include "platewright/kitchen/pourings.hpp"

namespace platewright::detail {

/// Finds the sums of terms that come nearest to one capacity. A large term is tried only where the
/// terms that follow can reach the capacity, so that the work does not grow with it.
class KitchenSearch {
 public:
  KitchenSearch(const KitchenSet& set, Rational asked)
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

  /// The most terms that a sum can have: one of each unit.
  std::size_t most_terms() const { return starts_.size(); }

  /// Keeps the sum of exactly `terms` terms that is nearest, if it is better than what is kept
  /// already: within `tolerance` (in mL, none for any) at first, nearer from then on. Of sums
  /// equally near the one with the fewer pourings is kept, then the one in larger units, then the
  /// one with the larger first term.
  void find(std::size_t terms, const std::optional<Rational>& tolerance) {
    if (!found_) bound_ = tolerance;
    choose_units(0, terms);
  }

  bool found() const { return found_; }

  KitchenMeasure result(bool nearest_only) const {
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

 private:
  struct Term {
    std::size_t tool;
    Rational number;
  };

  void choose_units(std::size_t first, std::size_t terms) {
    if (terms == 0) return choose_numbers(0, asked_);
    for (std::size_t unit = first; unit < starts_.size(); ++unit) {
      units_.push_back(unit);
      choose_units(unit + 1, terms - 1);
      units_.pop_back();
    }
  }

  void choose_numbers(std::size_t place, const Rational& rest) {
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

  /// Tries each number of one tool that leaves something the units after it can measure. There is a
  /// bound by now: the tolerance, or else the error of the single term that is found first.
  void branch(std::size_t place, std::size_t i, const Rational& rest) {
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

  void offer(std::size_t tool, const Rational& number, const Rational& rest) {
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

  const std::vector<KitchenTool>& tools_;
  Rational asked_;
  std::vector<std::size_t> starts_;  ///< the first tool of each unit
  std::vector<Rational> most_;       ///< the most that one term of each unit measures, in mL
  std::optional<Rational> bound_;    ///< the largest difference that is still of interest, in mL
  bool found_ = false;
  std::vector<std::size_t> units_;  ///< the units of the sums that are being tried
  std::vector<Term> current_;
  std::vector<Term> best_;
  Pourings pourings_;  ///< of the best
};

}  // namespace platewright::detail
