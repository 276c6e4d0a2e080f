#pragma once
// Minimum temperatures, holding limits and allergens.

#include "platewright/safety/allergens.hpp"
#include "platewright/safety/food_kind.hpp"
#include "platewright/safety/pull_temperature.hpp"
#include "platewright/safety/roast_oven.hpp"
#include "platewright/safety/safety_table.hpp"
#include "platewright/safety/undercooked.hpp"
