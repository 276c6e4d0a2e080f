// SPDX-License-Identifier: MIT
#pragma once
// Typed quantities, and amounts in the units that cooks use.

#include "platewright/quantity/amount.hpp"
#include "platewright/quantity/approximate.hpp"
#include "platewright/quantity/built_in_units.hpp"
#include "platewright/quantity/currency.hpp"
#include "platewright/quantity/dimension.hpp"
#include "platewright/quantity/ingredient_weights.hpp"
#include "platewright/quantity/literals.hpp"
#include "platewright/quantity/money.hpp"
#include "platewright/quantity/other_answers.hpp"
#include "platewright/quantity/positive.hpp"
#include "platewright/quantity/quantity.hpp"
#include "platewright/quantity/read_amount.hpp"
#include "platewright/quantity/read_temperature.hpp"
#include "platewright/quantity/spoken_unit.hpp"
#include "platewright/quantity/temperature.hpp"
#include "platewright/quantity/typed_text.hpp"
#include "platewright/quantity/unit.hpp"
#include "platewright/quantity/unit_table.hpp"
#include "platewright/quantity/units.hpp"
#include "platewright/quantity/weight_words.hpp"
