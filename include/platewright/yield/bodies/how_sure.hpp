// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/how_sure.hpp.

#include "platewright/yield/how_sure.hpp"

namespace platewright {

PLATEWRIGHT_BODY RelativeVariance relative_variance(const Ladder& ladder) {
  RelativeVariance variance;
  for (const Rung& rung : ladder.rungs()) {
    if (!rung.spread.standard_deviation) {
      variance.unknown.push_back(words_for(rung));
      continue;
    }
    const Rational relative = *rung.spread.standard_deviation / rung.yield;
    variance.by_roast += relative * relative;
    variance.of_average += relative * relative / Rational(rung.spread.samples.value_or(2));
  }
  return variance;
}

PLATEWRIGHT_BODY SureWeight sure_weight(const Ladder& ladder, const WeightToBuy& need,
                                        const Rational& probability, const Integer& roasts) {
  const Rational deviations = detail::deviations_for(probability);
  check_positive("a number of roasts", Rational(roasts));
  RelativeVariance variance = relative_variance(ladder);
  if (!variance.unknown.empty()) {
    return {probability, need, std::nullopt, std::move(variance.unknown)};
  }
  const Rational margin = deviations * square_root(variance.over(roasts));
  if (margin * 2 >= 1) throw Failure(problems::spread_too_wide("the spread of the yield"));
  return {probability, need, need.purchased / (Rational(1) - margin), {}};
}

PLATEWRIGHT_BODY SurePieces sure_pieces(const Ladder& ladder, const WeightToBuy& need,
                                        const PieceSpread& piece, const Rational& probability) {
  const Rational deviations = detail::deviations_for(probability);
  const PiecesToBuy average = pieces_to_buy(ladder, need, piece.average);
  check_not_negative("a standard deviation", piece.standard_deviation);
  RelativeVariance variance = relative_variance(ladder);
  if (!variance.unknown.empty()) {
    return {probability, average, std::nullopt, std::move(variance.unknown)};
  }
  const Rational of_piece = piece.standard_deviation / piece.average;
  if (of_piece * 2 >= 1) throw Failure(problems::spread_too_wide("the spread of the pieces"));
  variance.by_roast += of_piece * of_piece;
  if (deviations * square_root(variance.of_average) * 2 >= 1) {
    throw Failure(problems::spread_too_wide("the spread of the yield"));
  }
  const auto covers = [&](const Integer& count) {
    const Rational margin = deviations * square_root(variance.over(count));
    return piece.average * Rational(count) * (Rational(1) - margin) >= need.purchased;
  };
  // What is covered grows with every piece once it is above 0, so that halving finds the first.
  Integer too_few = average.pieces - 1;
  Integer enough = average.pieces;
  while (!covers(enough)) {
    too_few = enough;
    enough *= 2;
  }
  while (enough - too_few > 1) {
    const Integer middle = (too_few + enough) / 2;
    (covers(middle) ? enough : too_few) = middle;
  }
  return {probability, average, pieces_against(ladder, need, piece.average, enough), {}};
}

}  // namespace platewright
