// SPDX-License-Identifier: MIT
// What a bare cup means in each file of a book.

#include <algorithm>

#include "support/catch.hpp"
#include "support/small_book.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

std::string recipe(const std::string& name, const std::string& measures) {
  return "recipe: " + name + "\n" + measures + "makes: 1 L\ningredients: [{salt: 1 cup}]\n";
}

const std::string& cup_of(const Book& book, const std::string& name) {
  return book.recipes.recipe(name).lines.front().amount.amount()->low()->unit.name();
}

/// A larder without a price, so that a cup of salt need not be weighed.
const std::string larder = "currency: USD\nlarder:\n  salt: {free: yes, allergens: none}\n";

}  // namespace

TEST_CASE("US customary where nobody says anything") {
  SmallBook files(Files{{"a.yaml", recipe("a", "")}, {"larder.yaml", larder}});
  const auto book = files.read({"a.yaml", "larder.yaml"});
  REQUIRE(book);
  CHECK(book->measures == MeasuringSystem::us);
  CHECK(cup_of(*book, "a") == "US cup");
}

TEST_CASE("a file keeps its own measures, or those of a file that it names, in any company") {
  SmallBook files(Files{{"a.yaml", recipe("a", "")},
                        {"b.yaml", recipe("b", "measures: imperial\n")},
                        {"c.yaml", recipe("c", "with: [larder.yaml]\n")},
                        {"d.yaml", recipe("d", "with: [e.yaml]\n")},
                        {"e.yaml", recipe("e", "with: [larder.yaml]\n")},
                        {"larder.yaml", "measures: australian\n" + larder}});
  std::vector<std::string> names{"a.yaml", "b.yaml", "c.yaml", "d.yaml", "larder.yaml"};
  std::sort(names.begin(), names.end());
  do {
    const auto book = files.read(names);
    REQUIRE(book);
    CHECK(cup_of(*book, "a") == "US cup");
    CHECK(cup_of(*book, "b") == "imperial cup");
    CHECK(cup_of(*book, "c") == "Australian cup");
    CHECK(cup_of(*book, "d") == "Australian cup");
    CHECK(cup_of(*book, "e") == "Australian cup");
  } while (std::next_permutation(names.begin(), names.end()));
}

TEST_CASE("the first file's measures are the book's") {
  SmallBook files(Files{{"b.yaml", recipe("b", "measures: imperial\n")},
                        {"larder.yaml", "measures: australian\n" + larder}});
  CHECK(files.read({"larder.yaml", "b.yaml"})->measures == MeasuringSystem::australian);
  CHECK(files.read({"b.yaml", "larder.yaml"})->measures == MeasuringSystem::imperial);
}

TEST_CASE("measures that are not known") {
  SmallBook files(Files{{"a.yaml", "measures: american\n" + larder}});
  CHECK_FALSE(files.read({"a.yaml"}));
  CHECK(files.ids() == std::vector<std::string>{"measures-unknown"});
}
