// SPDX-License-Identifier: MIT
// Pairs of functions, one on plain doubles and one on approximate quantities, that must be the same
// machine code: tests/benchmark/same_code compares each `raw_NAME` with its `typed_NAME`.

#include <cstddef>

#include "platewright/quantity/quantity.hpp"

using namespace platewright;

namespace {

using Weight = Quantity<MassDimension, Approximate>;
using Capacity = Quantity<VolumeDimension, Approximate>;
using Thickness = Quantity<DensityDimension, Approximate>;

constexpr NamedUnit<MassDimension> gram{{1, 1}, "gram"};
constexpr NamedUnit<MassDimension> pound{{45359237, 100000}, "pound"};
constexpr NamedUnit<VolumeDimension> us_cup{{473176473, 2000000}, "US cup"};

}  // namespace

extern "C" {

double raw_sum(const double* weights, std::size_t count) {
  double total{};
  for (std::size_t i = 0; i < count; ++i) total = total + weights[i];
  return total / 453.59237;
}
double typed_sum(const Weight* weights, std::size_t count) {
  Weight total;
  for (std::size_t i = 0; i < count; ++i) total += weights[i];
  return total.in(pound);
}

double raw_weight_of_cups(double cups, double density) {
  return cups * 236.5882365 * density;
}
double typed_weight_of_cups(double cups, Thickness density) {
  return (Capacity::of(cups, us_cup) * density).in(gram);
}

bool raw_enough(double on_hand, double needed, double factor) {
  return on_hand < needed * factor;
}
bool typed_enough(Weight on_hand, Weight needed, double factor) {
  return on_hand < needed * factor;
}

void raw_scale(double* lines, std::size_t count, double factor) {
  for (std::size_t i = 0; i < count; ++i) lines[i] = lines[i] * factor;
}
void typed_scale(Weight* lines, std::size_t count, double factor) {
  for (std::size_t i = 0; i < count; ++i) lines[i] = lines[i] * factor;
}

double raw_ratio(double new_yield, double old_yield) {
  return new_yield / old_yield;
}
double typed_ratio(Weight new_yield, Weight old_yield) {
  return new_yield / old_yield;
}
}
