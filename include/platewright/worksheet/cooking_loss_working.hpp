// SPDX-License-Identifier: MIT
#pragma once
// A cooking loss test, step by step as it is worked with a pencil.

#include <optional>

#include "platewright/problem/body.hpp"
#include "platewright/worksheet/cooking_loss_test.hpp"
#include "platewright/worksheet/detail/cost_steps.hpp"
#include "platewright/worksheet/marked_answer.hpp"

namespace platewright {

/// Every step of a worked cooking loss test. `new_price` is a purchase price that the factors are
/// to be used on; `trimmed` is the trim test that it goes on from, where there is one.
Working working_of(const CookingLossResult& result, WeighedIn weights,
                   const std::optional<PricePerMass>& new_price = std::nullopt,
                   const TrimTestResult* trimmed = nullptr);

/// The student's own figures of a trim test under the names that the cooking loss test has for what
/// goes on from it.
OwnFigures brought_from(const OwnFigures& own, const TrimTestResult& trim, CostBase base);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/cooking_loss_working.hpp"
#endif
