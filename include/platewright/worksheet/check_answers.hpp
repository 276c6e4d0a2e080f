// SPDX-License-Identifier: MIT
#pragma once
// A student's answers beside a worked sheet: right, right as far as they are written out, right
// from an earlier slip, or wrong and by which slip.

#include <vector>

#include "platewright/number/round.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/worksheet/detail/misread_weights.hpp"
#include "platewright/worksheet/marked_answer.hpp"
#include "platewright/worksheet/working.hpp"

namespace platewright {

/// The answers marked, in the order of the working's steps. An answer to a step that is not there
/// is left out: whoever reads the answers reports it. `own` has the student's figures that the
/// terms come from (of the sheet that this one goes on from) and gets those of these steps.
std::vector<MarkedAnswer> check_answers(const Working& working, const std::vector<Answer>& answers,
                                        OwnFigures& own);

/// The same for a sheet that goes on from none.
std::vector<MarkedAnswer> check_answers(const Working& working, const std::vector<Answer>& answers);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/check_answers.hpp"
#endif
