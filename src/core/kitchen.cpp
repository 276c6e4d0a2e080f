// SPDX-License-Identifier: MIT
// The bodies of include/platewright/kitchen, compiled.

#include "platewright/kitchen/bodies/kitchen.hpp"

#include "platewright/kitchen/bodies/clock_hours.hpp"
#include "platewright/kitchen/bodies/detail/measure_search.hpp"
#include "platewright/kitchen/bodies/measure.hpp"
#include "platewright/kitchen/bodies/measure_set.hpp"
#include "platewright/kitchen/bodies/measure_text.hpp"
#include "platewright/kitchen/bodies/pan_bottom.hpp"
#include "platewright/kitchen/bodies/pourings.hpp"
#include "platewright/kitchen/bodies/read_tools.hpp"
#include "platewright/kitchen/bodies/rounding.hpp"
#include "platewright/kitchen/bodies/rounding_policy.hpp"
#include "platewright/kitchen/bodies/rounding_rule.hpp"
#include "platewright/kitchen/bodies/rounding_steps.hpp"
#include "platewright/kitchen/bodies/scales.hpp"
#include "platewright/kitchen/bodies/tape.hpp"
#include "platewright/kitchen/bodies/tool.hpp"
#include "platewright/kitchen/bodies/unit_chain.hpp"
#include "platewright/kitchen/bodies/usual_measures.hpp"
#include "platewright/kitchen/bodies/workplace.hpp"
