// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/safety/safety_table.hpp.

#include <algorithm>

#include "platewright/safety/safety_table.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string_view name_of(Audience audience) {
  switch (audience) {
    case Audience::consumer:
      return "consumer";
    case Audience::food_service:
      return "food service";
  }
  return {};
}

PLATEWRIGHT_BODY Audience audience_from(std::string_view text) {
  for (const Audience audience : {Audience::consumer, Audience::food_service}) {
    if (name_of(audience) == text) return audience;
  }
  throw Failure(problems::word_unknown("audience", text, {"consumer", "food service"}));
}

PLATEWRIGHT_BODY std::vector<MinimumTemperature> SafetyTable::minimums_for(
    const FoodKind& kind) const {
  std::vector<MinimumTemperature> out;
  for (const MinimumTemperature& row : minimums) {
    if (row.kind == kind) out.push_back(row);
  }
  return out;
}

PLATEWRIGHT_BODY std::vector<FoodKind> SafetyTable::kinds() const {
  std::vector<FoodKind> out;
  for (const MinimumTemperature& row : minimums) {
    if (std::find(out.begin(), out.end(), row.kind) == out.end()) out.push_back(row.kind);
  }
  return out;
}

PLATEWRIGHT_BODY Undercooked SafetyTable::undercooked(const FoodKind& kind) const {
  for (const UndercookedKind& row : undercooked_kinds) {
    if (row.kind == kind) return row.rule;
  }
  return Undercooked::never;
}

PLATEWRIGHT_BODY FoodKind SafetyTable::kind_called(std::string_view text) const {
  const std::string wanted = folded_name(text);
  std::vector<FoodKind> all = kinds();
  all.push_back(FoodKind::without_minimum());
  std::vector<std::string> known;
  for (const FoodKind& kind : all) {
    if (folded_name(kind.key()) == wanted) return kind;
    known.push_back(kind.key());
  }
  throw Failure(problems::word_unknown("kind of food", text, known));
}

PLATEWRIGHT_BODY std::optional<RoastHold> SafetyTable::roast_hold_at(
    const Temperature& temperature) const {
  std::optional<RoastHold> out;
  for (const RoastHold& row : roast_holds) {
    if (row.at <= temperature && (!out || out->at < row.at)) out = row;
  }
  return out;
}

PLATEWRIGHT_BODY std::optional<SafetyLimit> SafetyTable::limit(std::string_view key) const {
  for (const SafetyLimit& row : limits) {
    if (row.key == key) return row;
  }
  return std::nullopt;
}

}  // namespace platewright
