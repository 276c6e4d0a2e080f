#include "cli/books.hpp"

#include "platewright/number/read.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/quantity/read_amount.hpp"

namespace platewright::cli {

Book open_book(const std::vector<std::string>& files, ProblemList& problems) {
  auto book = read_book(files, problems);
  if (!book) throw BookHasProblems{};
  return std::move(*book);
}

const Event& the_event(const Book& book, const std::string& file) {
  if (book.events.empty()) throw Failure(problems::nothing_to_do(file, "event"));
  return book.events.front();
}

const Recipe& the_recipe(const Book& book, const std::string& name, const std::string& file) {
  if (!name.empty()) return book.recipes.recipe(name);
  if (book.main_recipes.empty()) throw Failure(problems::nothing_to_do(file, "recipe"));
  return book.recipes.recipe(book.main_recipes.front());
}

ScalePlan plan_from(const ScaleOptions& options, const Recipe& recipe, const Book& book) {
  const auto mass = [&](const std::string& text) {
    return to_mass(read_amount(text, book.tables.units, book.measures));
  };
  std::optional<Mass> weight;
  if (!options.piece_weight.empty()) weight = mass(options.piece_weight);
  if (!options.portions.empty()) {
    return plan_for_portions(recipe, read_number(options.portions), weight);
  }
  if (!options.pieces.empty()) return plan_for_pieces(recipe, read_number(options.pieces), weight);
  if (!options.factor.empty()) return plan_for_factor(recipe, read_number(options.factor), weight);
  if (!options.on_hand.empty()) return plan_for_weight_on_hand(recipe, mass(options.on_hand));
  return plan_for_factor(recipe, 1, weight);
}

MeasuringSystem system_for(const CommonOptions& common, MeasuringSystem of_book) {
  if (common.measures == "us") return MeasuringSystem::us;
  if (common.measures == "metric") return MeasuringSystem::metric;
  return of_book;
}

}  // namespace platewright::cli
