// SPDX-License-Identifier: MIT
#pragma once
// A supplier's price list, as a file of prices for the book.

#include <cstddef>
#include <optional>
#include <string>

#include "platewright/book/book.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright {

/// What becomes of a list of which some rows can't be read.
enum class BadRows {
  refused,   ///< nothing is taken in until they are mended
  left_out,  ///< the others are taken in, and these are listed
};

/// A book file of the kind `prices`, and what became of the rows.
struct TakenPrices {
  std::string text;
  std::size_t taken = 0;
  std::size_t unmatched = 0;  ///< left out: of an unknown item, or without a price
  std::size_t bad = 0;        ///< left out: can't be read
};

/// Reads `header_file`, which names a CSV file beside it and says which columns hold item, pack and
/// price and how the list writes its numbers, and turns each row whose item it or the book's larder
/// names into an offer. Other rows, and those without a price, are warnings in `problems`; nothing
/// is guessed. Returns nothing where any row has an error, unless such rows are left out: each is a
/// warning then, and a remark in the text.
std::optional<TakenPrices> take_in_prices(const std::string& header_file, const Book& book,
                                          ProblemList& problems,
                                          BadRows bad_rows = BadRows::refused);

}  // namespace platewright
