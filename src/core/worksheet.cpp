// SPDX-License-Identifier: MIT
// The bodies of include/platewright/worksheet, compiled.

#include "platewright/worksheet/bodies/worksheet.hpp"

#include "platewright/worksheet/bodies/check_answers.hpp"
#include "platewright/worksheet/bodies/class_marks.hpp"
#include "platewright/worksheet/bodies/cooking_loss_test.hpp"
#include "platewright/worksheet/bodies/cooking_loss_working.hpp"
#include "platewright/worksheet/bodies/detail/cost_steps.hpp"
#include "platewright/worksheet/bodies/detail/misread_weights.hpp"
#include "platewright/worksheet/bodies/detail/parts.hpp"
#include "platewright/worksheet/bodies/exercise.hpp"
#include "platewright/worksheet/bodies/exercise_numbers.hpp"
#include "platewright/worksheet/bodies/figure.hpp"
#include "platewright/worksheet/bodies/handbook.hpp"
#include "platewright/worksheet/bodies/handbook_cut.hpp"
#include "platewright/worksheet/bodies/hold_against.hpp"
#include "platewright/worksheet/bodies/kept_tests.hpp"
#include "platewright/worksheet/bodies/marked_answer.hpp"
#include "platewright/worksheet/bodies/trials.hpp"
#include "platewright/worksheet/bodies/trim_test.hpp"
#include "platewright/worksheet/bodies/trim_working.hpp"
#include "platewright/worksheet/bodies/working.hpp"
