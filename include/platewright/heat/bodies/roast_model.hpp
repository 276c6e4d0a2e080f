// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/heat/roast_model.hpp.

#include "platewright/heat/roast_model.hpp"

namespace platewright {

PLATEWRIGHT_BODY Band<RoastModel> roast_models(const RoastTerms& terms) {
  const Temperature warm = Temperature::celsius(40);
  const auto material = [&](HeatFlow flow) { return thermal_properties(terms.meat, warm, flow); };
  const ThermalProperties likely = material(HeatFlow::between);
  const HeatPaths paths = terms.shape.paths(likely.density);
  const Band<double> oven = oven_exchange(terms.oven_kind);
  const Band<double> room = room_exchange();
  return {{paths.with_ends, material(HeatFlow::side_by_side), oven.most, room.least},
          {paths.likely(), likely, oven.likely, room.likely},
          {paths.without_ends, material(HeatFlow::in_a_row), oven.least, room.most}};
}

PLATEWRIGHT_BODY RoastModel at_pace(RoastModel model, double pace) {
  model.material.heat_capacity *= pace;
  return model;
}

}  // namespace platewright
