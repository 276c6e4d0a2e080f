// SPDX-License-Identifier: MIT
#pragma once
// A kitchen's measures, scales and rounding.

#include "platewright/kitchen/clock_hours.hpp"
#include "platewright/kitchen/kitchen.hpp"
#include "platewright/kitchen/measure.hpp"
#include "platewright/kitchen/measure_set.hpp"
#include "platewright/kitchen/measure_text.hpp"
#include "platewright/kitchen/measured_parts.hpp"
#include "platewright/kitchen/pan_bottom.hpp"
#include "platewright/kitchen/pourings.hpp"
#include "platewright/kitchen/read_tools.hpp"
#include "platewright/kitchen/rounding.hpp"
#include "platewright/kitchen/rounding_policy.hpp"
#include "platewright/kitchen/rounding_rule.hpp"
#include "platewright/kitchen/rounding_steps.hpp"
#include "platewright/kitchen/scales.hpp"
#include "platewright/kitchen/tape.hpp"
#include "platewright/kitchen/tool.hpp"
#include "platewright/kitchen/unit_chain.hpp"
#include "platewright/kitchen/usual_measures.hpp"
#include "platewright/kitchen/workplace.hpp"
