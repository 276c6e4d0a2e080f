#pragma once
// How a line follows the size of the batch.

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright {

enum class ScalingRule {
  proportional,  ///< a share of the whole: follows the factor
  by_surface,    ///< coats the outside: pieces x (weight of a piece / tested weight)^(2/3)
  by_piece,      ///< goes with each roast: number of pieces
  held_back,     ///< strong: follows the factor, a share at first and the rest to taste
  fixed,         ///< does not change
};

struct ScalingRuleName {
  ScalingRule rule;
  std::string_view name;
};

inline constexpr std::array<ScalingRuleName, 5> scaling_rule_names{{
    {ScalingRule::proportional, "in proportion"},
    {ScalingRule::by_surface, "by surface"},
    {ScalingRule::by_piece, "by piece"},
    {ScalingRule::held_back, "held back"},
    {ScalingRule::fixed, "fixed"},
}};

inline std::string_view name_of(ScalingRule rule) {
  for (const ScalingRuleName& row : scaling_rule_names) {
    if (row.rule == rule) return row.name;
  }
  return {};
}

/// Throws Failure for a word that is no rule.
inline ScalingRule scaling_rule_from(std::string_view text) {
  std::vector<std::string> known;
  for (const ScalingRuleName& row : scaling_rule_names) {
    if (row.name == text) return row.rule;
    known.emplace_back(row.name);
  }
  throw Failure(problems::word_unknown("scaling rule", text, known));
}

}  // namespace platewright
