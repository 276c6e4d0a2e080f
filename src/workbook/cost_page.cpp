// SPDX-License-Identifier: MIT
#include "workbook/cost_page.hpp"

#include "workbook/rounding_formulas.hpp"

namespace platewright::pages {
namespace {

struct CostColumn {
  enum : unsigned {
    name,
    written,
    used,
    unit,
    yield,
    bought,
    price,
    credit,
    exact,
    remainder,
    rounded,
    planned
  };
};

constexpr RoundedColumns cost_columns{CostColumn::exact, CostColumn::remainder,
                                      CostColumn::rounded};

/// Exact and rounded, and how many portions share them.
struct RecipePlaces {
  CellPlace exact;
  CellPlace rounded;
  std::optional<CellPlace> portion;  ///< rounded
};

std::string written_text(const LineAmount& amount) {
  const auto text = [](const Amount& one) {
    return as_short_decimal(one.number, 2) + " " + one.unit.symbol_for(one.number);
  };
  if (!amount.low()) return "to taste";
  return amount.high() ? text(*amount.low()) + " to " + text(*amount.high()) : text(*amount.low());
}

class CostPage {
 public:
  CostPage(Page& page, const EventPlan& plan, const PricePlaces& prices)
      : page_(page), plan_(plan), prices_(prices) {}

  CellPlace write(const CostedEvent& costed) {
    page_.begin("Plate cost: " + plan_.event().name,
                {"Cost = as bought x price - credit for by-products. The last column but one is "
                 "rounded so that the lines add up; \"As planned\" is what the program found and "
                 "does not follow."});
    const unsigned summary = page_.row();
    page_.next(static_cast<unsigned>(costed.cost.dishes.size()) + 4);
    for (const PlateCost& batch : costed.batches) {
      const Recipe& recipe = plan_.recipes().recipe(batch.recipe);
      batches_.emplace(batch.recipe, write_recipe(batch, recipe.name + ", one batch").exact);
    }
    std::vector<RecipePlaces> dishes;
    for (const PlateCost& dish : costed.cost.dishes) {
      dishes.push_back(write_recipe(dish, dish.recipe));
    }
    const auto saved = write_saved(costed);
    page_.go_to(summary);
    return write_summary(costed.cost, dishes, saved);
  }

 private:
  const Currency& currency() const { return plan_.prices().currency; }

  RecipePlaces write_recipe(const PlateCost& cost, const std::string& title) {
    page_.words(0, title, CellLook::heading);
    page_.next();
    page_.headings({"Ingredient", "Used", "as bought", "", "Yield, or a batch gives", "As bought",
                    "Price of 1", "By-products of 1", "Cost, exact", "Remainder", "COST",
                    "As planned"});
    const unsigned first = page_.row();
    std::vector<std::optional<Money>> costs;
    for (const CostLine& line : cost.lines) {
      costs.push_back(write_line(line));
      page_.next();
    }
    page_.words(CostColumn::name, "Total");
    RecipePlaces out;
    out.exact = page_.here(CostColumn::exact);
    out.rounded = round_lines(page_, first, costs, cost_columns, currency());
    page_.number(CostColumn::planned, rounded_figure(cost.total), CellLook::money);
    page_.next();
    if (cost.per_portion) out.portion = write_portion(cost, out.exact);
    page_.next();
    return out;
  }

  CellPlace write_portion(const PlateCost& cost, const CellPlace& total) {
    page_.words(CostColumn::name, "A portion");
    const auto portions = page_.number(CostColumn::used, *cost.portions);
    page_.words(CostColumn::unit, "portions");
    const auto one = page_.formula(CostColumn::exact, page_.at(total) + "/" + page_.at(portions),
                                   *cost.per_portion, CellLook::price);
    const CellPlace out = write_rounded(one, *cost.per_portion);
    page_.next();
    return out;
  }

