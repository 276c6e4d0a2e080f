// SPDX-License-Identifier: MIT
#pragma once
// Reading worksheets, from files and from the command line.

#include <optional>
#include <string>
#include <vector>

#include "platewright/book/book.hpp"
#include "platewright/problem/problem_list.hpp"
#include "platewright/worksheet/kept_tests.hpp"
#include "platewright/worksheet/worksheet.hpp"

namespace platewright {

/// Reads a file with the key `worksheet`, and works it. Units and the handbook's rows are those of
/// `book`. Every problem goes into `problems`; returns nothing where there is an error.
std::optional<Worksheet> read_worksheet(const std::string& file, const Book& book,
                                        ProblemList& problems);

/// A part of a trim test in words: `ground` and `3 lb at 2 per lb`.
struct PartText {
  PartKind kind = PartKind::usable;
  std::string name;
  std::string text;
};

/// A simple trim test in words, as it is typed on a command line; what is empty is not there.
struct TrimTestText {
  std::string name;
  std::string purchased;  ///< `12 lb at 10 per lb`, or `12 lb for 120`
  std::string labour;     ///< `1.00 per lb`
  std::vector<PartText> parts;
  std::string portion;
  std::string new_price;
  std::string handbook;
};

/// The same as a worksheet. Throws Failure for the first thing that is wrong with it.
Worksheet worksheet_from(const TrimTestText& text, const Book& book);

/// Reads a file with the key `trials`. Every problem goes into `problems`; returns nothing where
/// there is an error.
std::optional<KeptResult> read_trials(const std::string& file, const Book& book,
                                      ProblemList& problems);

/// The file of tables that keeps these trials as the book's own cut, ready to be read again. Shares
/// are written in per cent, rounded half up to six decimals.
std::string own_tables_text(const KeptResult& kept);

}  // namespace platewright
