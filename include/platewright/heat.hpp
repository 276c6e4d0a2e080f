// SPDX-License-Identifier: MIT
#pragma once
// Conduction into a roast, and lethality of the curve of its core.

#include "platewright/heat/conducting_body.hpp"
#include "platewright/heat/core_curve.hpp"
#include "platewright/heat/lethality.hpp"
#include "platewright/heat/meat_properties.hpp"
#include "platewright/heat/roast_band.hpp"
#include "platewright/heat/roast_course.hpp"
#include "platewright/heat/roast_model.hpp"
#include "platewright/heat/roast_question.hpp"
#include "platewright/heat/roast_shape.hpp"