  /// Half up, in the row under way, with what was planned beside it.
  CellPlace write_rounded(const CellPlace& sum, const Money& value,
                          CellRole role = CellRole::figure) {
    page_.number(CostColumn::planned, rounded_figure(value), CellLook::money);
    return page_.formula(CostColumn::rounded, half_up_formula(page_.at(sum), currency()),
                         rounded_figure(value), CellLook::money, role);
  }

  Rational rounded_figure(const Money& value) const {
    return plain(round_money(value, minor_unit(currency()), Rounding::half_up));
  }

  /// Gives its cost; none where it is not costed.
  std::optional<Money> write_line(const CostLine& line) {
    page_.words(CostColumn::name, line.name);
    page_.words(CostColumn::written, written_text(line.written));
    if (line.to_taste || line.free || !line.used) {
      page_.words(CostColumn::rounded, line.free ? "free" : "in Q");
      return std::nullopt;
    }
    if (line.is_recipe) {
      write_part_of_batch(line);
    } else {
      write_bought(line);
    }
    return line.cost;
  }

  void write_part_of_batch(const CostLine& line) {
    const Recipe& recipe = plan_.recipes().recipe(line.name);
    const Rational gives = Rational(1) / batches_for(recipe, Amount{1, line.used->unit});
    const auto amount = page_.number(CostColumn::used, line.used->number);
    page_.words(CostColumn::unit, line.used->unit.symbol_for(line.used->number));
    const auto batch = page_.number(CostColumn::yield, gives);
    const auto many = page_.formula(CostColumn::bought, page_.at(amount) + "/" + page_.at(batch),
                                    line.used->number / gives, CellLook::number);
    const auto whole = batches_.at(line.name);
    const Money price = plan_batch_price(line, gives);
    const auto one = page_.formula(CostColumn::price, page_.at(whole), price, CellLook::price);
    page_.formula(CostColumn::exact, page_.at(many) + "*" + page_.at(one), line.cost,
                  CellLook::price);
  }

  /// Of one batch, from what a part of it costs; an amount of 0 says nothing of it.
  Money plan_batch_price(const CostLine& line, const Rational& gives) const {
    if (line.used->number == 0) return {};
    return line.cost * Rational(gives / line.used->number);
  }

  void write_bought(const CostLine& line) {
    const GoodsPlaces& goods = prices_.goods.at(line.name);
    const Amount& purchased = *line.purchased;
    page_.words(CostColumn::unit, purchased.unit.symbol_for(purchased.number));
    const CellPlace amount = write_purchased(line, purchased.number);
    const Purchase& offer = plan_.prices().find(line.name)->purchases.front();
    const auto one =
        page_.formula(CostColumn::price, page_.at(goods.pack_cost) + "/" + page_.at(goods.holds),
                      price_of(Amount{1, purchased.unit}, offer), CellLook::price);
    std::string cost = page_.at(amount) + "*" + page_.at(one);
    if (goods.credit) {
      const Money credit =
          by_product_credit(*plan_.prices().find(line.name), Amount{1, purchased.unit});
      const auto less =
          page_.formula(CostColumn::credit, page_.at(*goods.credit), credit, CellLook::price);
      cost += "-" + page_.at(amount) + "*" + page_.at(less);
    }
    page_.formula(CostColumn::exact, cost, line.cost, CellLook::price);
  }

  /// What is used, in the measure it is bought in, over the yield; pieces that are bought whole for
  /// nothing that is used have no yield.
  CellPlace write_purchased(const CostLine& line, const Rational& purchased) {
    if (line.yield == 0) return page_.number(CostColumn::bought, purchased);
    const auto amount = page_.number(CostColumn::used, purchased * line.yield);
    const auto share = page_.number(CostColumn::yield, line.yield, CellLook::share);
    return page_.formula(CostColumn::bought, page_.at(amount) + "/" + page_.at(share), purchased,
                         CellLook::number);
  }

