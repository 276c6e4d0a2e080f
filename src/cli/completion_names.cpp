// SPDX-License-Identifier: MIT
// The names that a shell offers, a line each.

#include "cli/commands.hpp"
#include "cli/open_book.hpp"

namespace platewright::cli {
namespace {

/// Every row that `yield` takes.
std::string yield_lines(const Tables& tables) {
  std::string out;
  for (const Cut& row : tables.yields.cuts()) out += key_of(row) + "\n";
  for (const Produce& row : tables.yields.produce()) out += key_of(row) + "\n";
  for (const Grain& row : tables.yields.grains()) out += key_of(row) + "\n";
  return out;
}

}  // namespace

Result run(const CompletionsArguments& arguments, const CommonOptions&, ProblemList& problems) {
  Result result;
  if (arguments.what == "cuts") {
    result.plain = yield_lines(Book().tables);
    return result;
  }
  const OpenedBook opened = open_book({arguments.file}, problems);
  const Book& book = *opened;
  for (const auto& [name, recipe] : book.recipes.recipes) result.plain += name + "\n";
  return result;
}

}  // namespace platewright::cli
