// SPDX-License-Identifier: MIT
#include "card/sheets/plots.hpp"

#include <algorithm>

#include "platewright/number/round.hpp"
#include "platewright/number/write.hpp"

namespace platewright::card {
namespace {

/// The smallest of 1, 2, 5, 10, 20 ... (or a tenth of them and so on) that goes into `length` at
/// most seven times.
Rational round_step(const Rational& length) {
  constexpr unsigned most = 7;
  Rational step(1);
  while (step * most >= length * 10) step /= 10;
  while (step * most < length) step *= 10;
  for (const unsigned divisor : {5U, 2U}) {
    const Rational finer = step / divisor;
    if (finer * most >= length) return finer;
  }
  return step;
}

}  // namespace

Axis axis_over(std::string label, const std::vector<Rational>& values) {
  const auto [least, most] = std::minmax_element(values.begin(), values.end());
  const Rational step = *least == *most ? Rational(1) : round_step(*most - *least);
  Axis out{std::move(label), down_to(*least, step), up_to(*most, step), {}};
  if (out.from == out.to) out.to += step;
  for (Rational at = out.from; at <= out.to; at += step) {
    out.ticks.push_back({at, as_exact(at)});
  }
  return out;
}

Picture drawn(Table table, std::size_t across, const std::string& across_label,
              const std::vector<CurveColumn>& ups, const std::string& up_label) {
  Plot plot;
  std::vector<Rational> xs;
  std::vector<Rational> ys;
  for (const CurveColumn& up : ups) {
    Curve curve{up.label, {}};
    for (const RowGroup& group : table.groups) {
      for (const Row& row : group.rows) {
        if (std::max(across, up.column) >= row.size()) continue;
        const auto& x = row[across].exact;
        const auto& y = row[up.column].exact;
        if (!x || !y) continue;
        curve.points.push_back({*x, *y});
        xs.push_back(*x);
        ys.push_back(*y);
      }
    }
    std::stable_sort(curve.points.begin(), curve.points.end(),
                     [](const PlotPoint& a, const PlotPoint& b) { return a.x < b.x; });
    plot.curves.push_back(std::move(curve));
  }
  if (xs.empty()) {
    xs.emplace_back(0);
    ys.emplace_back(0);
  }
  plot.across = axis_over(across_label, xs);
  plot.up = axis_over(up_label, ys);
  return {std::move(table), std::move(plot)};
}

}  // namespace platewright::card
