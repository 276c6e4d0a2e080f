// SPDX-License-Identifier: MIT
#pragma once
// A trim test, step by step as it is worked with a pencil.

#include <optional>

#include "platewright/problem/body.hpp"
#include "platewright/worksheet/detail/cost_steps.hpp"
#include "platewright/worksheet/trim_test.hpp"

namespace platewright {

namespace detail {

void add_weights(WorkingWriter& writer, const TrimTestResult& result);

}  // namespace detail

/// Every step of a worked trim test. `new_price` is a purchase price that the factors are to be
/// used on. Each step's value is exactly what its terms come to.
Working working_of(const TrimTestResult& result, WeighedIn weights,
                   const std::optional<PricePerMass>& new_price = std::nullopt);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/trim_working.hpp"
#endif
