#pragma once
// A trim test, step by step as it is worked with a pencil.

#include <optional>
#include <string>

#include "platewright/worksheet/detail/cost_steps.hpp"
#include "platewright/worksheet/trim_test.hpp"

namespace platewright {

namespace detail {

/// Invoice and, where there is labour, the total cost. Returns the name of the last of them.
inline std::string add_paid(WorkingWriter& writer, const TrimTestResult& result) {
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
  writer.add<Money>("total cost", Operation::add,
                    {{"invoice", result.invoice}, {"labour", result.labour}});
  return "total cost";
}

inline void add_credits(WorkingWriter& writer, const TrimTestResult& result,
                        const std::string& paid) {
  std::vector<Term> values;
  for (const TrimLine& line : result.lines) {
    if (line.kind != PartKind::by_product) continue;
    values.push_back({"value of " + line.name, line.value});
    writer.add<Money>(values.back().name, Operation::multiply,
                      {{line.name, line.weight}, {"its value", line.value_per_weight}});
  }
  std::vector<Term> net{{paid, result.total_cost}};
  if (!values.empty()) {
    writer.add<Money>("credits", Operation::add, values);
    net.push_back({"credits", result.credits});
  }
  writer.add<Money>("net cost", Operation::subtract, net);
}

inline void add_weights(WorkingWriter& writer, const TrimTestResult& result) {
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

inline void add_cost_per_weight(WorkingWriter& writer, const TrimTestResult& result,
                                WeighedIn weights) {
  writer.add<PricePerMass>("cost per " + std::string(price_weight_name(weights)), Operation::divide,
                           {{"net cost", result.net_cost}, {"usable", result.usable}});
  const Money& labour = result.labour;
  writer.slip("the credits were left out", result.total_cost / result.usable);
  writer.slip("the labour was left out", (result.net_cost - labour) / result.usable);
  writer.slip("the labour was added after the yield; it is paid on all that was bought",
              (result.net_cost - labour) / result.usable + labour / result.purchased);
  writer.slip("credits and labour were left out", result.invoice / result.usable);
  writer.slip("divided by the weight as purchased, not by the usable weight",
              result.net_cost / result.purchased);
}

}  // namespace detail

/// Every step of a worked trim test. `new_price` is a purchase price that the factors are to be
/// used on. Each step's value is exactly what its terms come to.
inline Working working_of(const TrimTestResult& result, WeighedIn weights,
                          const std::optional<PricePerMass>& new_price = std::nullopt) {
  detail::WorkingWriter writer;
  const std::string paid = detail::add_paid(writer, result);
  detail::add_credits(writer, result, paid);
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
