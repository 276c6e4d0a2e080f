// SPDX-License-Identifier: MIT
// The bodies of include/platewright/quantity, compiled.

#include "platewright/quantity/bodies/amount.hpp"
#include "platewright/quantity/bodies/built_in_units.hpp"
#include "platewright/quantity/bodies/currency.hpp"
#include "platewright/quantity/bodies/ingredient_weights.hpp"
#include "platewright/quantity/bodies/literals.hpp"
#include "platewright/quantity/bodies/other_answers.hpp"
#include "platewright/quantity/bodies/read_amount.hpp"
#include "platewright/quantity/bodies/unit.hpp"
#include "platewright/quantity/bodies/unit_table.hpp"
#include "platewright/quantity/bodies/weight_words.hpp"
