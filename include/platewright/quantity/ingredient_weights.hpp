// SPDX-License-Identifier: MIT
#pragma once
// From cups and pieces to weight and back: only through an ingredient's own figures.

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
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

bool can_be_weighed(const Unit& unit);

/// Whether anything is known that leads from this unit to a weight.
bool weighs_by(const IngredientWeights& weights, const Unit& unit);

/// What `amount` of an ingredient weighs. Throws Failure as `convert` does.
Mass weight_of(const Amount& amount, const IngredientWeights& weights);

/// The same; nothing where a figure for it is missing.
std::optional<Mass> weight_if_known(const Amount& amount, const IngredientWeights& weights);

/// `amount` of an ingredient in `unit`. Within a dimension the units alone decide; weight, capacity
/// and pieces convert through the ingredient's own figures. Throws Failure where such a figure is
/// missing (there is no default), or where the dimensions can't be converted at all.
Conversion convert(const Amount& amount, const Unit& unit, const IngredientWeights& weights);

/// The weights of many ingredients, by the names that cooks write.
class WeightTable {
 public:
  /// Adds what is known under a name; rows of the same name are put together. The synonyms of a
  /// book's own row win over names and synonyms that are there already.
  void add(const std::string& name, const std::vector<std::string>& synonyms, MeasureWeight row);

  /// What is known under `name` or a synonym of it, or nothing.
  const IngredientWeights* find(std::string_view name) const&;
  const IngredientWeights* find(std::string_view) && = delete;

  /// What is known of `name` by preparation: under `chopped` the rows of `name, chopped`.
  std::map<std::string, IngredientWeights> prepared(std::string_view name) const;

  std::vector<std::string> names() const;

  const std::map<std::string, IngredientWeights>& all() const { return by_name_; }

 private:
  std::map<std::string, IngredientWeights> by_name_;
  std::map<std::string, std::string> by_synonym_;
  std::map<std::string, std::string> own_synonyms_;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/quantity/bodies/ingredient_weights.hpp"
#endif
