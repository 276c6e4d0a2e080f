#pragma once
// Minimum temperatures, holds and limits, as the authorities print them.

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/quantity/temperature.hpp"

namespace platewright {

/// What one authority asks of one kind of food. A lower figure of one never replaces another's.
struct MinimumTemperature {
  std::string product;
  std::string key;  ///< `whole cut`, `poultry`: what a cut names
  std::string authority;
  std::string audience;  ///< `consumer` or `food service`
  Temperature at = Temperature::celsius(0);
  std::optional<Duration> rest;  ///< after cooking, before it is carved
  std::optional<Duration> hold;  ///< at this temperature or above
  std::string source;
  std::string row;
  std::string note;
};

/// A row of the step table for whole meat roasts: kept at `at` or above for `hold`.
struct RoastHold {
  Temperature at = Temperature::celsius(0);
  Duration hold;
  std::string authority;
  std::string row;
};

/// A limit of holding, cooling, reheating and the like.
struct SafetyLimit {
  std::string limit;
  std::string key;
  std::optional<Temperature> at;
  std::optional<Duration> within;
  std::string source;
  std::string row;
  std::string note;
};

/// Holds what it was given and has no rows of its own.
struct SafetyTable {
  std::vector<MinimumTemperature> minimums;
  std::vector<RoastHold> roast_holds;
  std::vector<SafetyLimit> limits;

  /// What each authority asks for this kind of food, in the order of the table.
  std::vector<MinimumTemperature> minimums_for(std::string_view key) const {
    std::vector<MinimumTemperature> out;
    for (const MinimumTemperature& row : minimums) {
      if (row.key == key) out.push_back(row);
    }
    return out;
  }

  /// The step table's row for a temperature: between two rows the lower temperature with its longer
  /// time; nothing below the table.
  std::optional<RoastHold> roast_hold_at(const Temperature& temperature) const {
    std::optional<RoastHold> out;
    for (const RoastHold& row : roast_holds) {
      if (row.at <= temperature && (!out || out->at < row.at)) out = row;
    }
    return out;
  }

  std::optional<SafetyLimit> limit(std::string_view key) const {
    for (const SafetyLimit& row : limits) {
      if (row.key == key) return row;
    }
    return std::nullopt;
  }
};

}  // namespace platewright
