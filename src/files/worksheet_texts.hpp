// SPDX-License-Identifier: MIT
#pragma once
// The figures of a worksheet as they are typed.

#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "platewright/quantity/read_amount.hpp"
#include "platewright/worksheet/check_answers.hpp"
#include "platewright/worksheet/trim_test.hpp"
#include "platewright/worksheet/weighed_in.hpp"

namespace platewright::reading {

/// In whose units the texts are read.
struct TextUnits {
  const UnitTable& units;
  MeasuringSystem system = MeasuringSystem::us;

  Amount amount(std::string_view text) const { return read_amount(text, units, system); }
  Mass mass(std::string_view text) const { return to_mass(amount(text)); }
};

/// `12 lb at 6.65 per lb`, or `12 lb for 79.80`.
struct PricedWeight {
  Amount weight;
  std::variant<PricePerMass, Money> price;
};

/// Each throws Failure for a text that is none.
PricedWeight read_priced_weight(std::string_view text, const TextUnits& units);
PricePerMass read_price_by_weight(std::string_view text, const TextUnits& units);
/// `6 lb`, `the rest`; of a by-product `3 lb at 2 per lb`, `3 lb at 0` or `3 lb for 6.00`.
TrimPart read_trim_part(PartKind kind, const std::string& name, const std::string& text,
                        const TextUnits& units);

/// An answer to a step, read as the kind of figure that the step has.
Answer read_answer(const WorkingStep& step, const std::string& text, WeighedIn weights,
                   const TextUnits& units);

/// Pounds unless the weight was written in a metric unit.
WeighedIn weighed_in(const Amount& weight);

}  // namespace platewright::reading
