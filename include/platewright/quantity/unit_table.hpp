#pragma once
// Units by the names that people write.

#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

#include "platewright/problem/catalogue/quantities.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/problem/folded_name.hpp"
#include "platewright/quantity/detail/unit_rows.hpp"
#include "platewright/quantity/unit.hpp"

namespace platewright {

inline std::vector<std::string> split_list(std::string_view joined) {
  std::vector<std::string> out;
  while (!joined.empty()) {
    const std::size_t bar = joined.find('|');
    out.emplace_back(joined.substr(0, bar));
    joined = bar == std::string_view::npos ? std::string_view{} : joined.substr(bar + 1);
  }
  return out;
}

/// The units of the program and a user's own. A copy is independent of the original.
class UnitTable {
 public:
  /// The table with the units that are built into the program.
  UnitTable() {
    for (const UnitRow& row : detail::unit_rows) add(record_from(row));
  }

  /// Adds a unit; its names win over names that are there already, bare ones included.
  void add(UnitRecord record) {
    Unit unit(std::make_shared<const UnitRecord>(std::move(record)));
    const UnitRecord& added = unit.record();
    name_it(added.name, unit);
    for (const std::string& name : added.names) name_it(name, unit);
    for (const std::string& name : added.bare) {
      bare_[added.system][folded_abbreviation(name)] = unit;
    }
    if (!added.ucum.empty()) by_ucum_[added.ucum] = unit;
    units_.push_back(std::move(unit));
  }

  /// The unit called `name`, or none: a UCUM code (in its own capitals), a name (capitals and full
  /// stops ignored), or a bare name in the measuring system named.
  Unit look_up(std::string_view name, MeasuringSystem system) const {
    const std::string plain = folded_abbreviation(name);
    if (Unit unit = look_up_bare(plain, system)) return unit;
    if (const auto found = by_name_.find(plain); found != by_name_.end()) return found->second;
    if (const auto found = by_ucum_.find(std::string(name)); found != by_ucum_.end()) {
      return found->second;
    }
    return {};
  }

  /// As `look_up`, but throws Failure for a name that is not known or has two meanings.
  Unit find(std::string_view name, MeasuringSystem system) const {
    if (name == "T" || name == "t" || name == "T." || name == "t.") {
      throw Failure(problems::unit_ambiguous(name, "tbsp or tsp (or tonne)"));
    }
    if (Unit unit = look_up(name, system)) return unit;
    const std::string plain = folded_abbreviation(name);
    std::string choices;
    for (const auto& [other, names] : bare_) {
      if (const auto found = names.find(plain); found != names.end()) {
        choices += (choices.empty() ? "" : " or ") + in_quotes(found->second.name());
      }
    }
    if (!choices.empty()) throw Failure(problems::unit_ambiguous(name, choices));
    throw Failure(problems::unit_unknown(name, all_names()));
  }

  /// Every unit, the built-in ones first.
  const std::vector<Unit>& all() const { return units_; }

 private:
  void name_it(const std::string& name, const Unit& unit) {
    const std::string plain = folded_abbreviation(name);
    by_name_[plain] = unit;
    for (auto& [system, names] : bare_) names.erase(plain);
  }

  static UnitRecord record_from(const UnitRow& row) {
    UnitRecord record;
    record.name = row.name;
    record.dimension = row.dimension;
    record.size = to_rational(row.size);
    record.system = row.system;
    record.symbol = row.symbol;
    record.plural = row.plural;
    record.names = split_list(row.names);
    record.bare = split_list(row.bare);
    record.ucum = row.ucum;
    record.kind = row.kind;
    record.exactness = row.exactness;
    record.source = row.source;
    record.note = row.note;
    return record;
  }

  Unit look_up_bare(const std::string& plain, MeasuringSystem system) const {
    if (const auto names = bare_.find(system); names != bare_.end()) {
      if (const auto found = names->second.find(plain); found != names->second.end()) {
        return found->second;
      }
    }
    // Australia and Japan have a spoon or cup of their own and are metric otherwise.
    const bool local = system == MeasuringSystem::australian || system == MeasuringSystem::japanese;
    return local ? look_up_bare(plain, MeasuringSystem::metric) : Unit{};
  }

  std::vector<std::string> all_names() const {
    std::vector<std::string> out;
    for (const auto& [name, unit] : by_name_) out.push_back(name);
    for (const auto& [system, names] : bare_) {
      for (const auto& [name, unit] : names) out.push_back(name);
    }
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
