// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/read_tools.hpp.

#include <algorithm>
#include <optional>
#include <utility>

#include "platewright/kitchen/read_tools.hpp"

namespace platewright {

namespace detail {

/// The measures of one unit, as they are gathered: spoons or cups, and jugs.
struct OwnedUnit {
  Unit unit;
  std::vector<Rational> spoons;  ///< counted in the unit
  std::vector<KitchenTool> jugs;
};

class OwnedMeasures {
 public:
  OwnedMeasures(const UnitTable& table, MeasuringSystem system) : table_(table), system_(system) {}

  void add(std::string_view text) {
    constexpr std::string_view by = " by ";
    const std::size_t found = text.find(by);
    const LineAmount marked = read_line_amount(text.substr(0, found), table_, system_);
    const bool is_jug = found != std::string_view::npos;
    if (!marked.low() || marked.high().has_value() != is_jug) {
      throw Failure(problems::kitchen_entry_malformed(text));
    }
    expect_dimension(*marked.low(), UnitDimension::volume);
    if (marked.low()->number <= 0) throw Failure(problems::kitchen_entry_malformed(text));
    OwnedUnit& owned = of(marked.low()->unit);
    if (!is_jug) {
      owned.spoons.push_back(marked.low()->number);
      return;
    }
    const Amount step =
        in_unit(read_amount(text.substr(found + by.size()), table_, system_), owned.unit);
    owned.jugs.push_back({owned.unit,
                          marked.low()->number,
                          marked.high()->number,
                          step.number,
                          {},
                          owned.unit.record().system == MeasuringSystem::metric
                              ? PartNumber::decimal
                              : PartNumber::mixed});
  }

  KitchenSet set() {
    std::sort(units_.begin(), units_.end(), [](const OwnedUnit& left, const OwnedUnit& right) {
      return smallest_of(left) < smallest_of(right);
    });
    std::vector<KitchenTool> tools;
    for (std::size_t i = 0; i < units_.size(); ++i) {
      const OwnedUnit& owned = units_[i];
      std::optional<Rational> end;
      if (i + 1 < units_.size()) end = smallest_of(units_[i + 1]) / owned.unit.size();
      add_spoons(owned, end, tools);
      for (KitchenTool jug : owned.jugs) {
        // The largest jug is filled as often as is needed.
        if (!end && jug.to == largest_mark(owned)) jug.to.reset();
        tools.push_back(std::move(jug));
      }
    }
    return KitchenSet(std::move(tools));
  }

 private:
  OwnedUnit& of(const Unit& unit) {
    for (OwnedUnit& owned : units_) {
      if (owned.unit == unit) return owned;
    }
    units_.push_back({unit, {}, {}});
    return units_.back();
  }

  /// The smallest amount that can be measured in the unit, in mL.
  static Rational smallest_of(const OwnedUnit& owned) {
    std::optional<Rational> least;
    for (const Rational& spoon : owned.spoons) least = std::min(least.value_or(spoon), spoon);
    for (const KitchenTool& jug : owned.jugs) least = std::min(least.value_or(jug.from), jug.from);
    return *least * owned.unit.size();
  }

  static Rational largest_mark(const OwnedUnit& owned) {
    Rational most;
    for (const KitchenTool& jug : owned.jugs) most = std::max(most, *jug.to);
    return most;
  }

  /// Spoons of one unit become one tool: whole fills of the largest, and up to three fills of a
  /// smaller one with them, as no cook counts on from there (common practice, no source). They end
  /// where the next larger measure begins.
  static void add_spoons(const OwnedUnit& owned, const std::optional<Rational>& end,
                         std::vector<KitchenTool>& tools) {
    if (owned.spoons.empty()) return;
    const auto [least, most] = std::minmax_element(owned.spoons.begin(), owned.spoons.end());
    KitchenTool tool{owned.unit, *least, {}, *most, {}};
    for (const Rational& spoon : owned.spoons) {
      for (int fills = 1; fills <= 3; ++fills) {
        const Rational mark = spoon * fills;
        const bool is_new =
            std::find(tool.marks.begin(), tool.marks.end(), mark) == tool.marks.end();
        if (mark < *most && is_new) tool.marks.push_back(mark);
      }
    }
    std::sort(tool.marks.begin(), tool.marks.end());
    if (end) tool.to = tool.before(*end);
    tools.push_back(std::move(tool));
  }

  const UnitTable& table_;
  MeasuringSystem system_;
  std::vector<OwnedUnit> units_;
};

}  // namespace detail

PLATEWRIGHT_BODY KitchenSet read_measures(const std::vector<std::string>& texts,
                                          MeasuringSystem system, const UnitTable& table) {
  detail::OwnedMeasures owned(table, system);
  for (const std::string& text : texts) owned.add(text);
  return owned.set();
}

PLATEWRIGHT_BODY KitchenRule read_scale(const std::vector<std::string>& texts,
                                        MeasuringSystem system, const UnitTable& table) {
  KitchenRule rule;
  for (const std::string& text : texts) {
    constexpr std::string_view from = " from ";
    const std::size_t found = text.find(from);
    const Amount step = read_amount(std::string_view(text).substr(0, found), table, system);
    Mass start;
    if (found != std::string::npos) {
      start =
          to_mass(read_amount(std::string_view(text).substr(found + from.size()), table, system));
    }
    if (step.number <= 0) throw Failure(problems::number_not_positive("a scale's step", text));
    if (rule.chain.empty()) {
      rule.chain = detail::weight_chain(detail::system_of_step(step.unit, system), table);
    }
    rule.steps.steps.push_back({start.in(units::gram), to_mass(step).in(units::gram)});
  }
  std::sort(
      rule.steps.steps.begin(), rule.steps.steps.end(),
      [](const KitchenStep& left, const KitchenStep& right) { return left.from < right.from; });
  return rule;
}

PLATEWRIGHT_BODY Rational read_tolerance(std::string_view text) {
  const Rational share = read_share(text);
  if (share > fraction(1, 2)) {
    throw Failure(problems::share_out_of_range("a tolerance", text, "0 % to 50 %"));
  }
  return share;
}

}  // namespace platewright
