// SPDX-License-Identifier: MIT
// A row for each recipe: what it makes and what it costs.

#include "card/sheets/shared.hpp"
#include "platewright/card/cost_sheet.hpp"

namespace platewright {
namespace {

std::string listed(const std::set<std::string>& names) {
  std::string out;
  for (const std::string& name : names) out += (out.empty() ? "" : ", ") + name;
  return out;
}

Row plate_row(const RecipeCost& cost, const PriceList& prices) {
  return {words(cost.recipe),
          cost.makes ? card::amount_cell(*cost.makes, Rounding::down) : Cell{},
          cost.portions ? number_cell(*cost.portions, 2) : Cell{},
          cost.per_portion ? card::money(*cost.per_portion, prices) : Cell{},
          cost.total ? card::money(*cost.total, prices) : Cell{},
          words(listed(cost.unpriced))};
}

Table plates_table(const std::vector<RecipeCost>& costs, const PriceList& prices) {
  Table table;
  table.key = "recipes";
  table.columns = {naming_column("recipe", "Recipe"),
                   figures_column("makes", "Makes"),
                   figures_column("portions", "Portions"),
                   figures_column("plate_cost", "Plate cost"),
                   figures_column("recipe_cost", "Recipe cost"),
                   words_column("not_priced", "Not priced")};
  for (const RecipeCost& cost : costs) table.add(plate_row(cost, prices));
  return table;
}

}  // namespace

Sheet plate_costs_sheet(const std::vector<RecipeCost>& costs, const PriceList& prices) {
  std::size_t unpriced = 0;
  for (const RecipeCost& cost : costs) {
    if (!cost.unpriced.empty()) ++unpriced;
  }
  Sheet sheet(SheetKind::plate_costs);
  sheet.title = "Plate costs";
  Facts facts{"plates", "", {}};
  const auto count = [](std::size_t number) { return number_cell(Rational(number), 0); };
  facts.add("recipes", "Recipes", count(costs.size()));
  if (unpriced > 0) facts.add("not_costed", "NOT COSTED", count(unpriced));
  facts.add("currency", "Currency", words(prices.currency.code()));
  sheet.add(std::move(facts));
  sheet.add(plates_table(costs, prices));
  sheet.add(Paragraphs{"note",
                       "",
                       {"Plate cost: of one portion, as the recipe is written. What is used, not "
                        "what must be bought in whole packs. Not priced: what stands in no price "
                        "list, so that the recipe has no cost."}});
  return sheet;
}

}  // namespace platewright
