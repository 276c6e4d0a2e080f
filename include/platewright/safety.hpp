// SPDX-License-Identifier: MIT
#pragma once
// Minimum temperatures, holding limits and allergens.

#include "platewright/safety/allergen_law.hpp"
#include "platewright/safety/allergens.hpp"
#include "platewright/safety/bound_temperature.hpp"
#include "platewright/safety/food_kind.hpp"
#include "platewright/safety/pull_temperature.hpp"
#include "platewright/safety/roast_oven.hpp"
#include "platewright/safety/safety_table.hpp"
#include "platewright/safety/step_kind.hpp"
#include "platewright/safety/step_place.hpp"
#include "platewright/safety/step_rule.hpp"
#include "platewright/safety/thawing_rate.hpp"
#include "platewright/safety/undercooked.hpp"
