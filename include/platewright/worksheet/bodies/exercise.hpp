// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/exercise.hpp.

#include <algorithm>
#include <vector>

#include "platewright/worksheet/exercise.hpp"

namespace platewright {

namespace detail {

/// The cuts whose row says what the oven takes of the weight that goes into it.
PLATEWRIGHT_BODY std::vector<Cut> cuts_to_draw(const YieldTable& table) {
  std::vector<Cut> out;
  for (const Cut& cut : table.cuts()) {
    if (cut.ladder.loses_nothing()) continue;
    const Rung& rung = cut.ladder.rungs().front();
    const bool oven_alone = rung.to == Stage::cooked && rung.holds == std::vector{Loss::cooking};
    // An exercise of a gram is none, and goods that hardly lose anything teach nothing.
    if (oven_alone && rung.yield < fraction(19, 20)) out.push_back(cut);
  }
  return out;
}

PLATEWRIGHT_BODY Exercise ExerciseWriter::draw(const YieldTable& table, std::uint64_t number) {
  const std::vector<Cut> cuts = cuts_to_draw(table);
  if (cuts.empty()) throw Failure(problems::no_cut_to_draw());
  const Cut& cut = cuts[static_cast<std::size_t>(
      numbers_.between(0, static_cast<std::int64_t>(cuts.size()) - 1))];
  Exercise out;
  out.number = number;
  out.row = cut.name;
  out.bought = cut.bought;
  out.weights = weights_;
  draw_trim(out.trim, cut.name);
  draw_cooking(cut, out);
  return out;
}

PLATEWRIGHT_BODY Mass ExerciseWriter::weight_of(std::int64_t steps) const {
  return weights_ == WeighedIn::pounds ? Mass::of(steps * 4, units::ounce)
                                       : Mass::of(steps * 100, units::gram);
}

PLATEWRIGHT_BODY Mass ExerciseWriter::near(const Mass& weight) const {
  const Rational steps = half_up(weight / weight_of(1), 1);
  return weight_of(1) * std::max(steps, Rational(1));
}

PLATEWRIGHT_BODY Rational ExerciseWriter::share(std::int64_t least, std::int64_t most) {
  return fraction(numbers_.between(least, most), 1000);
}

PLATEWRIGHT_BODY PricePerMass ExerciseWriter::price(std::int64_t least, std::int64_t most) {
  return Money::of(fraction(numbers_.between(least, most), 20), units::currency_unit) /
         price_weight(weights_);
}

PLATEWRIGHT_BODY void ExerciseWriter::draw_trim(TrimTest& test, const std::string& cut) {
  test.cut = cut;
  test.purchased = weight_of(numbers_.between(32, 96));
  const std::int64_t paid = numbers_.between(60, 260);
  test.price = price(paid, paid);
  if (numbers_.between(0, 1) == 1) test.labour = price(8, 30);
  const auto part = [&](Rational of_all) { return near(test.purchased * of_all); };
  test.parts.push_back(TrimPart::usable("ready for the oven", part(share(580, 780))));
  // One draw a line: in which order a compiler works out arguments is its own affair.
  const PricePerMass trimmings = price(paid / 4, paid / 2);
  test.parts.push_back(TrimPart::by_product("trimmings", part(share(60, 120)), trimmings));
  const PricePerMass fat = price(1, 6);
  test.parts.push_back(TrimPart::by_product("fat", part(share(30, 70)), fat));
  test.parts.push_back(TrimPart::waste("waste", part(share(10, 25))));
  test.parts.push_back(TrimPart::cutting_loss_left_over());
  test.portion = portion_weight(weights_) * (weights_ == WeighedIn::pounds
                                                 ? Rational(numbers_.between(5, 9))
                                                 : Rational(numbers_.between(7, 13) * 20));
  paid_ = paid;
}

PLATEWRIGHT_BODY void ExerciseWriter::draw_cooking(const Cut& cut, Exercise& out) {
  const Mass usable = *out.trim.parts.front().weight;
  const Rational kept = cut.ladder.rungs().front().yield + share(0, 60) - fraction(30, 1000);
  out.cooked = near(usable * std::min(kept, fraction(97, 100)));
  Rational bones = share(15, 45);
  if (cut.ladder.rungs().size() > 1) bones += Rational(1) - cut.ladder.rungs()[1].yield;
  out.bones_and_trim = near(out.cooked * std::min(bones, fraction(1, 2)));
  out.base = numbers_.between(0, 1) == 0 ? CostBase::invoice : CostBase::net_of_credits;
  const std::int64_t dearer = numbers_.between(paid_ / 20 + 1, paid_ / 5);
  out.new_price = price(paid_ + dearer, paid_ + dearer);
}

}  // namespace detail

PLATEWRIGHT_BODY Worksheet solution_of(const Exercise& exercise, const YieldTable& table) {
  Worksheet out;
  out.name = name_of(exercise);
  out.bought = exercise.bought;
  out.weights = exercise.weights;
  out.new_price = exercise.new_price;
  TrimTest trim = exercise.trim;
  trim.cut = out.name;
  out.trim = work_out(trim);
  out.trim_working = working_of(*out.trim, out.weights, out.new_price);
  out.cooking = work_out({out.name, out.trim->usable, TrimmedCost::from(*out.trim, exercise.base),
                          out.trim->purchase_price, exercise.cooked, exercise.bones_and_trim,
                          std::nullopt, exercise.trim.portion});
  out.cooking_working = working_of(*out.cooking, out.weights, out.new_price, &*out.trim);
  out.handbook = held_against(out, exercise.row, table);
  return out;
}

}  // namespace platewright
