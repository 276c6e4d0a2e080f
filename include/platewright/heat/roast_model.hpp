// SPDX-License-Identifier: MIT
#pragma once
// The figures behind a roast that nobody knows exactly, at their fast, likely and slow ends.

#include <array>

#include "platewright/heat/meat_properties.hpp"
#include "platewright/heat/roast_question.hpp"
#include "platewright/heat/roast_shape.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// One set of figures with which a roast can be worked out.
struct RoastModel {
  HeatPath path;
  ThermalProperties material;
  double oven_exchange = 0;  ///< W/(m2 K)
  double room_exchange = 0;
};

/// The least, the likely and the most of one figure.
template <class Figure>
struct Band {
  Figure least;
  Figure likely;
  Figure most;
};

/// Surface exchange coefficients in W/(m2 K), convection and radiation together. A still oven: 18
/// in a textbook's worked example of a roast (F. Kreith and others, Principles of Heat Transfer,
/// chapter on transient conduction). A fan oven: 20 to 48 on goods baked at 186 to 225 degrees
/// Celsius (O. D. Baik and others, Heat transfer coefficients on cakes baked in a tunnel type
/// industrial oven, Journal of Food Science 64 (1999), 688-694). The ends of the still oven, and
/// the room, where what dries off takes heat along: from memory.
inline Band<double> oven_exchange(OvenKind kind) {
  return kind == OvenKind::still ? Band<double>{14, 20, 30} : Band<double>{20, 30, 48};
}
inline Band<double> room_exchange() {
  return {8, 15, 40};
}

/// The models of a roast that is done first, as is likely, and last: everything at its fast end,
/// in the middle, at its slow end. Properties at 40 degrees Celsius, half way through a roast.
Band<RoastModel> roast_models(const RoastTerms& terms);

/// The same roast when everything takes `pace` times as long.
RoastModel at_pace(RoastModel model, double pace);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/heat/bodies/roast_model.hpp"
#endif
