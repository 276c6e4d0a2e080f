// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/detail/cost_steps.hpp.

#include <string_view>

#include "platewright/worksheet/detail/cost_steps.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY void add_small_weight_slips(WorkingWriter& writer, const CostFigures& figures,
                                             const std::string& per_weight, WeighedIn weights) {
  const Money one = figures.cost_per_weight * price_weight(weights);
  if (weights == WeighedIn::pounds) {
    writer.slip("multiplied by 16, not divided", one * Rational(16), per_weight);
    writer.slip("divided by 10; a pound has 16 ounces", one / Rational(10), per_weight);
  } else {
    writer.slip("multiplied by 10, not divided", one * Rational(10), per_weight);
    writer.slip("divided by 100; a kilogram has ten times 100 g", one / Rational(100), per_weight);
  }
}

PLATEWRIGHT_BODY void add_portion_slips(WorkingWriter& writer, const CostFigures& figures,
                                        const std::string& per_weight, WeighedIn weights) {
  const Rational count = *figures.portion / portion_weight(weights);
  const std::string unit = weights == WeighedIn::pounds ? "ounces" : "grams";
  const std::string larger = weights == WeighedIn::pounds ? "pounds" : "kilograms";
  const auto cost = [&](const Mass& portion) { return figures.cost_per_weight * portion; };
  writer.slip("the portion's " + unit + " were taken for " + larger,
              cost(price_weight(weights) * count), per_weight);
  writer.slip("the portion's " + unit + " were written as tenths of a unit above, not as " + unit,
              cost(price_weight(weights) * count / 10), per_weight);
  writer.slip(
      "the portion's " + unit + " were written as hundredths of a unit above, not as " + unit,
      cost(price_weight(weights) * count / 100), per_weight);
  if (weights == WeighedIn::kilograms) {
    writer.slip("the cost of 100 g was multiplied by single grams",
                cost(small_weight(weights) * count), per_weight);
  }
  const auto from_rounded = [&](std::string_view of, const Mass& weight) {
    const Rational one = cost(weight).in(units::currency_unit);
    writer.slip("worked on from a rounded cost per " + std::string(of),
                Money::of(half_up(one, fraction(1, 100)), units::currency_unit) *
                    (*figures.portion / weight));
  };
  from_rounded(small_weight_name(weights), small_weight(weights));
  from_rounded(price_weight_name(weights), price_weight(weights));
  writer.slip("the portion was costed at the price as purchased",
              figures.purchase_price * *figures.portion);
}

PLATEWRIGHT_BODY void add_portion_steps(WorkingWriter& writer, const CostFigures& figures,
                                        const std::string& per_weight, const Rational& cost_factor,
                                        WeighedIn weights) {
  const Term portion{"portion", *figures.portion};
  writer.add<Money>("portion cost", Operation::multiply,
                    {{per_weight, figures.cost_per_weight}, portion});
  add_portion_slips(writer, figures, per_weight, weights);
  const Mass factor = writer.add<Mass>("portion cost factor", Operation::multiply,
                                       {portion, {"cost factor", cost_factor, FigureForm::factor}},
                                       FigureForm::factor);
  writer.slip("the portion's weight was taken for a unit above",
              price_weight(weights) * (*figures.portion / portion_weight(weights)) * cost_factor);
  if (figures.new_price) {
    writer.add<Money>(
        "portion cost at the new price", Operation::multiply,
        {{"new price", *figures.new_price}, {"portion cost factor", factor, FigureForm::factor}});
    const PricePerMass difference = *figures.new_price - figures.purchase_price;
    writer.slip(difference_words, (figures.cost_per_weight + difference) * *figures.portion);
    writer.slip("the portion was costed at the new price as purchased",
                *figures.new_price * *figures.portion);
  }
}

PLATEWRIGHT_BODY void add_cost_steps(WorkingWriter& writer, const CostFigures& figures,
                                     WeighedIn weights) {
  const std::string per_weight = "cost per " + std::string(price_weight_name(weights));
  const std::string small(small_weight_name(weights));
  writer.add<Money>(
      "cost per " + small, Operation::multiply,
      {{per_weight, figures.cost_per_weight}, {"1 x " + small, small_weight(weights)}});
  add_small_weight_slips(writer, figures, per_weight, weights);
  const auto cost_factor = writer.add<Rational>(
      "cost factor", Operation::divide,
      {{per_weight, figures.cost_per_weight}, {"purchase price", figures.purchase_price}},
      FigureForm::factor);
  writer.slip("1 / yield, which knows nothing of credits and labour", Rational(1) / figures.yield);
  if (figures.new_price) {
    writer.add<PricePerMass>(
        per_weight + " at the new price", Operation::multiply,
        {{"new price", *figures.new_price}, {"cost factor", cost_factor, FigureForm::factor}});
    writer.slip("divided by the yield, which knows nothing of credits and labour",
                *figures.new_price / figures.yield);
    writer.slip(times_yield_words, *figures.new_price * figures.yield);
    writer.slip(difference_words,
                figures.cost_per_weight + *figures.new_price - figures.purchase_price);
  }
  if (figures.portion) {
    add_portion_steps(writer, figures, per_weight, cost_factor, weights);
  }
}

}  // namespace platewright::detail
