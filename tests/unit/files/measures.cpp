// What a bare cup means in each file of a book.

#include "support/catch.hpp"
#include "support/small_book.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

std::string recipe(const std::string& name, const std::string& measures) {
  return "recipe: " + name + "\n" + measures + "makes: 1 L\ningredients: [{salt: 1 cup}]\n";
}

const std::string& cup_of(const Book& book, const std::string& name) {
  return book.recipes.recipe(name).lines.front().amount.low->unit.name();
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

TEST_CASE("the first file that declares measures speaks for those that do not") {
  SmallBook files(Files{{"a.yaml", recipe("a", "")},
                        {"b.yaml", recipe("b", "measures: imperial\n")},
                        {"larder.yaml", "measures: australian\n" + larder}});
  const auto book = files.read({"a.yaml", "larder.yaml", "b.yaml"});
  REQUIRE(book);
  CHECK(book->measures == MeasuringSystem::australian);
  CHECK(cup_of(*book, "a") == "Australian cup");
  CHECK(cup_of(*book, "b") == "imperial cup");
}

TEST_CASE("measures that are not known") {
  SmallBook files(Files{{"a.yaml", "measures: american\n" + larder}});
  CHECK_FALSE(files.read({"a.yaml"}));
  CHECK(files.ids() == std::vector<std::string>{"measures-unknown"});
}
