// SPDX-License-Identifier: MIT
// What can be known to be wrong is reported before anyone asks.

#include "platewright/book/check_book.hpp"

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "book/contradictions.hpp"
#include "platewright/costing/bought_line.hpp"
#include "platewright/costing/by_products.hpp"
#include "platewright/costing/current_prices.hpp"
#include "platewright/day/day_warnings.hpp"
#include "platewright/event/eating.hpp"
#include "platewright/event/margin_warnings.hpp"
#include "platewright/event/order_of_day.hpp"
#include "platewright/event/order_warnings.hpp"
#include "platewright/event/payment_warnings.hpp"
#include "platewright/event/safety_warnings.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/larders.hpp"
#include "platewright/problem/catalogue/orders.hpp"
#include "platewright/problem/catalogue/recipes.hpp"
#include "platewright/problem/look_alikes.hpp"
#include "platewright/recipe/nesting.hpp"
#include "platewright/recipe/portions_by_yield.hpp"
#include "platewright/recipe/scaled_recipe.hpp"
#include "platewright/yield/bought.hpp"

namespace platewright {
namespace {

class BookCheck {
 public:
  explicit BookCheck(const Book& book) : book_(book) {}

  ProblemList run() {
    // Whatever walks down a book may call itself for each level.
    const auto unwalkable = problem_of_nesting();
    const bool in_a_circle = unwalkable && unwalkable->id == problems::recipe_cycle({}).id;
    // A circle is said further on.
    if (unwalkable && !in_a_circle) problems_.add(*unwalkable);
    for (const auto& [name, recipe] : book_.recipes.recipes) check_recipe(name, recipe);
    if (unwalkable && !in_a_circle) return std::move(problems_);
    if (in_a_circle) {
      const auto cycle = find_cycle(book_.recipes);
      problems_.add(at(problems::recipe_cycle(*cycle), book_.recipes.recipe(cycle->front()).place));
    }
    for (const auto& [name, recipe] : book_.recipes.recipes) {
      check_portions(recipe);
      check_bones(recipe);
    }
    check_by_products();
    for (const auto& [name, ingredient] : book_.recipes.ingredients) {
      check_letters(name, ingredient.place);
    }
    for (const auto& [name, recipe] : book_.recipes.recipes) check_letters(name, recipe.place);
    check_letters_of_others();
    for (const auto& [name, recipe] : book_.recipes.recipes) {
      check_contradictions(recipe, book_, problems_);
    }
    for (const Event& event : book_.events) check_menu(event);
    check_suppliers();
    check_events();
    check_order_of_all();
    return std::move(problems_);
  }

 private:
  std::optional<Problem> problem_of_nesting() const {
    try {
      check_nesting(book_.recipes);
    } catch (const Failure& failure) {
      return failure.problem();
    }
    return std::nullopt;
  }

  void check_letters(const std::string& name, const Place& place) {
    if (const auto warning = look_alike_warning(name)) problems_.add(at(*warning, place));
  }

  /// A supplier spelt in two ways gets two orders, and kinds of guests are met by their names.
  void check_letters_of_others() {
    std::set<std::string> suppliers;
    for (const auto& [name, entry] : book_.prices.entries) {
      const Ingredient* ingredient = book_.recipes.find_ingredient(name);
      for (const Purchase& purchase : entry.purchases) {
        if (!suppliers.insert(purchase.supplier).second) continue;
        check_letters(purchase.supplier, ingredient == nullptr ? Place() : ingredient->place);
      }
    }
    for (const Event& event : book_.events) {
      for (const GuestKind& kind : event.guests) check_letters(kind.name, event.place);
    }
  }

  void check_recipe(const std::string& name, const Recipe& recipe) {
    if (const Ingredient* ingredient = book_.recipes.find_ingredient(name)) {
      problems_.add(at(problems::name_twice(
                           "ingredient or recipe", name,
                           ingredient->place.file + ":" + std::to_string(ingredient->place.line)),
                       recipe.place));
    }
    check_cover(recipe);
    for (const RecipeLine& line : recipe.lines) check_line(recipe, line);
    check_steps(recipe);
  }

