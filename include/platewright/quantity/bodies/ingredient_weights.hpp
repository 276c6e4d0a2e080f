// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/quantity/ingredient_weights.hpp.

#include <algorithm>
#include <utility>

#include "platewright/quantity/ingredient_weights.hpp"

namespace platewright {

PLATEWRIGHT_BODY bool can_be_weighed(const Unit& unit) {
  return unit.dimension() == UnitDimension::mass || unit.dimension() == UnitDimension::volume ||
         unit.dimension() == UnitDimension::pieces;
}

namespace detail {

PLATEWRIGHT_BODY bool is_weighed_by(const MeasureWeight& row, const Unit& unit) {
  return same_measure(row.measure.unit, unit);
}

/// The figure for `unit`: the book's own before a table's; of several measures the one nearest in
/// size to `canonical`, since a spoon and a cup of one food do not always agree; of several sizes
/// of piece the usual one.
PLATEWRIGHT_BODY const MeasureWeight* best_row(const IngredientWeights& weights, const Unit& unit,
                                               const std::optional<Rational>& canonical) {
  const MeasureWeight* best = nullptr;
  Rational best_distance;
  for (const MeasureWeight& row : weights.rows) {
    if (!is_weighed_by(row, unit)) continue;
    Rational distance;
    if (unit.dimension() == UnitDimension::pieces) {
      distance = row.usual ? 0 : 1;
    } else if (canonical && *canonical > 0) {
      const Rational size = row.measure.canonical();
      distance = size > *canonical ? size / *canonical : *canonical / size;
    }
    if (best == nullptr || (row.own && !best->own) ||
        (row.own == best->own && distance < best_distance)) {
      best = &row;
      best_distance = distance;
    }
  }
  return best;
}

PLATEWRIGHT_BODY std::string known_kinds(const IngredientWeights& weights) {
  std::vector<std::string> kinds;
  for (const MeasureWeight& row : weights.rows) {
    if (row.measure.dimension() != UnitDimension::pieces) continue;
    const std::string& kind = row.measure.unit.kind();
    if (std::find(kinds.begin(), kinds.end(), kind) == kinds.end()) kinds.push_back(kind);
  }
  std::string out;
  for (const std::string& kind : kinds) out += (out.empty() ? "" : ", ") + kind;
  return out;
}

/// The figure for `unit`, or Failure naming what is missing on the way from `amount` to `to`.
PLATEWRIGHT_BODY const MeasureWeight& need_row(const IngredientWeights& weights, const Unit& unit,
                                               const std::optional<Rational>& canonical,
                                               const Amount& amount, std::string_view to) {
  if (const MeasureWeight* row = best_row(weights, unit, canonical)) return *row;
  if (unit.dimension() == UnitDimension::pieces) {
    throw Failure(problems::piece_weight_missing(weights.name, unit.kind(), known_kinds(weights)));
  }
  throw Failure(problems::density_missing(weights.name, amount_text(amount), to));
}

}  // namespace detail

PLATEWRIGHT_BODY bool weighs_by(const IngredientWeights& weights, const Unit& unit) {
  return unit.dimension() == UnitDimension::mass ||
         detail::best_row(weights, unit, std::nullopt) != nullptr;
}

namespace detail {

/// The figure that a measure or a count is weighed by. Throws Failure as `convert` does.
PLATEWRIGHT_BODY const MeasureWeight& weighed_by(const Amount& amount,
                                                 const IngredientWeights& weights) {
  return need_row(weights, amount.unit, amount.canonical(), amount, "weight");
}

PLATEWRIGHT_BODY Rational grams_by(const MeasureWeight& row, const Amount& amount) {
  return row.weighs.in(units::gram) * (amount.canonical() / row.measure.canonical());
}

}  // namespace detail

PLATEWRIGHT_BODY Mass weight_of(const Amount& amount, const IngredientWeights& weights) {
  if (amount.dimension() == UnitDimension::mass) return to_mass(amount);
  if (!can_be_weighed(amount.unit)) return to_mass(amount);  // throws: it is no weight
  return Mass::of(detail::grams_by(detail::weighed_by(amount, weights), amount), units::gram);
}

PLATEWRIGHT_BODY std::optional<Mass> weight_if_known(const Amount& amount,
                                                     const IngredientWeights& weights) {
  if (!weighs_by(weights, amount.unit)) return std::nullopt;
  return weight_of(amount, weights);
}

PLATEWRIGHT_BODY Conversion convert(const Amount& amount, const Unit& unit,
                                    const IngredientWeights& weights) {
  if (same_measure(amount.unit, unit)) return {in_unit(amount, unit), {}};
  if (!can_be_weighed(amount.unit) || !can_be_weighed(unit)) {
    return {in_unit(amount, unit), {}};  // throws: names both dimensions
  }
  std::vector<const MeasureWeight*> through;
  Rational grams;
  if (amount.dimension() == UnitDimension::mass) {
    grams = amount.canonical();
  } else {
    const MeasureWeight& row = detail::weighed_by(amount, weights);
    grams = detail::grams_by(row, amount);
    through.push_back(&row);
  }
  Rational canonical = grams;
  if (unit.dimension() != UnitDimension::mass) {
    // Any measure of the food tells about how much it will be, and so which is nearest in size.
    std::optional<Rational> about;
    if (const MeasureWeight* any = detail::best_row(weights, unit, std::nullopt)) {
      about = grams * any->measure.canonical() / any->weighs.in(units::gram);
    }
    const MeasureWeight& row =
        detail::need_row(weights, unit, about, amount, dimension_name(unit.dimension()));
    canonical = grams * row.measure.canonical() / row.weighs.in(units::gram);
    through.push_back(&row);
  }
  return {Amount{canonical / unit.size(), unit}, std::move(through)};
}

PLATEWRIGHT_BODY void WeightTable::add(const std::string& name,
                                       const std::vector<std::string>& synonyms,
                                       MeasureWeight row) {
  const std::string plain = folded_name(name);
  IngredientWeights& weights = by_name_[plain];
  if (weights.name.empty()) weights.name = name;
  for (const std::string& synonym : synonyms) {
    if (row.own) own_synonyms_.insert_or_assign(folded_name(synonym), plain);
    by_synonym_.emplace(folded_name(synonym), plain);
  }
  weights.rows.push_back(std::move(row));
}

PLATEWRIGHT_BODY const IngredientWeights* WeightTable::find(std::string_view name) const& {
  const std::string plain = folded_name(name);
  if (const auto own = own_synonyms_.find(plain); own != own_synonyms_.end()) {
    return &by_name_.at(own->second);
  }
  if (const auto found = by_name_.find(plain); found != by_name_.end()) return &found->second;
  if (const auto synonym = by_synonym_.find(plain); synonym != by_synonym_.end()) {
    return &by_name_.at(synonym->second);
  }
  return nullptr;
}

PLATEWRIGHT_BODY std::map<std::string, IngredientWeights> WeightTable::prepared(
    std::string_view name) const {
  const std::string start = folded_name(name) + ", ";
  std::map<std::string, IngredientWeights> out;
  for (auto found = by_name_.lower_bound(start);
       found != by_name_.end() && found->first.substr(0, start.size()) == start; ++found) {
    out.emplace(found->first.substr(start.size()), found->second);
  }
  return out;
}

PLATEWRIGHT_BODY std::vector<std::string> WeightTable::names() const {
  std::vector<std::string> out;
  for (const auto& [plain, weights] : by_name_) out.push_back(weights.name);
  for (const auto& [synonym, plain] : by_synonym_) out.push_back(synonym);
  return out;
}

}  // namespace platewright
