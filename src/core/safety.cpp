// SPDX-License-Identifier: MIT
// The bodies of include/platewright/safety, compiled.

#include "platewright/safety/bodies/allergen_law.hpp"
#include "platewright/safety/bodies/allergens.hpp"
#include "platewright/safety/bodies/bound_temperature.hpp"
#include "platewright/safety/bodies/food_kind.hpp"
#include "platewright/safety/bodies/pull_temperature.hpp"
#include "platewright/safety/bodies/roast_oven.hpp"
#include "platewright/safety/bodies/safety_table.hpp"
#include "platewright/safety/bodies/step_kind.hpp"
#include "platewright/safety/bodies/step_place.hpp"
#include "platewright/safety/bodies/step_rule.hpp"
#include "platewright/safety/bodies/undercooked.hpp"
