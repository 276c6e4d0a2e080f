// SPDX-License-Identifier: MIT
#include "cli/add_commands.hpp"
#include "cli/command_options.hpp"

namespace platewright::cli {

void add_recipe_command(CLI::App& program, RecipeArguments& parsed, CommonOptions& common) {
  CLI::App* recipe =
      add_command(program, "recipe", command_group::kitchen,
                  "A recipe of schema.org (JSON-LD) as a file of a recipe for the book", common);
  argument(*recipe, "file", placeholder::file, parsed.file, "the block of JSON-LD alone");
  add_books(*recipe, parsed.books);
}

}  // namespace platewright::cli
