// SPDX-License-Identifier: MIT
#pragma once
// Small books in files of their own, for the tests of reading.

#include <algorithm>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/files/read_book.hpp"
#include "support/folder.hpp"

namespace platewright::test {

/// The names and texts of files.
using Files = std::vector<std::pair<std::string, std::string>>;

/// A folder with files, and what reading them gives.
class SmallBook {
 public:
  explicit SmallBook(const Files& files) {
    for (const auto& [name, text] : files) write_file(folder_.path() / name, text);
  }

  /// Reads the files of these names.
  std::optional<Book> read(const std::vector<std::string>& names) {
    std::vector<std::string> paths;
    for (const std::string& name : names) paths.push_back((folder_.path() / name).string());
    problems = ProblemList();
    return read_book(paths, problems);
  }

  std::string path(const std::string& name) const { return (folder_.path() / name).string(); }

  /// The ids of all problems, in order.
  std::vector<std::string> ids() const {
    std::vector<std::string> out;
    for (const Problem& problem : problems.all()) out.push_back(problem.id);
    return out;
  }

  ProblemList problems;

 private:
  TemporaryFolder folder_;
};

/// The ids that reading one file gives.
inline std::vector<std::string> ids_of(const std::string& text) {
  SmallBook book(Files{{"book.yaml", text}});
  book.read({"book.yaml"});
  return book.ids();
}

/// A larder that holds salt, flour and lamb and has no problems.
inline std::string larder_text() {
  return "currency: USD\n"
         "larder:\n"
         "  salt: {free: yes, allergens: none}\n"
         "  flour:\n"
         "    weighs: {1 cup: 125 g}\n"
         "    buy: [{pack: 5 lb, price: 3.95}]\n"
         "    allergens: [wheat]\n"
         "  lamb:\n"
         "    cut: lamb leg, bone-in, roasted\n"
         "    buy: [{piece: 7.5 lb, price: 8.95 per lb}]\n"
         "    allergens: none\n";
}

}  // namespace platewright::test
