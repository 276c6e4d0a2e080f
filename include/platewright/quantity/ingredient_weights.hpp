// SPDX-License-Identifier: MIT
#pragma once
// From cups and pieces to weight and back: only through an ingredient's own figures.

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/quantity/amount.hpp"
#include "platewright/quantity/unit_table.hpp"

namespace platewright {

/// What one measure or one piece weighs: `1 cup` is 125 g, `1 clove` is 3 g. Piece weights are of
/// the edible portion, as the tables of foods print them.
struct MeasureWeight {
  Amount measure;
  Mass weighs;
  std::string size = {};    ///< of a piece: small, medium, large; else empty
  bool usual = true;        ///< of several sizes, the one that is meant where none is named
  std::string source = {};  ///< whose figure it is
  std::string row = {};
  bool own = false;  ///< the book's own weighing
};

/// All that is known about the weight of one ingredient.
struct IngredientWeights {
  std::string name;
  std::vector<MeasureWeight> rows;
};

/// An amount in another dimension, and the figures it went through.
struct Conversion {
  Amount amount;
  std::vector<const MeasureWeight*> through;  ///< rows of the `IngredientWeights` that was passed
};

inline bool can_be_weighed(const Unit& unit) {
  return unit.dimension() == UnitDimension::mass || unit.dimension() == UnitDimension::volume ||
         unit.dimension() == UnitDimension::pieces;
}

namespace detail {

inline bool is_weighed_by(const MeasureWeight& row, const Unit& unit) {
  return same_measure(row.measure.unit, unit);
}

/// The figure for `unit`: the book's own before a table's; of several measures the one nearest in
/// size to `canonical`, since a spoon and a cup of one food do not always agree; of several sizes
/// of piece the usual one.
inline const MeasureWeight* best_row(const IngredientWeights& weights, const Unit& unit,
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

inline std::string known_kinds(const IngredientWeights& weights) {
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
inline const MeasureWeight& need_row(const IngredientWeights& weights, const Unit& unit,
                                     const std::optional<Rational>& canonical, const Amount& amount,
                                     std::string_view to) {
  if (const MeasureWeight* row = best_row(weights, unit, canonical)) return *row;
  if (unit.dimension() == UnitDimension::pieces) {
    throw Failure(problems::piece_weight_missing(weights.name, unit.kind(), known_kinds(weights)));
  }
  throw Failure(problems::density_missing(weights.name, amount_text(amount), to));
}

}  // namespace detail

/// Whether anything is known that leads from this unit to a weight.
inline bool weighs_by(const IngredientWeights& weights, const Unit& unit) {
  return unit.dimension() == UnitDimension::mass ||
         detail::best_row(weights, unit, std::nullopt) != nullptr;
}

namespace detail {

/// The figure that a measure or a count is weighed by. Throws Failure as `convert` does.
inline const MeasureWeight& weighed_by(const Amount& amount, const IngredientWeights& weights) {
  return need_row(weights, amount.unit, amount.canonical(), amount, "weight");
}

inline Rational grams_by(const MeasureWeight& row, const Amount& amount) {
  return row.weighs.in(units::gram) * (amount.canonical() / row.measure.canonical());
}

}  // namespace detail

/// What `amount` of an ingredient weighs. Throws Failure as `convert` does.
inline Mass weight_of(const Amount& amount, const IngredientWeights& weights) {
  if (amount.dimension() == UnitDimension::mass) return to_mass(amount);
  if (!can_be_weighed(amount.unit)) return to_mass(amount);  // throws: it is no weight
  return Mass::of(detail::grams_by(detail::weighed_by(amount, weights), amount), units::gram);
}

/// The same; nothing where a figure for it is missing.
inline std::optional<Mass> weight_if_known(const Amount& amount, const IngredientWeights& weights) {
  if (!weighs_by(weights, amount.unit)) return std::nullopt;
  return weight_of(amount, weights);
}

/// `amount` of an ingredient in `unit`. Within a dimension the units alone decide; weight, capacity
/// and pieces convert through the ingredient's own figures. Throws Failure where such a figure is
/// missing (there is no default), or where the dimensions can't be converted at all.
inline Conversion convert(const Amount& amount, const Unit& unit,
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

/// The weights of many ingredients, by the names that cooks write.
class WeightTable {
 public:
  /// Adds what is known under a name; rows of the same name are put together. The synonyms of a
  /// book's own row win over names and synonyms that are there already.
  void add(const std::string& name, const std::vector<std::string>& synonyms, MeasureWeight row) {
    const std::string plain = folded_name(name);
    IngredientWeights& weights = by_name_[plain];
    if (weights.name.empty()) weights.name = name;
    for (const std::string& synonym : synonyms) {
      if (row.own) own_synonyms_.insert_or_assign(folded_name(synonym), plain);
      by_synonym_.emplace(folded_name(synonym), plain);
    }
    weights.rows.push_back(std::move(row));
  }

  /// What is known under `name` or a synonym of it, or nothing.
  const IngredientWeights* find(std::string_view name) const& {
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
  const IngredientWeights* find(std::string_view) && = delete;

  /// What is known of `name` by preparation: under `chopped` the rows of `name, chopped`.
  std::map<std::string, IngredientWeights> prepared(std::string_view name) const {
    const std::string start = folded_name(name) + ", ";
    std::map<std::string, IngredientWeights> out;
    for (auto found = by_name_.lower_bound(start);
         found != by_name_.end() && found->first.substr(0, start.size()) == start; ++found) {
      out.emplace(found->first.substr(start.size()), found->second);
    }
    return out;
  }

  std::vector<std::string> names() const {
    std::vector<std::string> out;
    for (const auto& [plain, weights] : by_name_) out.push_back(weights.name);
    for (const auto& [synonym, plain] : by_synonym_) out.push_back(synonym);
    return out;
  }

  const std::map<std::string, IngredientWeights>& all() const { return by_name_; }

 private:
  std::map<std::string, IngredientWeights> by_name_;
  std::map<std::string, std::string> by_synonym_;
  std::map<std::string, std::string> own_synonyms_;
};

}  // namespace platewright
