// SPDX-License-Identifier: MIT
// The kitchen that a book declares.

#include "platewright/book/kitchen_for.hpp"
#include "platewright/kitchen/measure_text.hpp"
#include "platewright/quantity/typed_text.hpp"
#include "support/catch.hpp"
#include "support/small_book.hpp"

using namespace platewright;
using test::Files;
using test::ids_of;
using test::SmallBook;

namespace {

using Ids = std::vector<std::string>;

std::string larder_with(const std::string& kitchen) {
  return test::larder_text() + "kitchen:\n" + kitchen;
}

std::string measured(const Book& book, const char* volume, MeasuringSystem system) {
  const Kitchen kitchen = kitchen_for(book, system);
  return kitchen_measure_text(
      measured_in(read<Volume>(volume, book.tables.units, system), kitchen));
}

}  // namespace

TEST_CASE("a book's kitchen is followed") {
  SmallBook files(Files{{"larder.yaml", larder_with("  owns: 1 tsp, 1 tbsp, 1/4 cup, 1 cup\n"
                                                    "  scale: [1 g, 5 g from 1 kg]\n"
                                                    "  tolerance: 5 %\n"
                                                    "  rounding: fewest measures\n")}});
  const auto book = files.read({"larder.yaml"});
  REQUIRE(book);
  REQUIRE(book->kitchen);
  CHECK(book->kitchen->tolerance == fraction(1, 20));
  CHECK(book->kitchen->scale.steps.steps.size() == 2);
  CHECK(measured(*book, "1/3 cup", MeasuringSystem::us) == "1/4 cup + 1 tbsp + 1 tsp");
  // Another system's measures are the usual ones, within the book's tolerance.
  CHECK(kitchen_for(*book, MeasuringSystem::metric).tolerance == fraction(1, 20));
  CHECK(kitchen_for(*book, MeasuringSystem::metric).measures ==
        kitchen_of(MeasuringSystem::metric, book->tables.units));
}

TEST_CASE("a book without a kitchen has the usual one of its measures") {
  SmallBook files(Files{{"larder.yaml", "measures: metric\n" + test::larder_text()}});
  const auto book = files.read({"larder.yaml"});
  REQUIRE(book);
  CHECK_FALSE(book->kitchen);
  CHECK(kitchen_for(*book, book->measures) ==
        usual_kitchen(MeasuringSystem::metric, book->tables.units));
}

TEST_CASE("what is not rounded in one system is not rounded in the other") {
  SmallBook files(Files{{"larder.yaml", larder_with("  rounding: exact\n")}});
  const auto book = files.read({"larder.yaml"});
  REQUIRE(book);
  CHECK(measured(*book, "1/3 L", MeasuringSystem::metric) == "1000/3 mL");
}

TEST_CASE("a unit of the book's own measures its kitchen") {
  SmallBook files(
      Files{{"larder.yaml", "with: ours.yaml\n" + larder_with("  owns: [1 mug, 1 tbsp]\n")},
            {"ours.yaml", "tables: ours\nunits:\n  - {unit: mug, is: 350 mL, source: ours}\n"}});
  const auto book = files.read({"larder.yaml"});
  REQUIRE(book);
  CHECK(measured(*book, "700 mL", MeasuringSystem::us) == "2 mug");
}

TEST_CASE("each slip of a kitchen is reported where it stands") {
  CHECK(ids_of(larder_with("  owns: [1 cup by, 1 tsp]\n  scale: 0 g\n  tolerance: 90 %\n"
                           "  rounding: armed card\n  own: 1 cup\n")) ==
        Ids{"amount-malformed", "number-not-positive", "share-out-of-range", "rounding-unknown",
            "key-unknown"});
  CHECK(ids_of(larder_with("  owns: 1-2 cups\n")) == Ids{"kitchen-entry-malformed"});
  CHECK(ids_of("measures: metric\n" + larder_with("  rounding: army card\n")) ==
        Ids{"rounding-other-system"});
  CHECK(ids_of(larder_with("  - army card\n")) == Ids{"wrong-shape"});
}
