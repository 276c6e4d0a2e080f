// SPDX-License-Identifier: MIT
#pragma once
// A recipe of schema.org, as a file of a recipe for the book.

#include <cstddef>
#include <optional>
#include <string>

#include "platewright/book/book.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright {

/// A book file of the kind `recipe`, and what became of the lines.
struct TakenRecipe {
  std::string text;
  std::size_t taken = 0;
  std::size_t unread = 0;     ///< written with `?` for an amount, to be finished
  std::size_t unmatched = 0;  ///< taken, but of a name that the book does not have
};

/// Reads a file of JSON-LD that holds one `Recipe` of schema.org: name, yield, ingredients and
/// instructions. An amount is read as in a book; a name is the longest one of the book's that
/// stands there, else what stands before the first comma. What can't be read is a warning in
/// `problems`, and a line with `?` for its amount: no book takes the file before that is written,
/// since a card that left an ingredient out would leave out its allergens. Nothing is guessed:
/// allergens, what a food is, safe temperatures and times are not in such a file, and a note says
/// so. Returns nothing where there is not one recipe.
std::optional<TakenRecipe> take_in_recipe(const std::string& file, const Book& book,
                                          ProblemList& problems);

}  // namespace platewright
