// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with a worksheet, with trials that are kept, and with a question to a yield.

#include <cstddef>
#include <string>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem worksheet_price_missing(std::string_view text);

Problem worksheet_price_malformed(std::string_view text);

Problem cost_base_not_stated();

Problem worksheet_empty();

Problem answer_unknown(std::string_view name, std::string help);

/// `instead` is the row that differs in how the goods are bought alone; empty where there is none.
Problem handbook_other_cut(std::string_view row, std::string_view bought, std::string_view instead);

Problem class_without_answers(std::string_view student);

Problem class_folder_empty(std::string_view folder);

Problem class_too_large(std::size_t most);

Problem no_cut_to_draw();

Problem trial_stages_too_few();

Problem trial_weights_differ(std::size_t weights, std::size_t stages);

Problem portion_size_malformed(std::string_view text);

Problem ribs_without_piece();

Problem test_malformed(std::string_view text);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/worksheets.hpp"
#endif
