// SPDX-License-Identifier: MIT
// recipe: one of schema.org becomes a file of the book.

#include "cli/commands.hpp"
#include "cli/open_book.hpp"
#include "platewright/files/take_in_recipe.hpp"

namespace platewright::cli {

Result run(const RecipeArguments& arguments, const CommonOptions& common, ProblemList& problems) {
  const OpenedBook opened = tables_or_book(arguments.books, problems);
  const Book& book = *opened;
  const auto taken = take_in_recipe(arguments.file, book, problems);
  if (!taken) throw BookHasProblems{};
  return {std::nullopt, taken->text, common.width};
}

}  // namespace platewright::cli
