// SPDX-License-Identifier: MIT
#include "card/sheets/reasons.hpp"
#include "card/sheets/shared.hpp"

namespace platewright::card {
namespace {

void add_purchase(const CostLine& line, const PriceList& prices, Reason& reason) {
  reason.formula = "as bought \u00D7 AP price";
  if (line.served_yield) {
    reason.inputs.push_back({"", "yield to the plate", percent_cell(*line.served_yield)});
  } else {
    reason.inputs.push_back({"", "yield", percent_cell(line.yield)});
    reason.formula += "; as bought = used / yield";
  }
  if (!line.yield_name.empty()) reason.inputs.push_back({"", "yield by", words(line.yield_name)});
  if (line.purchased)
    // In the unit of the price, so that the two can be multiplied as they stand.
    reason.inputs.push_back(
        {"", "as bought",
         amount_cell(in_unit(*line.purchased, line.as_purchased->unit), Rounding::half_up, 4)});
  reason.inputs.push_back({"", "AP price", paid_price_cell(*line.as_purchased, prices)});
  if (!line.supplier.empty()) reason.inputs.push_back({"", "supplier", words(line.supplier)});
  if (line.credit > Money()) {
    reason.formula += "; less the credit for by-products";
    reason.inputs.push_back({"", "credit", money(line.credit, prices)});
  }
}

Reason reason_of_line(const PlateCost& cost, const CostLine& line, const PriceList& prices) {
  Reason reason{{line.name}, {}, {}, money(line.cost, prices)};
  reason.inputs.push_back({"", "in", words(cost.recipe)});
  reason.inputs.push_back({"", "used", amount_cell(*line.used, Rounding::half_up)});
  if (line.is_recipe) {
    reason.inputs.push_back({"", "price", paid_price_cell(*line.as_purchased, prices)});
    reason.formula = "cost of one batch / what a batch makes \u00D7 used";
  } else {
    add_purchase(line, prices, reason);
  }
  reason.inputs.push_back({"", "share", percent_cell(line.share)});
  return reason;
}

}  // namespace

std::vector<Reason> reasons_of_plate(const PlateCost& cost, const PriceList& prices) {
  Reason whole{
      {cost.recipe, "Plate cost, all", "Total"}, "the sum of these", {}, money(cost.total, prices)};
  std::vector<Reason> lines;
  for (const CostLine& line : cost.lines) {
    whole.inputs.push_back({"", line.name, money(line.cost, prices)});
    if (line.to_taste || line.free || !line.used || !line.as_purchased) continue;
    lines.push_back(reason_of_line(cost, line, prices));
  }
  std::vector<Reason> out{std::move(whole)};
  if (cost.per_portion) {
    out.push_back({{cost.recipe + ", a portion", "Plate cost, one", "A portion"},
                   "total / portions",
                   {{"", "total", money(cost.total, prices)},
                    {"", "portions", number_cell(*cost.portions, 2)}},
                   money(*cost.per_portion, prices)});
  }
  for (Reason& line : lines) out.push_back(std::move(line));
  return out;
}

}  // namespace platewright::card
