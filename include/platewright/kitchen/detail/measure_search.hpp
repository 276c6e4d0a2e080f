// SPDX-License-Identifier: MIT
#pragma once
// The search behind kitchen_measure: branch and bound over the tools, largest unit first.

#include <cstddef>
#include <optional>
#include <vector>

#include "platewright/kitchen/measure_set.hpp"
#include "platewright/kitchen/pourings.hpp"
#include "platewright/problem/body.hpp"

namespace platewright::detail {

/// Finds the sums of terms that come nearest to one capacity. A large term is tried only where the
/// terms that follow can reach the capacity, so that the work does not grow with it.
class KitchenSearch {
 public:
  KitchenSearch(const KitchenSet& set, Rational asked);

  /// The most terms that a sum can have: one of each unit.
  std::size_t most_terms() const { return starts_.size(); }

  /// Keeps the sum of exactly `terms` terms that is nearest, if it is better than what is kept
  /// already: within `tolerance` (in mL, none for any) at first, nearer from then on. Of sums
  /// equally near the one with the fewer pourings is kept, then the one in larger units, then the
  /// one with the larger first term.
  void find(std::size_t terms, const std::optional<Rational>& tolerance);

  bool found() const { return found_; }

  KitchenMeasure result(bool nearest_only) const;

 private:
  struct Term {
    std::size_t tool;
    Rational number;
  };

  void choose_units(std::size_t first, std::size_t terms);

  void choose_numbers(std::size_t place, const Rational& rest);

  /// Tries each number of one tool that leaves something the units after it can measure. There is a
  /// bound by now: the tolerance, or else the error of the single term that is found first.
  void branch(std::size_t place, std::size_t i, const Rational& rest);

  void offer(std::size_t tool, const Rational& number, const Rational& rest);

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

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/detail/measure_search.hpp"
#endif
