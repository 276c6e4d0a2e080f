// SPDX-License-Identifier: MIT
// Whatever becomes of a book's files, reading them gives a book or a problem.

#include <rapidcheck.h>

#include <filesystem>

#include "platewright/files/read_book.hpp"
#include "support/catch.hpp"
#include "support/folder.hpp"

using namespace platewright;
using namespace platewright::test;

namespace fs = std::filesystem;

namespace {

const fs::path& demo() {
  static const fs::path folder = fs::path(EXAMPLES_DIR) / "harvest-supper";
  return folder;
}

std::vector<std::string> demo_files() {
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(demo())) {
    if (entry.path().extension() == ".yaml") names.push_back(entry.path().filename().string());
  }
  return names;
}

std::size_t any_place(const std::string& text) {
  return *rc::gen::inRange<std::size_t>(0, text.size() + 1);
}

/// What a slip of the hand or a broken copy may put into a text.
std::string any_piece() {
  return *rc::gen::element<std::string>("\n", " ", ":", ": ", "- ", "[", "]", "{", "}", "&a ", "*a",
                                        "!t ", "\"", "'", "#", "|", "\t", ",", "%", "0", "-1",
                                        "1e9", "999999999999999999", "1/0", "\xC3\xA9", "\xFF",
                                        std::string(1, '\0'), "---\n", "? ", "~", "lb", " to ");
}

std::string broken(std::string text) {
  for (int slips = *rc::gen::inRange(1, 6); slips > 0; --slips) {
    const std::size_t at = any_place(text);
    const auto length = *rc::gen::inRange<std::size_t>(1, 40);
    switch (*rc::gen::inRange(0, 5)) {
      case 0:
        text.insert(at, any_piece());
        break;
      case 1:
        text.erase(at, length);
        break;
      case 2:
        text.replace(at, 1, any_piece());
        break;
      case 3:
        text.insert(any_place(text), text.substr(at, length));
        break;
      default:
        text.resize(at);
    }
  }
  return text;
}

void read_with(const fs::path& folder, const std::string& changed, const std::string& text) {
  write_file(folder / changed, text);
  ProblemList problems;
  const auto book = read_book({(folder / "event.yaml").string()}, problems);
  RC_ASSERT(book.has_value() == !problems.has_errors());
  for (const Problem& problem : problems.all()) {
    RC_ASSERT(!problem.id.empty());
    RC_ASSERT(!problem.place.file.empty());
    RC_ASSERT(!problem.found.empty());
    RC_ASSERT(!problem.expected.empty());
    RC_ASSERT(!problem.remedy.empty());
  }
}

}  // namespace

TEST_CASE("broken files give a book or a problem with all that belongs to it") {
  const TemporaryFolder folder;
  const std::vector<std::string> names = demo_files();
  for (const std::string& name : names) fs::copy(demo() / name, folder.path() / name);
  CHECK(rc::check([&] {
    for (int round = 0; round < 3; ++round) {
      const std::string name = *rc::gen::elementOf(names);
      const std::string sound = read_file(demo() / name);
      read_with(folder.path(), name, broken(sound));
      write_file(folder.path() / name, sound);
    }
  }));
}
