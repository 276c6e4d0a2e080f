// SPDX-License-Identifier: MIT
// The bodies of include/platewright/number, compiled.

#include "platewright/number/bodies/apportion.hpp"
#include "platewright/number/bodies/nearest_double.hpp"
#include "platewright/number/bodies/read.hpp"
#include "platewright/number/bodies/square_root.hpp"
#include "platewright/number/bodies/write.hpp"
