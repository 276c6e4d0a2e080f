// SPDX-License-Identifier: MIT
#pragma once
// One amount, in another unit and in kitchen measures.

#include <optional>
#include <string>
#include <vector>

#include "platewright/card/kitchen_view.hpp"
#include "platewright/card/sheet.hpp"
#include "platewright/quantity/other_answers.hpp"

namespace platewright {

/// An amount, converted.
struct MeasureAnswer {
  Amount asked;
  std::optional<Amount> converted = {};            ///< nothing where no unit was asked for
  std::string ingredient = {};                     ///< empty where the units alone decide
  std::vector<const MeasureWeight*> through = {};  ///< the weights that it went through
  std::vector<OtherAnswer> others = {};  ///< what other measures of the food would have given
};

Sheet measure_sheet(const MeasureAnswer& answer, const KitchenView& view);

}  // namespace platewright
