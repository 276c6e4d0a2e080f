// SPDX-License-Identifier: MIT
// Every problem that the catalogue can make has its entry on the page of problems, and no entry is
// left over: `check_problems page ROOT`. Every one is met in a test: `check_problems met ROOT`.

#include <algorithm>
#include <exception>
#include <filesystem>
#include <iostream>
#include <set>
#include <string>
#include <vector>

#include "support/folder.hpp"

namespace platewright::test {
namespace {

namespace fs = std::filesystem;

/// Adds the ids in `make_problem("id", ...)` of every header of a folder. One id made twice is a
/// fault.
void add_made_ids(const fs::path& folder, std::set<std::string>& ids, bool& good) {
  const std::string maker = "make_problem(";
  for (const auto& entry : fs::directory_iterator(folder)) {
    const std::string text = read_file(entry.path());
    for (std::size_t at = text.find(maker); at != std::string::npos; at = text.find(maker, at)) {
      at = text.find_first_not_of(" \n", at + maker.size());
      if (text.at(at) != '"') {
        good = false;
        std::cout << entry.path().filename().string() << ": an id that is not a plain text\n";
        continue;
      }
      const std::string id = text.substr(at + 1, text.find('"', at + 1) - at - 1);
      if (!ids.insert(id).second) {
        good = false;
        std::cout << id << " is made in two places\n";
      }
    }
  }
}

/// Of the catalogue and of its bodies.
std::set<std::string> made_ids(const fs::path& root, bool& good) {
  std::set<std::string> ids;
  add_made_ids(root / "include/platewright/problem/catalogue", ids, good);
  add_made_ids(root / "include/platewright/problem/bodies/catalogue", ids, good);
  return ids;
}

bool page_is_complete(const fs::path& root) {
  bool good = true;
  const std::set<std::string> made = made_ids(root, good);
  std::set<std::string> described;
  for (const std::string& line :
       lines_of(read_file(root / "include/platewright/problem/PROBLEMS.md"))) {
    std::string id;
    if (takes(line, "## ", id)) described.insert(id);
  }
  for (const std::string& id : made) {
    if (described.count(id) != 0) continue;
    good = false;
    std::cout << id << " is not on the page PROBLEMS.md\n";
  }
  for (const std::string& id : described) {
    if (made.count(id) != 0) continue;
    good = false;
    std::cout << id << " is on the page PROBLEMS.md, but nothing makes it\n";
  }
  return good;
}

/// Whether `id` stands in `text` as a whole word.
bool names(const std::string& text, const std::string& id) {
  const auto part_of_id = [](char c) { return c == '-' || (c >= 'a' && c <= 'z'); };
  for (std::size_t at = text.find(id); at != std::string::npos; at = text.find(id, at + 1)) {
    const std::size_t end = at + id.size();
    if ((at == 0 || !part_of_id(text[at - 1])) && (end == text.size() || !part_of_id(text[end]))) {
      return true;
    }
  }
  return false;
}

bool each_is_met(const fs::path& root) {
  bool good = true;
  std::vector<std::string> tests;
  for (const auto& entry : fs::recursive_directory_iterator(root / "tests")) {
    if (entry.is_regular_file()) tests.push_back(read_file(entry.path()));
  }
  for (const std::string& id : made_ids(root, good)) {
    const bool met = std::any_of(tests.begin(), tests.end(),
                                 [&](const std::string& text) { return names(text, id); });
    if (met) continue;
    good = false;
    std::cout << id << " is met in no test\n";
  }
  return good;
}

}  // namespace
}  // namespace platewright::test

int main(int count, char** arguments) {
  try {
    const std::vector<std::string> words(arguments + 1, arguments + count);
    const bool page = words.at(0) == "page";
    return (page ? platewright::test::page_is_complete(words.at(1))
                 : platewright::test::each_is_met(words.at(1)))
               ? 0
               : 1;
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 2;
  }
}
