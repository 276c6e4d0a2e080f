// SPDX-License-Identifier: MIT
#pragma once
// An ingredient line as it is written for readers: `2 1/4 cups flour, sifted`.

#include <optional>
#include <string>

#include "platewright/book/book.hpp"

namespace platewright::reading {

struct SchemaLine {
  std::string amount;  ///< as it is written there; `to taste`
  std::string name;
  std::string preparation;
  std::optional<Stage> stage;  ///< of `..., as cooked`
  bool known = false;          ///< the name is one of the book's
};

/// Nothing where it does not begin with an amount that can be read, nor ends in `to taste`.
std::optional<SchemaLine> read_schema_line(const std::string& text, const Book& book);

}  // namespace platewright::reading