  /// What by-products save where another recipe uses them; none where there are none.
  std::optional<CellPlace> write_saved(const CostedEvent& costed) {
    if (costed.cost.saved == Money()) return std::nullopt;
    page_.words(0, "By-products used, not bought", CellLook::heading);
    page_.next();
    const CellPlace first = page_.here(CostColumn::exact);
    CellPlace last = first;
    for (const Need& need : costed.needs) {
      if (!need.from_by_products) continue;
      last = write_left_from_cuts(need);
    }
    page_.words(CostColumn::name, "Total");
    const auto out = page_.formula(CostColumn::exact, "SUM(" + page_.range(first, last) + ")",
                                   costed.cost.saved, CellLook::price, CellRole::total);
    page_.next();
    return out;
  }

  CellPlace write_left_from_cuts(const Need& need) {
    const GoodsPlaces& goods = prices_.goods.at(need.ingredient);
    const Amount& amount = *need.from_by_products;
    const Purchase& offer = plan_.prices().find(need.ingredient)->purchases.front();
    page_.words(CostColumn::name, need.ingredient);
    page_.words(CostColumn::unit, amount.unit.symbol_for(amount.number));
    const auto left = page_.number(CostColumn::bought, amount.number);
    const auto one =
        page_.formula(CostColumn::price, page_.at(goods.pack_cost) + "/" + page_.at(goods.holds),
                      price_of(Amount{1, amount.unit}, offer), CellLook::price);
    const auto out = page_.formula(CostColumn::exact, page_.at(left) + "*" + page_.at(one),
                                   price_of(amount, offer), CellLook::price);
    page_.next();
    return out;
  }

  CellPlace write_summary(const EventCost& cost, const std::vector<RecipePlaces>& dishes,
                          const std::optional<CellPlace>& saved) {
    page_.headings({"The dishes", "", "Portions", "", "", "", "A portion", "", "Cost, exact", "",
                    "COST", "As planned"});
    const CellPlace first = page_.here(CostColumn::exact);
    for (std::size_t i = 0; i < dishes.size(); ++i) {
      write_dish(cost.dishes[i], dishes[i]);
      page_.next();
    }
    if (saved) {
      page_.words(CostColumn::name, "By-products used, not bought");
      const auto less =
          page_.formula(CostColumn::exact, "-" + page_.at(*saved), -cost.saved, CellLook::price);
      write_rounded(less, -cost.saved);
      page_.next();
    }
    const CellPlace last{first.sheet, page_.row() - 1, first.column};
    page_.words(CostColumn::name, "Food");
    const auto food = page_.formula(CostColumn::exact, "SUM(" + page_.range(first, last) + ")",
                                    cost.food, CellLook::price, CellRole::total);
    write_rounded(food, cost.food, CellRole::total);
    return food;
  }

  void write_dish(const PlateCost& dish, const RecipePlaces& places) {
    page_.words(CostColumn::name, dish.recipe);
    if (dish.portions) page_.number(CostColumn::used, *dish.portions);
    if (places.portion) {
      page_.formula(CostColumn::price, page_.at(*places.portion), rounded_figure(*dish.per_portion),
                    CellLook::money);
    }
    page_.formula(CostColumn::exact, page_.at(places.exact), dish.total, CellLook::price);
    page_.formula(CostColumn::rounded, page_.at(places.rounded), rounded_figure(dish.total),
                  CellLook::money);
    page_.number(CostColumn::planned, rounded_figure(dish.total), CellLook::money);
  }

  Page& page_;
  const EventPlan& plan_;
  const PricePlaces& prices_;
  std::map<std::string, CellPlace> batches_;  ///< exact cost of one batch
};

}  // namespace

CellPlace write_costs(Page& page, const EventPlan& plan, const CostedEvent& costed,
                      const PricePlaces& prices) {
  return CostPage(page, plan, prices).write(costed);
}

}  // namespace platewright::pages
