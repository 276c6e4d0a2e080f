#pragma once
// Who a quote is for, and what its paper says besides sums.

#include <optional>
#include <string>
#include <vector>

#include "platewright/costing/quote_terms.hpp"

namespace platewright {

/// Lines of text as they were written; empty where the book says nothing.
struct Paper {
  std::string number;                ///< of the quote
  std::optional<LocalDay> written;   ///< the day of the quote
  std::vector<std::string> caterer;  ///< name, address, tax number: a line each
  std::vector<std::string> client;   ///< the same
  std::string contact;               ///< whom to ask, on the client's side
  std::vector<std::string> venue;    ///< name and address
  std::string service_style;         ///< plated, buffet, stations, family style
  std::vector<std::string> includes;
  std::vector<std::string> other_terms;
};

}  // namespace platewright
