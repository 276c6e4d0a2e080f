// SPDX-License-Identifier: MIT
#pragma once
// A unit as the run-time table knows it.

#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/number/rational.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// What a unit measures. Values are held in g, mL, cm, cm2, s and pieces.
enum class UnitDimension { mass, volume, length, area, time, pieces };

/// Whose measures: decides what a bare cup, pint or spoon means.
enum class MeasuringSystem { us, imperial, metric, labelling, australian, japanese, any };

/// The word a message uses for a dimension: weight and capacity are what a cook calls them.
std::string_view dimension_name(UnitDimension dimension);

std::string_view system_name(MeasuringSystem system);

/// One row of `units-data/units.yaml` as it is built into the program. Lists are joined by `|`.
struct UnitRow {
  std::string_view name;
  UnitDimension dimension;
  Ratio size;  ///< in the canonical unit of the dimension
  MeasuringSystem system;
  std::string_view symbol;
  std::string_view plural;
  std::string_view names;
  std::string_view bare;
  std::string_view ucum;
  std::string_view kind;  ///< of pieces; pieces of two kinds never convert into each other
  std::string_view exactness;
  std::string_view source;
  std::string_view note;
};

/// A unit of the table or of a user's own tables.
struct UnitRecord {
  std::string name;
  UnitDimension dimension = UnitDimension::mass;
  Rational size;  ///< in the canonical unit of the dimension
  MeasuringSystem system = MeasuringSystem::any;
  std::string symbol;
  std::string plural;
  std::vector<std::string> names;
  std::vector<std::string> bare;
  std::string ucum;
  std::string kind;
  std::string exactness;
  std::string source;
  std::string note;
};

/// A unit to calculate with: cheap to copy, and never empty, even where it was moved from.
class Unit {
 public:
  explicit Unit(UnitRecord record)
      : record_(std::make_shared<const UnitRecord>(std::move(record))) {}
  // Copied where it would be moved: what is left behind stays a unit.
  Unit(const Unit&) = default;
  Unit& operator=(const Unit&) = default;
  ~Unit() = default;

  const UnitRecord& record() const { return *record_; }
  const std::string& name() const { return record_->name; }
  UnitDimension dimension() const { return record_->dimension; }
  const Rational& size() const { return record_->size; }
  const std::string& kind() const { return record_->kind; }

  /// The symbol as a sheet prints it behind `number`.
  const std::string& symbol_for(const Rational& number) const;

  friend bool operator==(const Unit& left, const Unit& right) {
    return left.record_ == right.record_ ||
           (left.name() == right.name() && left.size() == right.size());
  }

 private:
  std::shared_ptr<const UnitRecord> record_;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/quantity/bodies/unit.hpp"
#endif
