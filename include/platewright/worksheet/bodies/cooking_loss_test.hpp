// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/cooking_loss_test.hpp.

#include "platewright/worksheet/cooking_loss_test.hpp"

namespace platewright {

PLATEWRIGHT_BODY TrimmedCost TrimmedCost::from(const TrimTestResult& test, CostBase base) {
  return {base, base == CostBase::invoice ? test.total_cost : test.net_cost};
}

PLATEWRIGHT_BODY CookingLossResult work_out(const CookingLossTest& test) {
  check_positive("a trimmed weight", test.trimmed);
  check_positive("a cost", test.cost.cost());
  check_positive("a purchase price", test.purchase_price * test.trimmed);
  check_not_negative("a weight of bones and trim", test.bones_and_trim);
  detail::check_parts_within(test.cooked, test.trimmed);
  detail::check_parts_within(test.bones_and_trim, test.cooked);
  const Mass saleable = test.saleable.value_or(test.cooked - test.bones_and_trim);
  check_positive("a saleable weight", saleable);
  detail::check_parts_add_up(test.bones_and_trim + saleable, test.cooked);

  CookingLossResult result;
  result.cut = test.cut;
  result.base = test.cost.base();
  result.cost = test.cost.cost();
  result.purchase_price = test.purchase_price;
  result.trimmed = test.trimmed;
  result.cooking_loss = test.trimmed - test.cooked;
  result.cooked = test.cooked;
  result.bones_and_trim = test.bones_and_trim;
  result.saleable = saleable;
  result.shrink = result.cooking_loss / test.trimmed;
  result.cooked_share = test.cooked / test.trimmed;
  result.bones_and_trim_share = test.bones_and_trim / test.trimmed;
  result.saleable_share = saleable / test.trimmed;
  result.cost_per_weight = result.cost / saleable;
  result.cost_factor = result.cost_per_weight / test.purchase_price;
  if (test.portion) {
    check_positive("a portion", *test.portion);
    result.portion = portion_cost(*test.portion, result.cost_per_weight, result.cost_factor);
  }
  return result;
}

}  // namespace platewright
