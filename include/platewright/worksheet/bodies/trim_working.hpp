// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/trim_working.hpp.

#include <string>

#include "platewright/worksheet/trim_working.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY Money labour_of_one(const TrimTestResult& result, WeighedIn weights) {
  return result.labour / result.purchased * price_weight(weights);
}

/// Invoice and, where there is labour, the total cost. Returns the name of the last of them.
PLATEWRIGHT_BODY std::string add_paid(WorkingWriter& writer, const TrimTestResult& result,
                                      WeighedIn weights) {
  const Term purchased{"purchased", result.purchased};
  if (result.priced_whole) {
    writer.add<PricePerMass>("purchase price", Operation::divide,
                             {{"invoice", result.invoice}, purchased});
  } else {
    writer.add<Money>("invoice", Operation::multiply,
                      {purchased, {"purchase price", result.purchase_price}});
  }
  if (result.labour == Money{}) return "invoice";
  writer.add<Money>("labour", Operation::multiply,
                    {purchased, {"labour per weight", result.labour / result.purchased}});
  const Money of_one = labour_of_one(result, weights);
  const std::string one = "the labour of one " + std::string(price_weight_name(weights));
  writer.slip(one + ", not of all that was bought", of_one);
  writer.slip("labour taken on the usable weight; it is paid on all that was bought",
              result.labour * result.yield);
  writer.add<Money>("total cost", Operation::add,
                    {{"invoice", result.invoice}, {"labour", result.labour}});
  writer.slip(one + " was added, not that of all that was bought", result.invoice + of_one);
  return "total cost";
}

PLATEWRIGHT_BODY void add_credits(WorkingWriter& writer, const TrimTestResult& result,
                                  const std::string& paid, WeighedIn weights) {
  const Rational small_in_large = price_weight(weights) / portion_weight(weights);
  const std::string taken = weights == WeighedIn::pounds ? "ounces were taken for pounds"
                                                         : "grams were taken for kilograms";
  std::vector<Term> values;
  for (const TrimLine& line : result.lines) {
    if (line.kind != PartKind::by_product) continue;
    values.push_back({"value of " + line.name, line.value});
    writer.add<Money>(values.back().name, Operation::multiply,
                      {{line.name, line.weight}, {"its value", line.value_per_weight}});
    if (!is_whole(line.weight / price_weight(weights))) {
      writer.slip("its " + taken, line.value * small_in_large);
    }
  }
  std::vector<Term> net{{paid, result.total_cost}};
  if (!values.empty()) {
    writer.add<Money>("credits", Operation::add, values);
    net.push_back({"credits", result.credits});
  }
  writer.add<Money>("net cost", Operation::subtract, net);
}

PLATEWRIGHT_BODY void add_weights(WorkingWriter& writer, const TrimTestResult& result) {
  std::vector<Term> parts;
  for (const TrimLine& line : result.lines) {
    if (line.kind != PartKind::usable) parts.push_back({line.name, line.weight});
  }
  const Term purchased{"purchased", result.purchased};
  std::vector<Term> usable{purchased};
  if (!parts.empty()) {
    writer.add<Mass>("trim", Operation::add, parts);
    usable.push_back({"trim", result.trim});
  }
  writer.add<Mass>("usable", Operation::subtract, usable);
  for (const TrimLine& line : result.lines) {
    writer.add<Rational>("share of " + line.name, Operation::divide,
                         {{line.name, line.weight}, purchased});
    writer.slip("taken of the usable weight, not of the weight as purchased",
                line.weight / result.usable);
    writer.slip("taken of the trim, not of the weight as purchased",
                result.trim == Mass{} ? Rational(0) : line.weight / result.trim);
  }
  writer.add<Rational>("yield", Operation::divide, {{"usable", result.usable}, purchased});
  writer.slip("the share of the trim, not of the usable part", result.trim / result.purchased);
  if (result.trim != Mass{}) {
    writer.slip("taken of the trim, not of the weight as purchased", result.usable / result.trim);
  }
}

PLATEWRIGHT_BODY void add_cost_per_weight(WorkingWriter& writer, const TrimTestResult& result,
                                          WeighedIn weights) {
  const std::string unit(price_weight_name(weights));
  writer.add<PricePerMass>("cost per " + unit, Operation::divide,
                           {{"net cost", result.net_cost}, {"usable", result.usable}});
  const Money& labour = result.labour;
  const Money without = result.net_cost - labour;
  writer.slip("credits left out", result.total_cost / result.usable);
  writer.slip("labour left out", without / result.usable);
  writer.slip("the labour was added after the yield; it is paid on all that was bought",
              without / result.usable + labour / result.purchased);
  if (labour != Money{}) {
    writer.slip("the labour of one " + unit + " was added, not that of all that was bought",
                (without + labour_of_one(result, weights)) / result.usable);
    if (result.credits != Money{}) {
      writer.slip("the invoice was spread over the usable weight: credits and labour left out",
                  result.invoice / result.usable);
    }
  }
  const PricePerMass undivided = result.net_cost / result.purchased;
  writer.slip("divided by the weight as purchased, not by the usable weight", undivided);
  if (undivided != result.purchase_price) {
    writer.slip("the purchase price, as if nothing were lost", result.purchase_price);
  }
  writer.slip(times_yield_words, result.purchase_price * result.yield);
}

}  // namespace detail

PLATEWRIGHT_BODY Working working_of(const TrimTestResult& result, WeighedIn weights,
                                    const std::optional<PricePerMass>& new_price) {
  detail::WorkingWriter writer;
  const std::string paid = detail::add_paid(writer, result, weights);
  detail::add_credits(writer, result, paid, weights);
  detail::add_weights(writer, result);
  detail::add_cost_per_weight(writer, result, weights);
  const std::optional<Mass> portion =
      result.portion ? std::optional(result.portion->portion) : std::nullopt;
  detail::add_cost_steps(
      writer, {result.cost_per_weight, result.purchase_price, result.yield, portion, new_price},
      weights);
  return writer.take();
}

}  // namespace platewright
