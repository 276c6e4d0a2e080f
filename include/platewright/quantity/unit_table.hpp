// SPDX-License-Identifier: MIT
#pragma once
// Units by the names that people write.

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

#include "platewright/problem/catalogue/quantities.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/problem/folded_name.hpp"
#include "platewright/quantity/built_in_units.hpp"

namespace platewright {

/// The units of the program and a user's own. A copy is independent of the original.
class UnitTable {
 public:
  /// The table with the units that are built into the program.
  UnitTable() {
    for (const Unit& unit : built_in_units()) add(unit);
  }

  /// Adds a unit; its names win over names that are there already, bare ones included.
  void add(UnitRecord record) { add(Unit(std::move(record))); }

  /// The unit called `name`, or none: a UCUM code (in its own capitals), a name (capitals and full
  /// stops ignored), or a bare name in the measuring system named.
  std::optional<Unit> look_up(std::string_view name, MeasuringSystem system) const {
    const std::string plain = folded_abbreviation(name);
    if (auto unit = look_up_bare(plain, system)) return unit;
    if (const auto found = by_name_.find(plain); found != by_name_.end()) return found->second;
    if (const auto found = by_ucum_.find(std::string(name)); found != by_ucum_.end()) {
      return found->second;
    }
    return std::nullopt;
  }

  /// As `look_up`, but throws Failure for a name that is not known or has two meanings.
  Unit find(std::string_view name, MeasuringSystem system) const {
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

  /// Every unit, the built-in ones first.
  const std::vector<Unit>& all() const { return units_; }

 private:
  void add(const Unit& unit) {
    const UnitRecord& added = unit.record();
    name_it(added.name, unit);
    for (const std::string& name : added.names) name_it(name, unit);
    for (const std::string& name : added.bare) {
      bare_[added.system].insert_or_assign(folded_abbreviation(name), unit);
    }
    if (!added.ucum.empty()) by_ucum_.insert_or_assign(added.ucum, unit);
    units_.push_back(unit);
  }

  void name_it(const std::string& name, const Unit& unit) {
    const std::string plain = folded_abbreviation(name);
    by_name_.insert_or_assign(plain, unit);
    for (auto& [system, names] : bare_) names.erase(plain);
  }

  std::optional<Unit> look_up_bare(const std::string& plain, MeasuringSystem system) const {
    if (const auto names = bare_.find(system); names != bare_.end()) {
      if (const auto found = names->second.find(plain); found != names->second.end()) {
        return found->second;
      }
    }
    // Australia and Japan have a spoon or cup of their own and are metric otherwise.
    const bool local = system == MeasuringSystem::australian || system == MeasuringSystem::japanese;
    return local ? look_up_bare(plain, MeasuringSystem::metric) : std::nullopt;
  }

  std::vector<std::string> names_that_may_be_meant() const {
    std::vector<std::string> out;
    add_names_of(by_name_, out);
    for (const auto& [system, names] : bare_) add_names_of(names, out);
    return out;
  }

  std::vector<Unit> units_;
  std::map<std::string, Unit> by_name_;
  std::map<MeasuringSystem, std::map<std::string, Unit>> bare_;
  std::unordered_map<std::string, Unit> by_ucum_;
};

/// Reads a measuring system's name. Throws Failure for another word.
inline MeasuringSystem read_system(std::string_view text) {
  for (const MeasuringSystem system :
       {MeasuringSystem::us, MeasuringSystem::imperial, MeasuringSystem::metric,
        MeasuringSystem::australian, MeasuringSystem::japanese}) {
    if (folded_abbreviation(text) == system_name(system)) return system;
  }
  throw Failure(problems::system_unknown(text));
}

}  // namespace platewright
