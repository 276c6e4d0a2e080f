// SPDX-License-Identifier: MIT
#pragma once
// A worksheet with its working, a student's answers marked, and the handbook beside it.

#include <optional>

#include "platewright/card/sheet.hpp"
#include "platewright/worksheet/kept_tests.hpp"
#include "platewright/worksheet/worksheet.hpp"

namespace platewright {

/// The trim test, the cooking loss test, or both: the parts, every step as it is worked with a
/// pencil, the answers with their marks, and the table's yields beside the tested ones. A price by
/// weight has the decimals of its currency, two more where they say it exactly; with `price_digits`
/// as many as these, as handbooks print 5.156, without noughts at the end past those of the
/// currency.
Sheet worksheet_sheet(const Worksheet& worksheet,
                      std::optional<unsigned> price_digits = std::nullopt);

/// Trials that are kept: both averages, number, standard deviation and range of each step.
Sheet trials_sheet(const KeptResult& kept);

}  // namespace platewright
