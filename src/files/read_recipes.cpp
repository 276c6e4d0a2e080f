// SPDX-License-Identifier: MIT
// All recipes of a book, several at a time.

#include "files/in_parallel.hpp"
#include "files/reading.hpp"

namespace platewright::reading {
namespace {

/// A recipe that was read beside others. What is said of one depends on what was said before, so
/// that one of which there is anything to say is read again in its turn.
std::optional<Recipe> flawless_recipe(const BookFile& file, Book& book) {
  ProblemList problems;
  auto recipe = recipe_in_file({file, book, problems});
  if (!problems.all().empty()) return std::nullopt;
  return recipe;
}

}  // namespace

void read_recipes(std::deque<BookFile>& files, Book& book, ProblemList& problems) {
  std::vector<BookFile*> of_recipes;
  for (BookFile& file : files) {
    if (file.kind == FileKind::recipe) of_recipes.push_back(&file);
  }
  std::vector<std::optional<Recipe>> flawless(of_recipes.size());
  const auto read_beside = [&](std::size_t i) {
    flawless[i] = flawless_recipe(*of_recipes[i], book);
    // What follows needs the room.
    if (flawless[i]) of_recipes[i]->tree.reset();
  };
  if (are_many(of_recipes.size())) in_parallel(of_recipes.size(), read_beside);
  for (std::size_t i = 0; i < of_recipes.size(); ++i) {
    const Reading reading{*of_recipes[i], book, problems};
    auto recipe = flawless[i] ? std::move(flawless[i]) : recipe_in_file(reading);
    flawless[i].reset();
    if (recipe) take_recipe(reading, std::move(*recipe));
    of_recipes[i]->tree.reset();
  }
}

}  // namespace platewright::reading
