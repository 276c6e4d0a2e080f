// SPDX-License-Identifier: MIT
// Units by the names that people write.

#include <cctype>

#include "platewright/quantity/unit_table.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::problem_of;
using platewright::test::unit_table;

namespace {

std::string named(std::string_view name, MeasuringSystem system = MeasuringSystem::us) {
  const auto unit = unit_table().look_up(name, system);
  return unit ? unit->name() : "";
}

std::string in_capitals(std::string text) {
  for (char& c : text) c = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
  return text;
}

}  // namespace

TEST_CASE("every unit is found by each of its names, in capitals and with a full stop") {
  for (const Unit& unit : unit_table().all()) {
    const UnitRecord& record = unit.record();
    std::vector<std::string> names = record.names;
    names.push_back(record.name);
    for (const std::string& name : names) {
      INFO(name);
      CHECK(named(name, record.system) == record.name);
      CHECK(named(name + ".", record.system) == record.name);
      CHECK(named(in_capitals(name), record.system) == record.name);
    }
  }
}

TEST_CASE("the full stops of abbreviations do not count") {
  CHECK(named("fl. oz.") == named("fl oz"));
  CHECK(named("FL.  OZ") == named("fl oz"));
  CHECK(read_system("U.S.") == MeasuringSystem::us);
}

TEST_CASE("every unit is found by its symbol and its plural") {
  for (const Unit& unit : unit_table().all()) {
    const UnitRecord& record = unit.record();
    INFO(record.name);
    CHECK(named(record.symbol, record.system) == record.name);
    if (!record.plural.empty()) CHECK(named(record.plural, record.system) == record.name);
  }
}

TEST_CASE("every unit is found by its bare names in its own system") {
  for (const Unit& unit : unit_table().all()) {
    const UnitRecord& record = unit.record();
    for (const std::string& name : record.bare) {
      INFO(name << " in " << system_name(record.system));
      CHECK(named(name, record.system) == record.name);
    }
  }
}

TEST_CASE("every unit is found by its UCUM code") {
  for (const Unit& unit : unit_table().all()) {
    const UnitRecord& record = unit.record();
    if (record.ucum.empty()) continue;
    INFO(record.name << ": " << record.ucum);
    const auto found = unit_table().look_up(record.ucum, record.system);
    REQUIRE(found);
    CHECK(found->size() == record.size);
    CHECK(found->dimension() == record.dimension);
  }
}

TEST_CASE("a bare name is the unit of the book's measuring system") {
  CHECK(named("cup", MeasuringSystem::us) == "US cup");
  CHECK(named("cup", MeasuringSystem::imperial) == "imperial cup");
  CHECK(named("cup", MeasuringSystem::metric) == "metric cup");
  CHECK(named("cup", MeasuringSystem::australian) == "Australian cup");
  CHECK(named("cup", MeasuringSystem::japanese) == "Japanese cup");
  CHECK(named("tbsp", MeasuringSystem::australian) == "Australian tablespoon");
  CHECK(named("pints", MeasuringSystem::imperial) == "imperial pint");
  CHECK(named("Gallon", MeasuringSystem::us) == "US gallon");
  CHECK(named("fl. oz.", MeasuringSystem::imperial) == "imperial fluid ounce");
}

TEST_CASE("a full name is the same unit in every system") {
  for (const MeasuringSystem system :
       {MeasuringSystem::us, MeasuringSystem::imperial, MeasuringSystem::metric,
        MeasuringSystem::australian, MeasuringSystem::japanese}) {
    CHECK(named("US cup", system) == "US cup");
    CHECK(named("imperial pint", system) == "imperial pint");
    CHECK(named("oz", system) == "ounce");
  }
}

TEST_CASE("an ounce is weight, a fluid ounce is capacity") {
  CHECK(unit_table().find("oz", MeasuringSystem::us).dimension() == UnitDimension::mass);
  CHECK(unit_table().find("fl oz", MeasuringSystem::us).dimension() == UnitDimension::volume);
}

TEST_CASE("a bare name that the system does not have asks which is meant") {
  const Problem problem = problem_of([] { unit_table().find("pint", MeasuringSystem::metric); });
  CHECK(problem.id == "unit-ambiguous");
  CHECK(problem.remedy.find("US pint") != std::string::npos);
  CHECK(problem.remedy.find("imperial pint") != std::string::npos);
}

TEST_CASE("T and t are refused: one cook's tablespoon is another's teaspoon") {
  for (const std::string_view name : {"T", "t", "T.", "t."}) {
    CHECK(problem_of([&] { unit_table().find(name, MeasuringSystem::us); }).id == "unit-ambiguous");
  }
}

TEST_CASE("an unknown unit names the nearest") {
  const Problem problem = problem_of([] { unit_table().find("tabelspoon", MeasuringSystem::us); });
  CHECK(problem.id == "unit-unknown");
  CHECK(problem.remedy.find("tablespoon") != std::string::npos);
}

TEST_CASE("a unit of one's own wins, over a bare name too") {
  UnitTable own;
  UnitRecord mug;
  mug.name = "mug";
  mug.names = {"cup", "quart"};
  mug.dimension = UnitDimension::volume;
  mug.size = 350;
  own.add(mug);
  CHECK(own.find("cup", MeasuringSystem::us).size() == 350);
  CHECK(own.find("quart", MeasuringSystem::imperial).size() == 350);
  CHECK(own.find("US cup", MeasuringSystem::us).name() == "US cup");
  CHECK(named("cup") == "US cup");
}

TEST_CASE("measuring systems by name") {
  CHECK(read_system("us") == MeasuringSystem::us);
  CHECK(read_system("Metric") == MeasuringSystem::metric);
  CHECK(problem_of([] { read_system("american"); }).id == "measures-unknown");
  CHECK(problem_of([] { read_system("labelling"); }).id == "measures-unknown");
}
