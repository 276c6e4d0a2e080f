// SPDX-License-Identifier: MIT
#pragma once
// From the weight as purchased to the weight served.

#include "platewright/yield/bought.hpp"
#include "platewright/yield/chosen_row.hpp"
#include "platewright/yield/cut.hpp"
#include "platewright/yield/cuts_alike.hpp"
#include "platewright/yield/grain.hpp"
#include "platewright/yield/how_sure.hpp"
#include "platewright/yield/ladder.hpp"
#include "platewright/yield/loss.hpp"
#include "platewright/yield/loss_stage.hpp"
#include "platewright/yield/portion_size.hpp"
#include "platewright/yield/portions.hpp"
#include "platewright/yield/produce.hpp"
#include "platewright/yield/rung.hpp"
#include "platewright/yield/stage.hpp"
#include "platewright/yield/yield_answer.hpp"
#include "platewright/yield/yield_table.hpp"
