// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/quantity/unit_table.hpp.

#include "platewright/quantity/unit_table.hpp"

namespace platewright {

PLATEWRIGHT_BODY UnitTable::UnitTable() {
  for (const Unit& unit : built_in_units()) add(unit);
}

PLATEWRIGHT_BODY std::optional<Unit> UnitTable::look_up(std::string_view name,
                                                        MeasuringSystem system) const {
  const std::string plain = folded_abbreviation(name);
  if (auto unit = look_up_bare(plain, system)) return unit;
  if (const auto found = by_name_.find(plain); found != by_name_.end()) return found->second;
  if (const auto found = by_ucum_.find(std::string(name)); found != by_ucum_.end()) {
    return found->second;
  }
  return std::nullopt;
}

PLATEWRIGHT_BODY Unit UnitTable::find(std::string_view name, MeasuringSystem system) const {
  if (name == "T" || name == "t" || name == "T." || name == "t.") {
    throw Failure(problems::unit_ambiguous(name, "tbsp or tsp (or tonne)"));
  }
  if (const auto unit = look_up(name, system)) return *unit;
  const std::string plain = folded_abbreviation(name);
  std::string choices;
  for (const auto& [other, names] : bare_) {
    if (const auto found = names.find(plain); found != names.end()) {
      choices += (choices.empty() ? "" : " or ") + in_quotes(found->second.name());
    }
  }
  if (!choices.empty()) throw Failure(problems::unit_ambiguous(name, choices));
  throw Failure(problems::unit_unknown(name, names_that_may_be_meant()));
}

PLATEWRIGHT_BODY void UnitTable::add(const Unit& unit) {
  const UnitRecord& added = unit.record();
  name_it(added.name, unit);
  for (const std::string& name : added.names) name_it(name, unit);
  for (const std::string& name : added.bare) {
    bare_[added.system].insert_or_assign(folded_abbreviation(name), unit);
  }
  if (!added.ucum.empty()) by_ucum_.insert_or_assign(added.ucum, unit);
  units_.push_back(unit);
}

PLATEWRIGHT_BODY void UnitTable::name_it(const std::string& name, const Unit& unit) {
  const std::string plain = folded_abbreviation(name);
  by_name_.insert_or_assign(plain, unit);
  for (auto& [system, names] : bare_) names.erase(plain);
}

PLATEWRIGHT_BODY std::optional<Unit> UnitTable::look_up_bare(const std::string& plain,
                                                             MeasuringSystem system) const {
  if (const auto names = bare_.find(system); names != bare_.end()) {
    if (const auto found = names->second.find(plain); found != names->second.end()) {
      return found->second;
    }
  }
  // Australia and Japan have a spoon or cup of their own and are metric otherwise.
  const bool local = system == MeasuringSystem::australian || system == MeasuringSystem::japanese;
  return local ? look_up_bare(plain, MeasuringSystem::metric) : std::nullopt;
}

PLATEWRIGHT_BODY std::vector<std::string> UnitTable::names_that_may_be_meant() const {
  std::vector<std::string> out;
  add_names_of(by_name_, out);
  for (const auto& [system, names] : bare_) add_names_of(names, out);
  return out;
}

PLATEWRIGHT_BODY MeasuringSystem read_system(std::string_view text) {
  for (const MeasuringSystem system :
       {MeasuringSystem::us, MeasuringSystem::imperial, MeasuringSystem::metric,
        MeasuringSystem::australian, MeasuringSystem::japanese}) {
    if (folded_abbreviation(text) == system_name(system)) return system;
  }
  throw Failure(problems::system_unknown(text));
}

}  // namespace platewright
