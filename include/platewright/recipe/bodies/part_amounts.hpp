// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/part_amounts.hpp.

#include "platewright/recipe/part_amounts.hpp"

namespace platewright {

PLATEWRIGHT_BODY const Filling* filling_of(const ScalePlan& plan, PartOf what) {
  if (what == PartOf::batches) return &plan.batches;
  return plan.vessels ? &*plan.vessels : nullptr;
}

PLATEWRIGHT_BODY Rational share_in_part(const ScaledRecipe& scaled, std::size_t index, PartOf what,
                                        const FilledAlike& part, const RecipeBook& book) {
  const Filling& filling = *filling_of(scaled.plan, what);
  const ScaledLine& line = scaled.lines[index];
  if (const WeightShare* share = line.line->amount.share()) {
    Mass whole;
    Mass here;
    for (const std::size_t i : lines_shared(*share, *scaled.recipe, book)) {
      const Mass weight = *tested_weight(scaled.recipe->lines[i], book) * scaled.lines[i].factor;
      whole += weight;
      here += weight * share_in_part(scaled, i, what, part, book);
    }
    return here / whole;
  }
  const bool by_vessel = what == PartOf::vessels;
  const ScalingRule each = by_vessel ? ScalingRule::by_pan : ScalingRule::by_batch;
  if (line.line->scale == each) return 1 / filling.count;
  if (by_vessel && line.line->scale == ScalingRule::by_cover) {
    return detail::cover_share(scaled, part, book);
  }
  return part.content / filling.content;
}

}  // namespace platewright
