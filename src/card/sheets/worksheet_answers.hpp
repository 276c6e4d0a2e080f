#pragma once
// A student's answers, marked.

#include <vector>

#include "platewright/card/sheet.hpp"
#include "platewright/worksheet/worksheet.hpp"

namespace platewright::card {

/// Adds the table of one test's answers, and how many are right. `key` begins the keys.
void add_answers(Sheet& sheet, const std::string& key, const std::vector<MarkedAnswer>& answers,
                 const Working& working, const Worksheet& worksheet);

}  // namespace platewright::card
