// SPDX-License-Identifier: MIT
#pragma once
// What an authority asks of a kind of step.

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/safety/bound_temperature.hpp"
#include "platewright/safety/step_kind.hpp"
#include "platewright/safety/step_place.hpp"

namespace platewright {

/// Which side of a step a rule is about.
enum class StepDemand {
  never,      ///< not at this place at all
  stands_at,  ///< the temperature that it stands at; `within` is the longest time there
  reaches,    ///< the temperature that it comes to, `within` a time
  lasts,      ///< `within` a time
  waits,      ///< no shorter than `within`
  dated,      ///< kept for the days of `within`, under a label; the day it is made is the first
  told,       ///< no figure: the words of its note
};

inline constexpr std::array all_step_demands{
    StepDemand::never, StepDemand::stands_at, StepDemand::reaches, StepDemand::lasts,
    StepDemand::waits, StepDemand::dated,     StepDemand::told};

std::string_view name_of(StepDemand demand);

/// Throws Failure for a word that is none.
StepDemand step_demand_from(std::string_view text);

/// One row of the table of rules for steps; another country's table replaces all of them.
struct StepRule {
  StepKind step = StepKind::serve;
  std::optional<StepPlace> where;  ///< at this place alone; at any where there is none
  StepDemand demand = StepDemand::told;
  std::optional<BoundTemperature> temperature;
  std::optional<Duration> within;
  std::string source;
  std::string row;
  std::string note;
};

/// Throws Failure for a rule that lacks what its demand is about.
void check_complete(const StepRule& rule);

/// Whether the rule is about such a step.
inline bool applies(const StepRule& rule, StepKind kind, const std::optional<StepPlace>& where) {
  return rule.step == kind && (!rule.where || rule.where == where);
}

/// Whether the table says at which places such a step is done, and this is none of them.
bool place_is_unknown(const std::vector<StepRule>& rules, StepKind kind, const StepPlace& where);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/safety/bodies/step_rule.hpp"
#endif
