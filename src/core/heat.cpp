// SPDX-License-Identifier: MIT
// The bodies of include/platewright/heat, compiled.

#include "platewright/heat/bodies/conducting_body.hpp"
#include "platewright/heat/bodies/core_curve.hpp"
#include "platewright/heat/bodies/detail/graded_grid.hpp"
#include "platewright/heat/bodies/detail/tridiagonal.hpp"
#include "platewright/heat/bodies/lethality.hpp"
#include "platewright/heat/bodies/meat_properties.hpp"
#include "platewright/heat/bodies/roast_band.hpp"
#include "platewright/heat/bodies/roast_course.hpp"
#include "platewright/heat/bodies/roast_model.hpp"
#include "platewright/heat/bodies/roast_question.hpp"
#include "platewright/heat/bodies/roast_shape.hpp"
