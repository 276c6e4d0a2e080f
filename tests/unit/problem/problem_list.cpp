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

TEST_CASE("one problem at two places is two problems") {
  ProblemList list;
  list.add(at(numbered(1), Place{"a.yaml", 1, 1, {}}));
  list.add(at(numbered(1), Place{"a.yaml", 2, 1, {}}));
  CHECK(list.all().size() == 2);
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
