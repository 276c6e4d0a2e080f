// SPDX-License-Identifier: MIT
// prices: a supplier's list becomes a file of the book.

#include "cli/commands.hpp"
#include "cli/open_book.hpp"
#include "platewright/files/take_in_prices.hpp"

namespace platewright::cli {

Result run(const PricesArguments& arguments, const CommonOptions& common, ProblemList& problems) {
  Book book = *open_book(arguments.books, problems);
  const auto taken = take_in_prices(arguments.file, book, problems,
                                    arguments.good_rows ? BadRows::left_out : BadRows::refused);
  if (!taken) throw BookHasProblems{};
  return {std::nullopt, taken->text, common.width};
}

}  // namespace platewright::cli