  /// A line by cover needs to know what the vessel holds.
  void check_cover(const Recipe& recipe) {
    if (!recipe.vessel || recipe.vessel->volume) return;
    for (const RecipeLine& line : recipe.lines) {
      if (line.scale != ScalingRule::by_cover) continue;
      problems_.add(
          at(problems::vessel_without_volume(recipe.vessel->name, vessel_names(book_.tables)),
             line.place));
    }
  }

  void check_line(const Recipe& recipe, const RecipeLine& line) {
    problems_.attempt(line.place,
                      [&] { check_scaling_rule(line, recipe, recipe.vessel.has_value()); });
    LineAmount amount;
    problems_.attempt(line.place, [&] { amount = tested_amount(line, recipe, book_.recipes); });
    if (const Recipe* other = book_.recipes.recipe_of(line)) {
      if (!amount.low()) return;
      problems_.attempt(line.place, [&] { batches_for(*other, *amount.low()); });
      return;
    }
    problems_.attempt(line.place,
                      [&] { check_bought(book_.recipes.ingredient(line.name), line, amount); });
  }

  void check_menu(const Event& event) {
    for (const MenuLine& line : event.menu) {
      problems_.attempt(line.place, [&] {
        const Recipe& recipe = book_.recipes.recipe(line.recipe);
        if (!recipe.makes.portions) throw Failure(problems::recipe_has_no_portions(recipe.name));
      });
    }
  }

  /// Whether the amount can be turned into what is bought; without a price there is nothing to
  /// check.
  void check_bought(const Ingredient& ingredient, const RecipeLine& line,
                    const LineAmount& amount) const {
    const PriceEntry* prices = book_.prices.find(ingredient.name);
    if (!amount.low() || prices == nullptr) return;
    for (const Purchase& purchase : prices->purchases) {
      bought_for(*amount.low(), stage_of(line, ingredient), ingredient, purchase, line.preparation);
    }
  }

  /// Names both numbers where the meat serves fewer than the recipe says, by more than weighing may
  /// be off, or so many more that meat is bought for nothing (limits: common practice, no source).
  void check_portions(const Recipe& recipe) {
    const auto& portions = recipe.makes.portions;
    const auto by_yield = portions_by_yield(recipe, book_.recipes);
    if (!portions || !by_yield) return;
    const bool enough = *portions <= *by_yield * fraction(21, 20);
    const bool too_much = *portions < *by_yield * fraction(4, 5);
    if (enough && !too_much) return;
    problems_.add(as_warning(
        at(problems::portions_and_yield_differ(recipe.name, as_short_decimal(*portions, 1),
                                               as_short_decimal(*by_yield, 1)),
           recipe.place)));
  }

  /// A portion by weight of a cut whose yield leaves the bone in is short of meat by the bone.
  void check_bones(const Recipe& recipe) {
    const auto& portion = recipe.makes.portion;
    if (!portion || recipe.makes.of_whole_dish || portion->dimension() != UnitDimension::mass) {
      return;
    }
    for (const RecipeLine& line : recipe.lines) {
      const Ingredient* cut = book_.recipes.ingredient_of(line);
      if (cut == nullptr || !cut->is_cut) continue;
      for (const Loss held : cut->ladder.still_held()) {
        problems_.add(as_warning(at(
            problems::portion_holds_bone(recipe.name, cut->name, held_word(held), cut->yield_name),
            line.place)));
      }
    }
  }

  void check_by_products() {
    for (const auto& item : book_.prices.entries) {
      const Ingredient& ingredient = book_.recipes.ingredient(item.first);
      problems_.attempt(ingredient.place, [&] { check_by_products(ingredient, item.second); });
    }
  }

