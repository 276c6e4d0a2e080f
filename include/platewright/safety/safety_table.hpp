#pragma once
// Minimum temperatures, holds and limits, as the authorities print them.

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/problem/folded_name.hpp"
#include "platewright/quantity/temperature.hpp"

namespace platewright {

/// What a book writes as the kind of an ingredient for which no minimum applies: flour, sugar.
inline constexpr std::string_view no_minimum_applies = "none";

/// For whom an authority speaks.
enum class Audience { consumer, food_service };

inline std::string_view name_of(Audience audience) {
  switch (audience) {
    case Audience::consumer:
      return "consumer";
    case Audience::food_service:
      return "food service";
  }
  return {};
}

/// Throws Failure for a word that is none.
inline Audience audience_from(std::string_view text) {
  for (const Audience audience : {Audience::consumer, Audience::food_service}) {
    if (name_of(audience) == text) return audience;
  }
  throw Failure(problems::word_unknown("audience", text, {"consumer", "food service"}));
}

/// What one authority asks of one kind of food. A lower figure of one never replaces another's.
struct MinimumTemperature {
  std::string product;
  std::string key;  ///< `whole cut`, `poultry`: what a cut names
  std::string authority;
  Audience audience = Audience::consumer;
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

  /// The kinds of food that have a minimum, in the order of the table.
  std::vector<std::string> keys() const {
    std::vector<std::string> out;
    for (const MinimumTemperature& row : minimums) {
      if (std::find(out.begin(), out.end(), row.key) == out.end()) out.push_back(row.key);
    }
    return out;
  }

  /// The kind of food called so, or `none`; capitals do not matter. Throws Failure with the nearest
  /// kinds: a word that no row has would take every minimum off the card.
  std::string key_for(std::string_view text) const {
    const std::string wanted = folded_name(text);
    std::vector<std::string> known = keys();
    known.emplace_back(no_minimum_applies);
    for (const std::string& key : known) {
      if (folded_name(key) == wanted) return key;
    }
    throw Failure(problems::word_unknown("kind of food", text, known));
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
