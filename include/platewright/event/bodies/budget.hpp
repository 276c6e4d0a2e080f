// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/budget.hpp.

#include <cstddef>

#include "platewright/event/budget.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY PricePerMass served_price(const Occasion& occasion, const std::string& name) {
  const Ingredient& ingredient = occasion.book.ingredient(name);
  const Purchase* purchase = preferred_purchase(name, occasion.prices, ingredient.place);
  if (purchase == nullptr) return PricePerMass();
  const Amount one{1, purchase->weighs ? purchase->weighs->unit : purchase->content.unit};
  const Bought bought = bought_for(one, Stage::served, ingredient, *purchase);
  const Money credit = by_product_credit(*occasion.prices.find(name), bought.amount);
  return (price_of(bought.amount, *purchase) - credit) / to_mass(one);
}

PLATEWRIGHT_BODY std::size_t position_on_menu(const Production& production,
                                              const std::string& dish) {
  std::vector<std::string> names;
  for (const DishPlan& plan : production.dishes) {
    if (plan.menu.recipe == dish) return names.size();
    names.push_back(plan.menu.recipe);
  }
  throw Failure(problems::name_unknown("dish", dish, names, "name a dish of the menu"));
}

/// The cost of the line that the dish's cut is.
PLATEWRIGHT_BODY Money cost_of_cut(const Occasion& occasion, const PlateCost& cost) {
  for (const CostLine& line : cost.lines) {
    const Ingredient* ingredient = occasion.book.find_ingredient(line.name);
    if (!line.is_recipe && ingredient != nullptr && ingredient->is_cut) return line.cost;
  }
  throw Failure(problems::budget_without_cut(cost.recipe));
}

PLATEWRIGHT_BODY BudgetChoice choice_of(const PricePerMass& price, const std::string& cut,
                                        const Mass& portion, const BudgetAnswer& answer) {
  BudgetChoice out{cut, portion, price * portion * answer.portions, false, std::nullopt};
  out.fits = out.cost <= answer.for_cut;
  if (price > PricePerMass() && answer.for_cut > Money()) {
    out.largest = answer.for_cut / (price * answer.portions);
  }
  return out;
}

}  // namespace detail

PLATEWRIGHT_BODY BudgetAnswer turn_round(const Occasion& occasion, const Budget& budget) {
  check_pricing_rule(PricingRule::margin, budget.margin);
  const Production production = plan_production(occasion.event, occasion.book, occasion.prices);
  const EventCost costs = event_cost(occasion.event, production, occasion.book, occasion.prices);
  const Quote quote = quote_for(occasion.event, costs, occasion.prices);
  const std::size_t at_dish = detail::position_on_menu(production, budget.dish);
  BudgetAnswer out;
  out.income = IncomeOfPrice::with_discounts(quote).income(budget.price);
  out.food = cost_of_food(quote).food_for(out.income * (1 - budget.margin));
  out.other = costs.food - detail::cost_of_cut(occasion, costs.dishes[at_dish]);
  out.for_cut = out.food - out.other;
  out.portions = production.dishes[at_dish].portions_wanted;
  for (const std::string& cut : budget.cuts) {
    const PricePerMass price = detail::served_price(occasion, cut);
    for (const Mass& portion : budget.portions) {
      check_positive("a portion", portion);
      out.choices.push_back(detail::choice_of(price, cut, portion, out));
    }
  }
  return out;
}

}  // namespace platewright
