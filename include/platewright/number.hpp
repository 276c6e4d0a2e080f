// SPDX-License-Identifier: MIT
#pragma once
// Exact fractions: read, written, rounded.

#include "platewright/number/apportion.hpp"
#include "platewright/number/arithmetic.hpp"
#include "platewright/number/nearest_double.hpp"
#include "platewright/number/rational.hpp"
#include "platewright/number/read.hpp"
#include "platewright/number/round.hpp"
#include "platewright/number/square_root.hpp"
#include "platewright/number/wide_whole.hpp"
#include "platewright/number/write.hpp"
