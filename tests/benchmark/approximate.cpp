// SPDX-License-Identifier: MIT
// What a sum and a scaling of a thousand weights cost in plain doubles, in approximate quantities
// and in exact ones.

#include "platewright/quantity/approximate.hpp"

#include <benchmark/benchmark.h>

#include <vector>

#include "platewright/quantity/units.hpp"

using namespace platewright;

namespace {

constexpr int lines = 1000;
using ApproximateMass = Quantity<MassDimension, Approximate>;

void raw_doubles(benchmark::State& state) {
  const std::vector<double> weights(lines, 28.349523125);
  for (auto _ : state) {
    double total{};
    for (const double weight : weights) total += weight * 3.48;
    benchmark::DoNotOptimize(total);
  }
}
BENCHMARK(raw_doubles);

void approximate_quantities(benchmark::State& state) {
  const std::vector<ApproximateMass> weights(lines, ApproximateMass::of(1, units::ounce));
  for (auto _ : state) {
    ApproximateMass total;
    for (const ApproximateMass& weight : weights) total += weight * 3.48;
    benchmark::DoNotOptimize(total);
  }
}
BENCHMARK(approximate_quantities);

void exact_quantities(benchmark::State& state) {
  const std::vector<Mass> weights(lines, Mass::of(1, units::ounce));
  const Rational factor = fraction(348, 100);
  for (auto _ : state) {
    Mass total;
    for (const Mass& weight : weights) total += weight * factor;
    benchmark::DoNotOptimize(total);
  }
}
BENCHMARK(exact_quantities);

}  // namespace
