// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/cooking_loss_working.hpp.

#include <string>

#include "platewright/worksheet/cooking_loss_working.hpp"

namespace platewright {

namespace detail {

/// Every loss, and what is left, of the weight that was paid for: the shares that a printed test
/// card has beside those of the oven-ready weight.
PLATEWRIGHT_BODY void add_whole_shares(WorkingWriter& writer, const CookingLossResult& cooking,
                                       const TrimTestResult& trim) {
  const Term purchased{"as purchased", trim.purchased};
  const auto share = [&](const char* name, const char* of, const Mass& weight) {
    writer.add<Rational>(name, Operation::divide, {{of, weight}, purchased});
    writer.slip("taken of the oven-ready weight, not of the weight as purchased",
                weight / cooking.trimmed);
  };
  share("trim, share as purchased", "trim", trim.trim);
  share("cooking loss, share as purchased", "cooking loss", cooking.cooking_loss);
  share("bones and trim, share as purchased", "bones and trim", cooking.bones_and_trim);
  share("whole yield", "saleable", cooking.saleable);
  writer.slip("the yields of trimming and cooking were added, not multiplied",
              trim.yield + cooking.saleable_share);
  writer.slip("the trim was left out: oven-ready to saleable alone", cooking.saleable_share);
  writer.slip("the bones and trim were left in", cooking.cooked / trim.purchased);
  writer.slip("the share that is lost (1 - whole yield), not the share that is left",
              Rational(1) - cooking.saleable / trim.purchased);
}

}  // namespace detail

PLATEWRIGHT_BODY Working working_of(const CookingLossResult& result, WeighedIn weights,
                                    const std::optional<PricePerMass>& new_price,
                                    const TrimTestResult* trimmed) {
  detail::WorkingWriter writer;
  const Term oven_ready{"oven-ready", result.trimmed};
  const Term cooked{"cooked", result.cooked};
  writer.add<Mass>("cooking loss", Operation::subtract, {oven_ready, cooked});
  const Mass all_lost = result.trimmed - result.saleable;
  const std::string bones_in = "bones and trim were put into the cooking loss";
  writer.slip(bones_in, all_lost);
  writer.add<Mass>("saleable", Operation::subtract,
                   {cooked, {"bones and trim", result.bones_and_trim}});
  const auto share = [&](const std::string& name, const std::string& of, const Mass& weight) {
    writer.add<Rational>(name, Operation::divide, {{of, weight}, oven_ready});
    writer.slip("taken of the cooked weight, not of the oven-ready weight", weight / result.cooked);
    if (trimmed != nullptr) {
      writer.slip("taken of the weight as purchased, not of the oven-ready weight",
                  weight / trimmed->purchased);
    }
  };
  share("shrink", "cooking loss", result.cooking_loss);
  writer.slip("the share that is left (1 - shrink), not the share that is lost",
              Rational(1) - result.shrink);
  writer.slip(bones_in, all_lost / result.trimmed);
  share("share of bones and trim", "bones and trim", result.bones_and_trim);
  share("yield", "saleable", result.saleable);
  writer.slip("the bones and trim were left in", result.cooked / result.trimmed);
  writer.slip("the share that is lost (1 - yield), not the share that is left",
              Rational(1) - result.saleable_share);
  if (trimmed != nullptr) detail::add_whole_shares(writer, result, *trimmed);

  writer.add<PricePerMass>("cost per " + std::string(price_weight_name(weights)), Operation::divide,
                           {{"cost", result.cost}, {"saleable", result.saleable}});
  if (trimmed != nullptr) {
    const bool invoice = result.base == CostBase::invoice;
    writer.slip(invoice ? "begun from the cost net of credits, not from the invoice"
                        : "begun from the invoice: the credits were left out",
                (invoice ? trimmed->net_cost : trimmed->total_cost) / result.saleable);
    if (trimmed->labour != Money{}) {
      writer.slip("begun from the invoice alone: the labour was left out",
                  trimmed->invoice / result.saleable);
    }
    writer.slip("the oven-ready weight was costed at the price as purchased",
                result.purchase_price * result.trimmed / result.saleable);
  }
  writer.slip("divided by the oven-ready weight, not by the saleable weight",
              result.cost / result.trimmed);
  writer.slip("divided by the cooked weight, bones and trim left in", result.cost / result.cooked);
  writer.slip(detail::times_yield_words, result.purchase_price * result.saleable_share);
  const std::optional<Mass> portion =
      result.portion ? std::optional(result.portion->portion) : std::nullopt;
  detail::add_cost_steps(
      writer,
      {result.cost_per_weight, result.purchase_price, result.saleable_share, portion, new_price},
      weights);
  return writer.take();
}

PLATEWRIGHT_BODY OwnFigures brought_from(const OwnFigures& own, const TrimTestResult& trim,
                                         CostBase base) {
  OwnFigures out;
  const auto bring = [&](const char* from, const char* to) {
    if (const auto figure = own.find(from); figure != own.end()) out[to] = figure->second;
  };
  bring("usable", "oven-ready");
  bring("purchase price", "purchase price");
  const char* paid = trim.labour == Money{} ? "invoice" : "total cost";
  bring(base == CostBase::net_of_credits ? "net cost" : paid, "cost");
  return out;
}

}  // namespace platewright
