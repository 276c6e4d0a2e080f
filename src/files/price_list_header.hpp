// SPDX-License-Identifier: MIT
#pragma once
// What the file beside a supplier's CSV list says about it.

#include <map>
#include <string>

#include "files/reading.hpp"

namespace platewright::reading {

/// How a list writes its numbers: `1,234.50`, `1.234,50`, `$12.50`.
struct NumberWriting {
  char decimal = '.';
  char thousands = '\0';  ///< none
  std::string sign;       ///< beside every price: `$`; may be empty
};

/// A price of such a list as a book has it: `1234.50`. Throws Failure where a comma or a full stop
/// stands that the writing does not explain: nothing is guessed.
std::string plain_price(const std::string& text, const NumberWriting& writing);

/// Any other text of it with the decimals as a book has them: `6 x 2.5 kg`.
std::string plain_decimals(std::string text, const NumberWriting& writing);

struct PriceListHeader {
  std::string csv_file;
  std::string supplier;
  std::string day;
  std::string currency;
  char separator = ',';
  NumberWriting writing;
  std::map<std::string, std::string> columns;  ///< item, pack, price, ... -> heading in the list
  std::map<std::string, std::string> items;    ///< what the supplier calls it -> what the book does
};

/// Reads it; what is wrong is reported.
PriceListHeader read_price_list_header(yaml::Fields& top, const std::string& file);

}  // namespace platewright::reading
