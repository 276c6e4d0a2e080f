// SPDX-License-Identifier: MIT
#include "cli/open_book.hpp"

#include "cli/kept_books.hpp"
#include "platewright/book/kitchen_for.hpp"
#include "platewright/files/read_vessel.hpp"
#include "platewright/kitchen/read_tools.hpp"
#include "platewright/number/read.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/catalogue/recipes.hpp"
#include "platewright/quantity/read_amount.hpp"
#include "platewright/recipe/plan_for_short.hpp"

namespace platewright::cli {

Rational number_above_zero(std::string_view argument, const std::string& text) {
  return from_argument(argument, [&] {
    Rational number = read_number(text);
    if (number <= 0) throw Failure(problems::number_not_positive("a number", text));
    return number;
  });
}

Mass weight_above_zero(std::string_view argument, const std::string& text, const Book& book) {
  return from_argument(argument, [&] {
    const Mass weight = to_mass(read_amount(text, book.tables.units, book.measures));
    if (weight <= Mass()) throw Failure(problems::number_not_positive("a weight", text));
    return weight;
  });
}

OpenedBook read_for_jobs(const std::vector<std::string>& files, ProblemList& problems) {
  auto book = read_book(files, problems);
  return book ? std::make_shared<const Book>(std::move(*book)) : nullptr;
}

OpenedBook open_book(const std::vector<std::string>& files, ProblemList& problems) {
  KeptBooks* kept = KeptBooks::here();
  OpenedBook book = kept == nullptr ? read_for_jobs(files, problems) : kept->of(files, problems);
  if (book == nullptr) throw BookHasProblems{};
  return book;
}

EventBooks open_events(const std::vector<std::string>& files, ProblemList& problems) {
  auto books = read_events_apart(files, problems);
  if (!books) throw BookHasProblems{};
  return std::move(*books);
}

OpenedBook tables_or_book(const std::vector<std::string>& files, ProblemList& problems) {
  if (!files.empty()) return open_book(files, problems);
  static const OpenedBook tables = std::make_shared<const Book>();
  return tables;
}

const Event& the_event(const Book& book, const std::string& file) {
  if (book.events.empty()) throw Failure(problems::nothing_to_do(file, "event"));
  return book.events.front();
}

const Recipe& the_recipe(const Book& book, const std::string& name, const std::string& file) {
  if (!name.empty()) {
    return *from_argument("--recipe", [&] { return &book.recipes.recipe(name); });
  }
  if (book.main_recipes.empty()) throw Failure(problems::nothing_to_do(file, "recipe"));
  return book.recipes.recipe(book.main_recipes.front());
}

namespace {

/// `garlic: 3 lb`.
ScalePlan plan_from_short(const std::string& text, const Recipe& recipe, const Book& book,
                          const RecipeBook& recipes) {
  const std::size_t colon = text.rfind(": ");
  if (colon == std::string::npos) throw Failure(problems::short_malformed(text));
  const Amount on_hand =
      read_amount(std::string_view(text).substr(colon + 2), book.tables.units, book.measures);
  return plan_for_short(recipe, text.substr(0, colon), on_hand, recipes);
}

/// A name that is neither the recipe's own nor the table's may be misspelt.
void expect_a_size(const RecipeVessel& vessel, const Recipe& recipe, const Tables& tables) {
  if (vessel.holds || vessel.volume || vessel.bottom) return;
  if (recipe.vessel && recipe.vessel->name == vessel.name) return;
  throw Failure(problems::vessel_size_unknown(vessel.name, recipe.name, content_word(recipe),
                                              vessel_names(tables)));
}

ScalePlan plan_of_size(const ScaleOptions& options, const Recipe& recipe, const Book& book,
                       const RecipeBook& recipes) {
  std::optional<Mass> weight;
  if (!options.piece_weight.empty()) {
    weight = weight_above_zero("--piece-weight", options.piece_weight, book);
  }
  std::optional<Rational> portions;
  if (!options.portions.empty()) portions = number_above_zero("--portions", options.portions);
  if (!options.portion_size.empty()) {
    return from_argument("--portion-size", [&] {
      const Amount size = read_amount(options.portion_size, book.tables.units, book.measures);
      return plan_for_portion_size(recipe, size, recipes, portions, weight);
    });
  }
  if (portions) return plan_for_portions(recipe, *portions, recipes, weight);
  if (!options.pieces.empty()) {
    return plan_for_pieces(recipe, number_above_zero("--pieces", options.pieces), recipes, weight);
  }
  if (!options.factor.empty()) {
    return plan_for_factor(recipe, number_above_zero("--factor", options.factor), recipes, weight);
  }
  if (!options.on_hand.empty()) {
    return plan_for_weight_on_hand(recipe, weight_above_zero("--on-hand", options.on_hand, book),
                                   recipes);
  }
  if (!options.short_of.empty()) {
    return from_argument("--short",
                         [&] { return plan_from_short(options.short_of, recipe, book, recipes); });
  }
  return plan_for_factor(recipe, 1, recipes, weight);
}

}  // namespace

ScalePlan plan_from(const ScaleOptions& options, const Recipe& recipe, const Book& book,
                    const RecipeBook& recipes) {
  ScalePlan plan = plan_of_size(options, recipe, book, recipes);
  if (options.pan.empty()) return plan;
  return from_argument("--pan", [&] {
    const RecipeVessel vessel =
        read_vessel(options.pan, content_word(recipe), book.tables, book.measures);
    expect_a_size(vessel, recipe, book.tables);
    return in_vessels(recipe, std::move(plan), vessel, recipes);
  });
}

MeasuringSystem system_for(const CommonOptions& common, MeasuringSystem of_book) {
  if (common.measures == "us") return MeasuringSystem::us;
  if (common.measures == "metric") return MeasuringSystem::metric;
  return of_book;
}

Kitchen kitchen_wanted(const CommonOptions& common, const Book& book, MeasuringSystem system) {
  Kitchen kitchen = kitchen_for(book, system);
  if (!common.tolerance.empty()) {
    kitchen.tolerance =
        from_argument("--tolerance", [&] { return read_tolerance(common.tolerance); });
  }
  if (!common.rounding.empty()) {
    kitchen.rounding = from_argument(
        "--rounding", [&] { return read_rounding(common.rounding, system, book.tables.units); });
  }
  return kitchen;
}

}  // namespace platewright::cli
