// SPDX-License-Identifier: MIT
// Every unit that has an expression in GNU units, against the program of that name.

#include <cmath>
#include <cstdlib>
#include <map>
#include <string>
#include <vector>

#include "platewright/number/nearest_double.hpp"
#include "platewright/number/write.hpp"
#include "platewright/quantity/unit_table.hpp"
#include "support/catch.hpp"
#include "support/folder.hpp"
#include "support/process.hpp"
#include "support/tables.hpp"
#include "yaml/read_yaml.hpp"

using namespace platewright;
using platewright::test::unit_table;

namespace {

/// One question to GNU units: how many `canonical` units is `expression`?
struct Question {
  std::string unit;
  std::string expression;
  std::string canonical;
};

bool agrees(const Rational& ours, const std::string& theirs) {
  return std::abs(std::strtod(theirs.c_str(), nullptr) / nearest_double(ours) - 1) < 1e-12;
}

/// Rows without an expression, and why. A row that is neither here nor asked is a fault.
const std::map<std::string, std::string>& not_asked() {
  static const std::map<std::string, std::string> reasons{
      {"labelling ounce", "28 g in 21 CFR 101.9(b)(5)(viii), unknown to GNU units"},
      {"labelling teaspoon", "5 mL in 21 CFR 101.9(b)(5)(viii), unknown to GNU units"},
      {"labelling fluid ounce", "30 mL in 21 CFR 101.9(b)(5)(viii), unknown to GNU units"},
      {"Japanese teaspoon", "5 mL, unknown to GNU units"},
      {"Japanese tablespoon", "15 mL, unknown to GNU units"},
      {"heaped bushel", "2747.715 cubic inches in NIST Handbook 44; GNU units takes 1.278 bushels"},
  };
  return reasons;
}

/// Pieces count one of their kind; scoops and ladles are a printed share of a cup or a gallon (see
/// units_published.cpp), and GNU units knows neither.
bool is_unknown_to_gnu(const std::string& unit, const std::string& dimension,
                       const std::string& size) {
  if (dimension == "pieces") return size == "1";
  return unit.find(" scoop") != std::string::npos || unit.find("ladle of ") == 0;
}

std::string canonical_in_gnu(const std::string& dimension) {
  if (dimension == "mass") return "gram";
  if (dimension == "volume") return "ml";
  if (dimension == "length") return "cm";
  if (dimension == "area") return "cm^2";
  if (dimension == "time") return "second";
  return "1";
}

std::string text_of(const yaml::Node& row, const std::string& key) {
  for (const auto& [name, value] : row.entries) {
    if (name.text == key) return value.text;
  }
  return {};
}

std::vector<yaml::Node> rows() {
  ProblemList problems;
  const std::string file = std::string(UNITS_DATA_DIR) + "/units.yaml";
  const auto root = yaml::read_yaml(test::read_file(file), file, problems);
  REQUIRE(problems.all().empty());
  return root->entries.front().second.items;
}

std::vector<Question> questions() {
  std::vector<Question> out;
  for (const yaml::Node& row : rows()) {
    const std::string expression = text_of(row, "gnu");
    if (expression.empty()) continue;
    out.push_back({text_of(row, "unit"), expression, canonical_in_gnu(text_of(row, "dimension"))});
  }
  return out;
}

/// All questions in one run: two lines for each go in, one number comes out.
std::vector<std::string> answers_of(const std::vector<Question>& asked) {
  const test::TemporaryFolder folder;
  std::string lines;
  for (const Question& question : asked) {
    lines += question.expression + "\n" + question.canonical + "\n";
  }
  test::write_file(folder.path() / "questions", lines);
  const std::string command = std::string("LC_ALL=C UNITS_ENGLISH=US ") + GNU_UNITS +
                              " --terse --quiet --output-format %.17g < questions";
  return test::lines_of(test::run({"sh", "-c", command}, folder.path()).printed);
}

}  // namespace

TEST_CASE("every unit has the size that GNU units gives it") {
  if (std::string(GNU_UNITS).empty()) {
    WARN("skipped: the program `units` (GNU units) is not installed");
    return;
  }
  const std::vector<Question> asked = questions();
  REQUIRE(asked.size() > 80);
  const std::vector<std::string> answers = answers_of(asked);
  REQUIRE(answers.size() == asked.size());
  for (std::size_t i = 0; i < asked.size(); ++i) {
    const Rational size = unit_table().find(asked[i].unit, MeasuringSystem::any).size();
    INFO(asked[i].unit << ": " << as_exact(size) << " here, " << answers[i] << " there");
    CHECK(agrees(size, answers[i]));
  }
}

TEST_CASE("any two units of one dimension convert as GNU units converts them") {
  if (std::string(GNU_UNITS).empty()) {
    WARN("skipped: the program `units` (GNU units) is not installed");
    return;
  }
  std::vector<Question> pairs;
  std::vector<Rational> ours;
  const std::vector<Question> all = questions();
  for (const Question& from : all) {
    for (const Question& to : all) {
      if (from.canonical != to.canonical) continue;
      pairs.push_back({from.unit + " in " + to.unit, from.expression, to.expression});
      ours.push_back(unit_table().find(from.unit, MeasuringSystem::any).size() /
                     unit_table().find(to.unit, MeasuringSystem::any).size());
    }
  }
  REQUIRE(pairs.size() > 3000);
  const std::vector<std::string> answers = answers_of(pairs);
  REQUIRE(answers.size() == pairs.size());
  for (std::size_t i = 0; i < pairs.size(); ++i) {
    if (agrees(ours[i], answers[i])) continue;
    FAIL_CHECK(pairs[i].unit << ": " << as_exact(ours[i]) << " here, " << answers[i] << " there");
  }
}

TEST_CASE("a measure that GNU units is not asked for says why") {
  for (const yaml::Node& row : rows()) {
    const std::string unit = text_of(row, "unit");
    if (text_of(row, "gnu").empty() &&
        is_unknown_to_gnu(unit, text_of(row, "dimension"), text_of(row, "is"))) {
      continue;
    }
    INFO(unit);
    CHECK(not_asked().count(unit) == (text_of(row, "gnu").empty() ? 1 : 0));
  }
}

// A class sheet of 2012 (trade calculations) prints "US gallon = 3.6 L"; NIST SP 811, appendix B.8:
// 3.785 411 784 L.
TEST_CASE("a gallon that is printed wrong would be noticed") {
  const Rational gallon = UnitTable().find("US gallon", MeasuringSystem::any).size();
  CHECK(as_exact(gallon) == "3785.411784");
  CHECK(gallon != 3600);
}
