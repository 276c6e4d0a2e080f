// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/safety/step_rule.hpp.

#include "platewright/safety/step_rule.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string_view name_of(StepDemand demand) {
  switch (demand) {
    case StepDemand::never:
      return "never";
    case StepDemand::stands_at:
      return "stands at";
    case StepDemand::reaches:
      return "reaches";
    case StepDemand::lasts:
      return "lasts";
    case StepDemand::waits:
      return "waits";
    case StepDemand::dated:
      return "dated";
    case StepDemand::told:
      return "told";
  }
  return {};
}

PLATEWRIGHT_BODY StepDemand step_demand_from(std::string_view text) {
  std::vector<std::string> known;
  for (const StepDemand demand : all_step_demands) {
    if (name_of(demand) == text) return demand;
    known.emplace_back(name_of(demand));
  }
  throw Failure(problems::word_unknown("demand", text, known));
}

PLATEWRIGHT_BODY void check_complete(const StepRule& rule) {
  switch (rule.demand) {
    case StepDemand::stands_at:
    case StepDemand::reaches:
      if (!rule.temperature) throw Failure(problems::key_missing("at", "at: 41 F"));
      break;
    case StepDemand::lasts:
    case StepDemand::waits:
    case StepDemand::dated:
      if (!rule.within) throw Failure(problems::key_missing("within", "within: 4 h"));
      break;
    case StepDemand::never:
    case StepDemand::told:
      if (rule.note.empty()) throw Failure(problems::key_missing("note", "note: what is done"));
      break;
  }
}

PLATEWRIGHT_BODY bool place_is_unknown(const std::vector<StepRule>& rules, StepKind kind,
                                       const StepPlace& where) {
  bool any = false;
  for (const StepRule& rule : rules) {
    if (rule.step != kind) continue;
    if (!rule.where || *rule.where == where) return false;
    any = true;
  }
  return any;
}

}  // namespace platewright
