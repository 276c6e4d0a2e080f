// SPDX-License-Identifier: MIT
#pragma once
// A student's answers, marked.

#include <string>
#include <vector>

#include "card/sheets/worksheet_figures.hpp"
#include "platewright/card/sheet.hpp"
#include "platewright/worksheet/worksheet.hpp"

namespace platewright::card {

/// The slip in words, as in `cut off, not rounded`, without the figures that it was made on.
std::string slip_text(const FoundSlip& slip);

/// Adds the table of one test's answers, and how many are right. `key` begins the keys. The right
/// figure has as many decimals as the answer.
void add_answers(Sheet& sheet, const std::string& key, const std::vector<MarkedAnswer>& answers,
                 const Working& working, const Worksheet& worksheet, const FigureWriter& writer);

}  // namespace platewright::card
