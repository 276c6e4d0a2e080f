// SPDX-License-Identifier: MIT
#pragma once
// Trim tests, cooking loss tests and trials.

#include "platewright/worksheet/check_answers.hpp"
#include "platewright/worksheet/class_marks.hpp"
#include "platewright/worksheet/cooking_loss_test.hpp"
#include "platewright/worksheet/cooking_loss_working.hpp"
#include "platewright/worksheet/exercise.hpp"
#include "platewright/worksheet/exercise_numbers.hpp"
#include "platewright/worksheet/figure.hpp"
#include "platewright/worksheet/handbook.hpp"
#include "platewright/worksheet/handbook_cut.hpp"
#include "platewright/worksheet/hold_against.hpp"
#include "platewright/worksheet/kept_tests.hpp"
#include "platewright/worksheet/marked_answer.hpp"
#include "platewright/worksheet/portion_cost.hpp"
#include "platewright/worksheet/trials.hpp"
#include "platewright/worksheet/trim_test.hpp"
#include "platewright/worksheet/trim_working.hpp"
#include "platewright/worksheet/weighed_in.hpp"
#include "platewright/worksheet/working.hpp"
#include "platewright/worksheet/worksheet.hpp"