  void check_by_products(const Ingredient& ingredient, const PriceEntry& entry) const {
    Rational shares;
    for (const ByProduct& by_product : entry.by_products) {
      shares += by_product.share;
      if (by_product.used_as.empty()) continue;
      if (by_product.used_as == ingredient.name) {
        throw Failure(problems::by_product_of_itself(ingredient.name));
      }
      book_.recipes.ingredient(by_product.used_as);
    }
    if (shares >= 1) {
      throw Failure(problems::by_products_above_whole(ingredient.name,
                                                      as_short_decimal(shares * 100, 1) + " %"));
    }
    for (const Purchase& purchase : entry.purchases) {
      const bool priced = purchase.price > Money();  // else that is reported already
      if (priced && by_product_credit(entry, purchase.content) >= purchase.price) {
        throw Failure(problems::by_products_worth_more(ingredient.name));
      }
    }
  }

  /// Of a supplier whose name is misspelt all that is said would count for nothing.
  void check_suppliers() {
    std::set<std::string> known;
    for (const auto& [name, entry] : book_.prices.entries) {
      for (const Purchase& purchase : entry.purchases) known.insert(purchase.supplier);
    }
    known.erase("");
    for (const auto& [name, supplier] : book_.prices.suppliers) {
      if (known.count(name) != 0) continue;
      problems_.add(as_warning(at(problems::supplier_without_offers(
                                      name, std::vector<std::string>(known.begin(), known.end())),
                                  supplier.place)));
    }
  }

  /// What of the order for several events together can't be had as it is planned.
  void check_order_of_all() {
    if (problems_.has_errors() || book_.events.size() < 2) return;
    std::vector<Occasion> occasions;
    for (const Event& event : book_.events) {
      occasions.push_back({event, book_.recipes, current_prices(book_.prices, day_of(event))});
    }
    try {
      problems_.add_all(order_warnings(order_of_day(occasions), occasions.front().prices,
                                       book_.events.front().place));
    } catch (const Failure&) {
      return;
    }
  }

  /// All that a sheet would warn of, by the prices of the event's day as every command that shows
  /// it. Of a book with errors no sheet is made; what else keeps an event from being planned is
  /// said when it is.
  void check_events() {
    if (problems_.has_errors()) return;
    const SafetyTable& table = book_.tables.safety;
    problems_.add_all(safety_warnings(book_.recipes, table));
    for (const Event& event : book_.events) {
      try {
        const EventPlan plan({event, book_.recipes, current_prices(book_.prices, day_of(event))});
        problems_.add_all(safety_warnings(plan, table));
        problems_.add_all(guest_warnings(event, book_.recipes, book_.tables.allergens));
        problems_.add_all(margin_warnings(plan));
        problems_.add_all(payment_warnings(plan));
        if (book_.events.size() == 1) {
          problems_.add_all(order_warnings(plan.order(), plan.prices(), event.place));
        }
        if (book_.workplace && event.at) {
          problems_.add_all(
              day_warnings(plan_day(event, plan.production(), *book_.workplace), event.place));
        }
      } catch (const Failure&) {
        continue;
      }
    }
  }

  void check_steps(const Recipe& recipe) {
    std::vector<std::string> names;
    for (const RecipeLine& line : recipe.lines) names.push_back(line.name);
    const std::set<std::string> known(names.begin(), names.end());
    std::set<std::string> used;
    for (const MethodStep& step : recipe.steps) {
      for (const std::string& name : step.uses) {
        used.insert(name);
        if (known.count(name) != 0) continue;
        problems_.attempt(step.place,
                          [&] { throw Failure(problems::step_uses_unknown(name, names)); });
      }
    }
    if (used.empty()) return;
    for (const RecipeLine& line : recipe.lines) {
      if (used.count(line.name) == 0) {
        problems_.add(as_warning(at(problems::line_not_used(line.name), line.place)));
      }
    }
  }

  const Book& book_;
  ProblemList problems_;
};

}  // namespace

ProblemList check(const Book& book) {
  return BookCheck(book).run();
}

}  // namespace platewright
