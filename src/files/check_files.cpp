// SPDX-License-Identifier: MIT
#include "platewright/files/check_files.hpp"

#include <filesystem>
#include <set>

#include "files/file_kind.hpp"
#include "files/reading.hpp"
#include "platewright/files/read_worksheet.hpp"
#include "platewright/files/take_in_prices.hpp"
#include "platewright/problem/catalogue/price_lists.hpp"
#include "yaml/read_yaml.hpp"

namespace platewright {
namespace reading {
namespace {

/// The kind of a file that is read by itself. Nothing for one of a book and for one that can't be
/// read, of which the book's reader says what is wrong.
std::optional<FileKind> single_kind(const std::string& file) {
  ProblemList unread;
  const auto text = yaml::read_named(file, unread);
  if (!text) return std::nullopt;
  const auto root = yaml::read_yaml(*text, file, unread);
  if (!root || kind_among(book_kinds, *root)) return std::nullopt;
  return kind_among(single_kinds, *root);
}

void read_single(const SingleFile& file, const Book& book, ProblemList& problems) {
  if (file.kind == FileKind::worksheet) {
    read_worksheet(file.file, book, problems);
  } else if (file.kind == FileKind::trials) {
    read_trials(file.file, book, problems);
  } else if (book.recipes.ingredients.empty()) {
    problems.add(at(problems::price_list_without_larder(), Place{file.file, 1, 1, {}}));
  } else {
    take_in_prices(file.file, book, problems);
  }
}

}  // namespace
}  // namespace reading

CheckedFiles check_files(const std::vector<std::string>& files, ProblemList& problems) {
  CheckedFiles out;
  std::vector<std::string> of_a_book;
  std::set<std::string> seen;
  for (const std::string& file : files) {
    const auto kind = reading::single_kind(file);
    if (!kind) {
      of_a_book.push_back(file);
      continue;
    }
    const std::string plain = std::filesystem::path(file).lexically_normal().string();
    if (seen.insert(plain).second) out.single.push_back({plain, *kind, false});
  }
  const Book book = reading::read_what_can_be(of_a_book, problems);
  out.files = book.files;
  for (SingleFile& file : out.single) {
    // A list of its own: what is wrong with other files stops nothing here.
    ProblemList own;
    reading::read_single(file, book, own);
    for (const Problem& problem : own.all()) problems.add(problem);
    file.in_order = !own.has_errors();
    out.files.push_back(file.file);
  }
  return out;
}

}  // namespace platewright
