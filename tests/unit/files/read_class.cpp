// SPDX-License-Identifier: MIT
#include "platewright/files/read_class.hpp"

#include "support/catch.hpp"
#include "support/folder.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

constexpr const char* sheet_with_answer =
    "worksheet: rib\ntrim test:\n  purchased: 12 lb at 10 per lb\n  usable: {rib: 9 lb}\n"
    "  waste: {bone: 3 lb}\n  answers: {yield: 75 %}\n";

}  // namespace

TEST_CASE("a folder means its worksheets in the order of their names, each once") {
  const TemporaryFolder folder;
  for (const char* name : {"ben.yml", "ana.yaml", ".hidden.yaml", "read me.txt", "old/eve.yaml"}) {
    write_file(folder.path() / name, sheet_with_answer);
  }
  ProblemList problems;
  const std::string here = folder.path().string();
  const auto files = worksheet_files({here, here + "/ana.yaml"}, problems);
  CHECK(files == std::vector<std::string>{here + "/ana.yaml", here + "/ben.yml"});
  CHECK(problems.all().empty());
  CHECK(name_a_class({here}));
  CHECK(name_a_class({"a.yaml", "b.yaml"}));
  CHECK_FALSE(name_a_class({here + "/ana.yaml"}));
}

TEST_CASE("students whose files are called alike have the whole path for a name") {
  const TemporaryFolder folder;
  for (const char* name : {"one/ana.yaml", "two/ana.yaml", "two/ben.yaml"}) {
    write_file(folder.path() / name, sheet_with_answer);
  }
  ProblemList problems;
  const std::string one = (folder.path() / "one").string();
  const std::string two = (folder.path() / "two").string();
  const auto students = read_class({one, two}, Book(), problems);
  CHECK(problems.all().empty());
  REQUIRE(students.size() == 3);
  CHECK(students[0].student == one + "/ana.yaml");
  CHECK(students[1].student == two + "/ana.yaml");
  CHECK(students[2].student == "ben");
  CHECK(students[2].sheet.trim_answers.front().verdict == Verdict::right);
}

TEST_CASE("a class past the bound is refused before a file is read") {
  std::vector<std::string> names;
  for (int i = 0; i < 1001; ++i) names.push_back("student " + std::to_string(i) + ".yaml");
  ProblemList problems;
  CHECK(read_class(names, Book(), problems).empty());
  REQUIRE(problems.all().size() == 1);
  CHECK(problems.all().front().id == "class-too-large");
  names.pop_back();
  ProblemList none;
  CHECK(worksheet_files(names, none).size() == 1000);
  CHECK(none.all().empty());
}

TEST_CASE("a class of more bytes than a run may read is refused") {
  const TemporaryFolder folder;
  for (const char* name : {"ana.yaml", "ben.yaml", "carl.yaml"}) {
    write_file(folder.path() / name, sheet_with_answer);
    std::filesystem::resize_file(folder.path() / name, 6U << 20U);
  }
  ProblemList problems;
  CHECK(read_class({folder.path().string()}, Book(), problems).empty());
  REQUIRE(problems.all().size() == 1);
  CHECK(problems.all().front().id == "book-too-large");
}
