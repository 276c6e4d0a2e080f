// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/plate_price.hpp.

#include "platewright/costing/plate_price.hpp"

namespace platewright {

PLATEWRIGHT_BODY Money price_at_food_cost(const Money& food, const Rational& share) {
  check_pricing_rule(PricingRule::food_cost, share);
  return food / share;
}

PLATEWRIGHT_BODY Rational food_cost_share(const Money& food, const Money& price) {
  check_positive("a price", price);
  return food / price;
}

PLATEWRIGHT_BODY PlatePrice plate_price(const Money& plate, const PlatePriceQuestion& question) {
  check_share("a Q factor", question.q_factor);
  PlatePrice out;
  out.question = question;
  out.plate = plate;
  out.q = plate * question.q_factor;
  out.with_q = out.plate + out.q;
  if (question.price) {
    out.food_share = food_cost_share(out.with_q, *question.price);
    out.left = *question.price - out.with_q;
  }
  if (question.food_share) out.price = price_at_food_cost(out.with_q, *question.food_share);
  return out;
}

}  // namespace platewright
