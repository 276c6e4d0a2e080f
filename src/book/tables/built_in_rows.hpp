// SPDX-License-Identifier: MIT
#pragma once
// The tables as they are built into the program: constant data, made by the generator from
// `units-data/` and `yields/`. Lists of names are joined by `|`; a ratio with denominator 0 is a
// figure that the source does not print.

#include <span>
#include <string_view>

#include "platewright/number/rational.hpp"

namespace platewright::tables {

inline constexpr Ratio not_printed{0, 0};

/// The weight of a measure (`unit` is the name of a unit of capacity) or of a piece (`unit` is the
/// kind of piece) of a food.
struct WeightRow {
  std::string_view of;
  std::string_view names;
  Ratio number;
  std::string_view unit;
  std::string_view size;
  bool usual;
  Ratio grams;
  std::string_view source;
  std::string_view row;
};

struct RungRow {
  std::string_view from;
  std::string_view to;
  Ratio yield;
  std::string_view holds;
  std::string_view method;
  Ratio samples;
  Ratio deviation;
  Ratio low;
  Ratio high;
  std::string_view source;
  std::string_view row;
};

struct CutRow {
  std::string_view name;
  std::string_view names;
  std::string_view species;
  std::string_view safety;
  std::string_view bought;
  std::string_view imps;
  std::string_view goods;
  std::string_view note;
  std::span<const RungRow> rungs;
};

/// Produce that loses trim, or a grain that takes up water.
struct GoodsRow {
  std::string_view name;
  std::string_view names;
  std::string_view trim;
  Ratio yield;
  std::string_view source;
  std::string_view row;
  std::string_view note;
};

struct VesselRow {
  std::string_view name;
  std::string_view kind;
  std::string_view names;
  std::string_view printed;
  std::string_view by_rule;
  std::string_view capacity;
  std::string_view outside;
  std::string_view source;
  std::string_view note;
};

/// A minimum temperature; `celsius` is exact, `rest` and `hold` are in seconds.
struct MinimumRow {
  std::string_view product;
  std::string_view key;
  std::string_view authority;
  std::string_view audience;
  Ratio celsius;
  Ratio rest;
  Ratio hold;
  std::string_view source;
  std::string_view row;
  std::string_view note;
};

/// A kind of food that may be served below its minimum, and on which terms.
struct UndercookedRow {
  std::string_view kind;
  std::string_view rule;
  std::string_view source;
  std::string_view row;
};

/// A row of the step table of roasts: held for `hold` seconds at `celsius` or more.
struct RoastHoldRow {
  Ratio celsius;
  Ratio hold;
  std::string_view authority;
  std::string_view row;
};

/// A step of a table of lethality: held for `hold` seconds at `celsius` or more. `fat` is the share
/// of fat that the hold is for.
struct LethalityRow {
  std::string_view food;
  std::string_view reduction;
  Ratio fat;
  Ratio celsius;
  Ratio hold;
  std::string_view source;
  std::string_view row;
};

struct LimitRow {
  std::string_view limit;
  std::string_view key;
  Ratio celsius;
  std::string_view bound;
  Ratio within;
  std::string_view source;
  std::string_view row;
  std::string_view note;
};

/// A rule for a kind of step; the place and the figures may be missing.
struct StepRuleRow {
  std::string_view step;
  std::string_view where;
  std::string_view demand;
  Ratio celsius;
  std::string_view bound;
  Ratio within;
  std::string_view source;
  std::string_view row;
  std::string_view note;
};

/// `seconds` for each `least` to `most` grams of a piece.
struct ThawingRateRow {
  std::string_view where;
  Ratio seconds;
  Ratio least;
  Ratio most;
  std::string_view source;
  std::string_view row;
  std::string_view note;
};

/// A time of roasting, thawing or carry-over, as its source prints it.
struct TimeRow {
  std::string_view kind;
  std::string_view of;
  std::string_view weight;
  std::string_view at;
  std::string_view time;
  std::string_view end;
  std::string_view source;
  std::string_view row;
  std::string_view note;
};

struct AllergenRow {
  std::string_view name;
  std::string_view scheme;
  std::string_view key;
  std::string_view names;
  std::string_view implies;
  bool name_the_kind;
  std::string_view source;
};

std::span<const WeightRow> density_rows();
std::span<const WeightRow> piece_rows();
std::span<const CutRow> cut_rows();
std::span<const GoodsRow> produce_rows();
std::span<const GoodsRow> grain_rows();
std::span<const VesselRow> vessel_rows();
std::span<const MinimumRow> minimum_rows();
std::span<const UndercookedRow> undercooked_rows();
std::span<const RoastHoldRow> roast_hold_rows();
std::span<const LethalityRow> lethality_rows();
std::span<const LimitRow> limit_rows();
std::span<const StepRuleRow> step_rule_rows();
std::span<const ThawingRateRow> thawing_rate_rows();
std::span<const TimeRow> time_rows();
std::span<const AllergenRow> allergen_rows();

}  // namespace platewright::tables
