// SPDX-License-Identifier: MIT
// The rows of the program as tables that can be asked.

#include <algorithm>
#include <iterator>

#include "book/tables/built_in_rows.hpp"
#include "platewright/book/tables.hpp"

namespace platewright {
namespace {

std::string text(std::string_view view) {
  return std::string(view);
}

std::optional<Rational> printed(const Ratio& ratio) {
  if (ratio.denominator == 0) return std::nullopt;
  return to_rational(ratio);
}

std::optional<Duration> seconds(const Ratio& ratio) {
  if (ratio.denominator == 0) return std::nullopt;
  return Duration::of(to_rational(ratio), units::second);
}

void add_weights(std::span<const tables::WeightRow> rows, const UnitTable& units,
                 WeightTable& weights) {
  for (const tables::WeightRow& row : rows) {
    const Amount measure{to_rational(row.number), units.find(row.unit, MeasuringSystem::us)};
    MeasureWeight weight{measure, Mass::of(to_rational(row.grams), units::gram)};
    weight.size = row.size;
    weight.usual = row.usual;
    weight.source = row.source;
    weight.row = row.row;
    weights.add(text(row.of), split_list(row.names), std::move(weight));
  }
}

Rung rung_from(const tables::RungRow& row) {
  Rung rung;
  rung.from = stage_from(row.from);
  rung.to = stage_from(row.to);
  rung.yield = to_rational(row.yield);
  for (const std::string& loss : split_list(row.holds)) rung.holds.push_back(loss_from(loss));
  rung.method = row.method;
  if (const auto samples = printed(row.samples)) {
    rung.spread.samples = static_cast<std::int64_t>(numerator_of(*samples));
  }
  rung.spread.standard_deviation = printed(row.deviation);
  rung.spread.low = printed(row.low);
  rung.spread.high = printed(row.high);
  rung.source = Source{text(row.source), text(row.row)};
  return rung;
}

Cut cut_from(const tables::CutRow& row) {
  Cut cut;
  cut.name = row.name;
  cut.names = split_list(row.names);
  cut.species = row.species;
  if (!row.safety.empty()) cut.safety = FoodKind(text(row.safety));
  cut.bought = row.bought;
  cut.imps = row.imps;
  cut.goods = row.goods;
  cut.note = row.note;
  std::vector<Rung> rungs;
  for (const tables::RungRow& rung : row.rungs) rungs.push_back(rung_from(rung));
  cut.ladder = Ladder(std::move(rungs));
  return cut;
}

std::optional<BoundTemperature> bound_temperature(const Ratio& celsius, std::string_view bound) {
  const auto degrees = printed(celsius);
  if (!degrees) return std::nullopt;
  return BoundTemperature{Temperature::celsius(*degrees), bound_from(bound)};
}

std::vector<StepRule> step_rules() {
  std::vector<StepRule> out;
  for (const tables::StepRuleRow& row : tables::step_rule_rows()) {
    std::optional<StepPlace> where;
    if (!row.where.empty()) where = step_place_from(row.where);
    out.push_back({step_kind_from(row.step), where, step_demand_from(row.demand),
                   bound_temperature(row.celsius, row.bound), seconds(row.within), text(row.source),
                   text(row.row), text(row.note)});
  }
  return out;
}

std::vector<ThawingRate> thawing_rates() {
  std::vector<ThawingRate> out;
  for (const tables::ThawingRateRow& row : tables::thawing_rate_rows()) {
    out.push_back({step_place_from(row.where), *seconds(row.seconds),
                   Mass::of(to_rational(row.least), units::gram),
                   Mass::of(to_rational(row.most), units::gram), text(row.source), text(row.row),
                   text(row.note)});
  }
  return out;
}

SafetyTable safety_table() {
  std::vector<MinimumTemperature> minimums;
  for (const tables::MinimumRow& row : tables::minimum_rows()) {
    minimums.push_back({text(row.product), FoodKind(text(row.key)), text(row.authority),
                        audience_from(row.audience), Temperature::celsius(to_rational(row.celsius)),
                        seconds(row.rest), seconds(row.hold), text(row.source), text(row.row),
                        text(row.note)});
  }
  std::vector<RoastHold> holds;
  for (const tables::RoastHoldRow& row : tables::roast_hold_rows()) {
    holds.push_back({Temperature::celsius(to_rational(row.celsius)), *seconds(row.hold),
                     text(row.authority), text(row.row)});
  }
  std::vector<SafetyLimit> limits;
  for (const tables::LimitRow& row : tables::limit_rows()) {
    limits.push_back({text(row.limit), text(row.key), bound_temperature(row.celsius, row.bound),
                      seconds(row.within), text(row.source), text(row.row), text(row.note)});
  }
  std::vector<UndercookedKind> undercooked;
  for (const tables::UndercookedRow& row : tables::undercooked_rows()) {
    undercooked.push_back(
        {FoodKind(text(row.kind)), undercooked_from(row.rule), text(row.source), text(row.row)});
  }
  return SafetyTable{std::move(minimums),    std::move(holds), std::move(limits),
                     std::move(undercooked), step_rules(),     thawing_rates()};
}

/// The rows of one table stand together for each temperature, a share of fat each.
std::vector<LethalityStandard> lethality_standards() {
  std::vector<LethalityStandard> out;
  for (const tables::LethalityRow& row : tables::lethality_rows()) {
    const auto fat = printed(row.fat);
    auto standard = std::find_if(out.begin(), out.end(), [&](const LethalityStandard& known) {
      return known.food == row.food && known.reduction == row.reduction && known.fat == fat;
    });
    if (standard == out.end()) {
      out.push_back(
          {text(row.source), text(row.food), text(row.reduction), fat, text(row.row), {}});
      standard = std::prev(out.end());
    }
    standard->steps.push_back({Temperature::celsius(to_rational(row.celsius)), *seconds(row.hold)});
  }
  return out;
}

AllergenTable allergen_table() {
  std::vector<Allergen> allergens;
  for (const tables::AllergenRow& row : tables::allergen_rows()) {
    allergens.push_back({text(row.name), text(row.scheme), text(row.key), split_list(row.names),
                         split_list(row.implies), row.name_the_kind, text(row.source)});
  }
  return AllergenTable(std::move(allergens));
}

std::vector<Vessel> vessels() {
  std::vector<Vessel> out;
  for (const tables::VesselRow& row : tables::vessel_rows()) {
    out.push_back({text(row.name), text(row.kind), split_list(row.names), text(row.printed),
                   text(row.by_rule), text(row.capacity), text(row.outside), text(row.source),
                   text(row.note)});
  }
  return out;
}

PublishedTimeKind time_kind_from(std::string_view word) {
  std::vector<std::string> known;
  for (const PublishedTimeKind kind :
       {PublishedTimeKind::roasting, PublishedTimeKind::thawing, PublishedTimeKind::carry_over}) {
    if (name_of(kind) == word) return kind;
    known.emplace_back(name_of(kind));
  }
  throw Failure(problems::word_unknown("kind of time", word, known));
}

std::vector<PublishedTime> times() {
  std::vector<PublishedTime> out;
  for (const tables::TimeRow& row : tables::time_rows()) {
    out.push_back({time_kind_from(row.kind), text(row.of), text(row.weight), text(row.at),
                   text(row.time), text(row.end), text(row.source), text(row.row), text(row.note)});
  }
  return out;
}

}  // namespace

std::vector<std::string> vessel_names(const Tables& tables) {
  std::vector<std::string> out;
  for (const Vessel& row : tables.vessels) {
    out.push_back(row.name);
    out.insert(out.end(), row.names.begin(), row.names.end());
  }
  return out;
}

YieldRows built_in_yields() {
  YieldRows rows;
  for (const tables::CutRow& row : tables::cut_rows()) rows.cuts.push_back(cut_from(row));
  for (const tables::GoodsRow& row : tables::produce_rows()) {
    rows.produce.push_back({text(row.name),
                            split_list(row.names),
                            text(row.trim),
                            to_rational(row.yield),
                            {text(row.source), text(row.row)}});
  }
  for (const tables::GoodsRow& row : tables::grain_rows()) {
    rows.grains.push_back({text(row.name),
                           split_list(row.names),
                           to_rational(row.yield),
                           {text(row.source), text(row.row)},
                           text(row.note)});
  }
  return rows;
}

Tables built_in_tables() {
  UnitTable units;
  WeightTable weights;
  add_weights(tables::density_rows(), units, weights);
  add_weights(tables::piece_rows(), units, weights);
  return Tables{std::move(units), std::move(weights),   YieldTable(built_in_yields()),
                safety_table(),   allergen_table(),     vessels(),
                times(),          lethality_standards()};
}

}  // namespace platewright
