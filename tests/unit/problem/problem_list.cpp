// SPDX-License-Identifier: MIT
// All problems of one run.

#include "platewright/problem/problem_list.hpp"

#include "platewright/problem/catalogue/numbers.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

Problem numbered(int number) {
  return problems::number_missing(std::to_string(number));
}

}  // namespace

TEST_CASE("problems stand in the order they were met, each once") {
  ProblemList list;
  list.add(numbered(2));
  list.add(numbered(1));
  list.add(numbered(2));
  REQUIRE(list.all().size() == 2);
  CHECK(list.all()[0].found == "\"2\"");
}

TEST_CASE("one problem on several lines of a file is one, which counts them") {
  ProblemList list;
  list.add(at(numbered(1), Place{"a.yaml", 1, 1, "line 1"}));
  list.add(at(numbered(1), Place{"a.yaml", 2, 1, "line 2"}));
  list.add(at(numbered(1), Place{"a.yaml", 2, 1, "line 2"}));
  list.add(at(numbered(1), Place{"a.yaml", 5, 1, "line 5"}));
  REQUIRE(list.all().size() == 1);
  CHECK(list.all()[0].place.line == 1);
  CHECK(list.all()[0].again == std::vector<int>{2, 5});
}

TEST_CASE("one problem in two files is two problems, as are a warning and an error") {
  ProblemList list;
  list.add(at(numbered(1), Place{"a.yaml", 1, 1, {}}));
  list.add(at(numbered(1), Place{"b.yaml", 1, 1, {}}));
  list.add(as_warning(at(numbered(1), Place{"b.yaml", 1, 1, {}})));
  CHECK(list.all().size() == 3);
}

TEST_CASE("a problem that counts its lines is counted whole in another list") {
  ProblemList first;
  for (int line = 1; line <= 4; ++line) first.add(at(numbered(1), Place{"a.yaml", line, 1, {}}));
  ProblemList second;
  second.add(at(numbered(1), Place{"a.yaml", 9, 1, {}}));
  second.add_all(first);
  REQUIRE(second.all().size() == 1);
  CHECK(second.all()[0].again == std::vector<int>{1, 2, 3, 4});
}

TEST_CASE("a full list counts what it leaves out") {
  ProblemList list(3);
  for (int i = 0; i < 10; ++i) list.add(numbered(i));
  CHECK(list.all().size() == 3);
  CHECK(list.left_out() == 7);
}

TEST_CASE("warnings are no errors") {
  ProblemList list;
  CHECK_FALSE(list.has_errors());
  list.add(as_warning(numbered(1)));
  CHECK_FALSE(list.has_errors());
  list.add(numbered(1));
  CHECK(list.has_errors());
}

TEST_CASE("an error that comes when the list is full of warnings is not lost") {
  ProblemList list(2);
  for (int i = 0; i < 3; ++i) list.add(as_warning(numbered(i)));
  list.add(numbered(9));
  CHECK(list.has_errors());
}

TEST_CASE("work that fails leaves its problem at the place") {
  ProblemList list;
  const Place place{"a.yaml", 3, 5, "line 1"};
  CHECK(list.attempt(place, [] {}));
  CHECK_FALSE(list.attempt(place, [] { throw Failure(numbered(1)); }));
  REQUIRE(list.all().size() == 1);
  CHECK(list.all()[0].place == place);
}

TEST_CASE("what only counts is said to whoever would work out a suggestion") {
  ProblemList list(2);
  bool only_counted = true;
  const auto note = [&] { only_counted = OnlyCounted::now(); };
  list.add(as_warning(numbered(1)));
  list.add(numbered(2));
  list.attempt({}, note);
  CHECK_FALSE(only_counted);  // an error would take the warning's place
  list.add(numbered(3));
  list.attempt({}, note);
  CHECK(only_counted);
  CHECK_FALSE(OnlyCounted::now());
}

TEST_CASE("one slip on thousands of lines is one problem, whose suggestion was looked for") {
  ProblemList list;
  for (int line = 1; line <= 5000; ++line) {
    list.attempt(Place{"a.yaml", line, 1, {}}, [] {
      Problem slip = numbered(1);
      slip.remedy = OnlyCounted::now() ? "" : "did you mean 2?";
      throw Failure(slip);
    });
  }
  REQUIRE(list.all().size() == 1);
  CHECK(list.all().front().remedy == "did you mean 2?");
  CHECK(list.all().front().again.size() == 4999);
}
