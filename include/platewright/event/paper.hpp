// SPDX-License-Identifier: MIT
#pragma once
// Who a quote is for, what its paper says besides sums, and what is written down afterwards.

#include <map>
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

/// What is written down after the event, for the invoice.
struct InvoiceTerms {
  std::string number;
  LocalDay written;
  std::map<std::string, Rational> came = {};  ///< guests by kind; another kind came as expected
  std::vector<ExtraLine> extras = {};         ///< what came on top; on the bill
  std::optional<LocalDay> due_by = {};
};

}  // namespace platewright
