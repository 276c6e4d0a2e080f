// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/scaling_rule.hpp.

#include <string>
#include <vector>

#include "platewright/recipe/scaling_rule.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string_view name_of(ScalingRule rule) {
  for (const ScalingRuleName& row : scaling_rule_names) {
    if (row.rule == rule) return row.name;
  }
  return {};
}

PLATEWRIGHT_BODY std::string_view source_of(ScalingRule rule) {
  for (const ScalingRuleName& row : scaling_rule_names) {
    if (row.rule == rule) return row.source;
  }
  return {};
}

PLATEWRIGHT_BODY ScalingRule scaling_rule_from(std::string_view text) {
  std::vector<std::string> known;
  for (const ScalingRuleName& row : scaling_rule_names) {
    if (row.name == text) return row.rule;
    known.emplace_back(row.name);
  }
  throw Failure(problems::word_unknown("scaling rule", text, known));
}

}  // namespace platewright
