// SPDX-License-Identifier: MIT
// Every figure that is built in says where it comes from: a publication, and neither a web domain,
// nor memory, nor a habit of the trade.

#include <string>

#include "platewright/book/tables.hpp"
#include "support/catch.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::the_tables;

namespace {

bool names_a_publication(const std::string& source) {
  if (source.empty()) return false;
  for (const char* word : {"www.", "http", ".com", ".org", ".net", "from memory", "no source"}) {
    if (source.find(word) != std::string::npos) return false;
  }
  return true;
}

}  // namespace

TEST_CASE("a domain, memory and habit are no publications") {
  CHECK(names_a_publication("USDA SR28 (2016), weights"));
  CHECK_FALSE(names_a_publication("example.com, measures"));
  CHECK_FALSE(names_a_publication("from memory"));
  CHECK_FALSE(names_a_publication("sold like butter: common practice, no source"));
  CHECK_FALSE(names_a_publication(""));
}

TEST_CASE("yields and weights name their publications") {
  for (const Cut& cut : the_tables().yields.cuts()) {
    INFO(cut.name);
    for (const Rung& rung : cut.ladder.rungs()) CHECK(names_a_publication(rung.source.text));
  }
  for (const Produce& row : the_tables().yields.produce()) {
    INFO(row.name);
    CHECK(names_a_publication(row.source.text));
  }
  for (const Grain& row : the_tables().yields.grains()) {
    INFO(row.name);
    CHECK(names_a_publication(row.source.text));
    CHECK(row.source.row.find("NDB ") != std::string::npos);
  }
  for (const auto& [plain, weights] : the_tables().weights.all()) {
    INFO(plain);
    for (const MeasureWeight& row : weights.rows) CHECK(names_a_publication(row.source));
  }
}

TEST_CASE("units, temperatures, limits and times name their publications") {
  for (const Unit& unit : the_tables().units.all()) {
    INFO(unit.record().name);
    CHECK(names_a_publication(unit.record().source));
  }
  for (const MinimumTemperature& row : the_tables().safety.minimums) {
    INFO(row.product);
    CHECK(names_a_publication(row.source));
  }
  for (const SafetyLimit& row : the_tables().safety.limits) {
    INFO(row.limit);
    CHECK(names_a_publication(row.source));
  }
  for (const PublishedTime& row : the_tables().times) {
    INFO(row.of);
    CHECK(names_a_publication(row.source));
  }
}

// US National Bureau of Standards, Special Publication 430 (1975): a metric cup of 250 mL, a metric
// tablespoon of 15 mL and a metric teaspoon of 5 mL.
TEST_CASE("metric spoons are those of the publication that names them") {
  const auto millilitres = [](const char* unit) {
    return the_tables().units.find(unit, MeasuringSystem::metric).size();
  };
  CHECK(millilitres("metric cup") == 250);
  CHECK(millilitres("metric tablespoon") == 15);
  CHECK(millilitres("metric teaspoon") == 5);
}

// USDA SR28 (2016), NDB 18364: a medium tortilla is the one of about 6 in across, at 30 g.
TEST_CASE("a size is the one that the source prints, or the row says that it is named here") {
  int named_here = 0;
  for (const auto& [plain, weights] : the_tables().weights.all()) {
    for (const MeasureWeight& row : weights.rows) {
      if (row.row.find("the size is named here") != std::string::npos) ++named_here;
      if (plain == "flour tortilla" && row.size == "medium") {
        CHECK(row.weighs == Mass::of(30, units::gram));
      }
    }
  }
  CHECK(named_here >= 50);
}
