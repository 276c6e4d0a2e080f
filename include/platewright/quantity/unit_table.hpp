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

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/quantities.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/problem/folded_name.hpp"
#include "platewright/quantity/built_in_units.hpp"

namespace platewright {

/// The units of the program and a user's own. A copy is independent of the original.
class UnitTable {
 public:
  /// The table with the units that are built into the program.
  UnitTable();

  /// Adds a unit; its names win over names that are there already, bare ones included.
  void add(UnitRecord record) { add(Unit(std::move(record))); }

  /// The unit called `name`, or none: a UCUM code (in its own capitals), a name (capitals and full
  /// stops ignored), or a bare name in the measuring system named.
  std::optional<Unit> look_up(std::string_view name, MeasuringSystem system) const;

  /// As `look_up`, but throws Failure for a name that is not known or has two meanings.
  Unit find(std::string_view name, MeasuringSystem system) const;

  /// Every unit, the built-in ones first.
  const std::vector<Unit>& all() const { return units_; }

 private:
  void add(const Unit& unit);

  void name_it(const std::string& name, const Unit& unit);

  std::optional<Unit> look_up_bare(const std::string& plain, MeasuringSystem system) const;

  std::vector<std::string> names_that_may_be_meant() const;

  std::vector<Unit> units_;
  std::map<std::string, Unit> by_name_;
  std::map<MeasuringSystem, std::map<std::string, Unit>> bare_;
  std::unordered_map<std::string, Unit> by_ucum_;
};

/// Reads a measuring system's name. Throws Failure for another word.
MeasuringSystem read_system(std::string_view text);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/quantity/bodies/unit_table.hpp"
#endif
