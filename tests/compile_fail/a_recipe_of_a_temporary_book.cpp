// SPDX-License-Identifier: MIT
// says: recipe
// says: delete
// never says: boost::
// means: The recipe lives in the book, and the book is gone as soon as the line is over.
// do: Keep the book under a name for as long as its recipes are used.
#include "platewright/recipe/recipe_book.hpp"

using namespace platewright;

RecipeBook our_recipes();

std::size_t lines_of_the_soup() {
#ifdef BAD_LINE
  const Recipe& soup = our_recipes().recipe("soup");
#else
  const RecipeBook book = our_recipes();
  const Recipe& soup = book.recipe("soup");
#endif
  return soup.lines.size();
}
