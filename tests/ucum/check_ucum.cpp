// SPDX-License-Identifier: MIT
// Every two units of one dimension that have a UCUM code, against the UCUM reference library
// (@lhncbc/ucum-lhc): check_ucum NODE SCRIPT FOLDER. Ends with 77 where Node or the package is not
// there.

#include <cmath>
#include <cstddef>
#include <cstdlib>
#include <exception>
#include <filesystem>
#include <iostream>
#include <stdexcept>
#include <string>
#include <vector>

#include "platewright/number/nearest_double.hpp"
#include "platewright/quantity/amount.hpp"
#include "platewright/quantity/unit_table.hpp"
#include "support/folder.hpp"
#include "support/process.hpp"

namespace platewright::test {
namespace {

namespace fs = std::filesystem;
constexpr int skipped = 77;

/// The library multiplies doubles along a chain of definitions (a US cup is 8 fluid ounces, which
/// are 2 tablespoons, ... which are cubic inches): a dozen roundings of 1.1e-16 each at most, the
/// same again for the other unit. Two exact sizes differ by no more.
constexpr double roundings_of_doubles = 3e-15;
constexpr double any_difference = 1e-12;

/// A measure of ours beside the UCUM code that a reader might take for it. None of them carries
/// that code in our table; one that came to agree would be a fault.
struct Disagreement {
  const char* unit;
  const char* code;
  const char* reason;
};

const std::vector<Disagreement>& known_disagreements() {
  static const std::vector<Disagreement> table{
      {"metric cup", "[cup_m]", "250 mL by convention; UCUM's is the 240 mL of food labels"},
      {"Australian cup", "[cup_m]", "250 mL; UCUM's is the 240 mL of food labels"},
      {"Japanese cup", "[cup_m]", "200 mL; UCUM's is the 240 mL of food labels"},
      {"Australian tablespoon", "[tbs_m]", "20 mL, four teaspoons; three everywhere else"},
      {"labelling ounce", "[oz_av]", "28 g by 21 CFR 101.9(b)(5)(viii)"},
      {"labelling teaspoon", "[tsp_us]", "5 mL by 21 CFR 101.9(b)(5)(viii)"},
      {"labelling tablespoon", "[tbs_us]", "15 mL by 21 CFR 101.9(b)(5)(viii)"},
      {"labelling fluid ounce", "[foz_us]", "30 mL by 21 CFR 101.9(b)(5)(viii)"},
      {"labelling cup", "[cup_us]", "240 mL by 21 CFR 101.9(b)(5)(viii)"},
      {"UK tablespoon", "[tbs_us]", "15 mL, as spoons are sold in the United Kingdom"},
      {"imperial cup", "[cup_us]", "half an imperial pint"},
      {"heaped bushel", "[bu_us]", "2747.715 cubic inches by NIST Handbook 44, appendix C"},
  };
  return table;
}

/// So many of a code are one of another, by our own table.
struct Question {
  std::string from;
  std::string to;
  Rational ours;
  bool exact = true;
};

std::vector<Question> all_pairs(const UnitTable& table) {
  std::vector<Question> out;
  for (const Unit& from : table.all()) {
    for (const Unit& to : table.all()) {
      const UnitRecord& left = from.record();
      const UnitRecord& right = to.record();
      if (left.ucum.empty() || right.ucum.empty() || !same_measure(from, to)) continue;
      const bool exact = left.exactness != "as printed" && right.exactness != "as printed";
      out.push_back({left.ucum, right.ucum, in_unit(Amount{1, from}, to).number, exact});
    }
  }
  return out;
}

std::vector<Question> namesakes(const UnitTable& table) {
  std::vector<Question> out;
  for (const Disagreement& known : known_disagreements()) {
    const Unit unit = table.find(known.unit, MeasuringSystem::any);
    const bool is_weight = unit.dimension() == UnitDimension::mass;
    out.push_back({known.code, is_weight ? "g" : "mL", unit.size()});
  }
  return out;
}

std::vector<std::string> answers_of(const std::vector<Question>& asked, const std::string& node,
                                    const fs::path& script, const std::string& folder) {
  const TemporaryFolder work;
  std::string lines;
  for (const Question& question : asked) lines += question.from + " " + question.to + "\n";
  write_file(work.path() / "questions", lines);
  const Outcome outcome =
      run({node, script.string(), folder, (work.path() / "questions").string()}, work.path(), 120);
  if (outcome.exit != 0) std::cout << outcome.complained;
  std::vector<std::string> answers = lines_of(outcome.printed);
  if (answers.size() != asked.size()) {
    throw std::runtime_error(std::to_string(asked.size()) + " questions, " +
                             std::to_string(answers.size()) + " answers");
  }
  return answers;
}

/// How far the library is from us, as a share; 1 where it gave no number.
double difference(const Question& question, const std::string& answer) {
  char* end = nullptr;
  const double theirs = std::strtod(answer.c_str(), &end);
  return end == answer.c_str() ? 1 : std::abs(theirs / nearest_double(question.ours) - 1);
}

int check(const std::string& node, const fs::path& script, const std::string& folder) {
  if (node.empty() || !fs::exists(fs::path(folder) / "node_modules/@lhncbc/ucum-lhc")) {
    std::cout << "skipped: Node or the package @lhncbc/ucum-lhc is not installed\n";
    return skipped;
  }
  const UnitTable table;
  std::size_t wrong = 0;
  const auto complain = [&](const Question& question, const std::string& answer) {
    ++wrong;
    std::cout << question.from << " in " << question.to << ": " << as_exact(question.ours)
              << " here, " << answer << " there\n";
  };
  const std::vector<Question> pairs = all_pairs(table);
  const std::vector<std::string> answers = answers_of(pairs, node, script, folder);
  for (std::size_t i = 0; i < pairs.size(); ++i) {
    const double allowed = pairs[i].exact ? roundings_of_doubles : any_difference;
    if (!(difference(pairs[i], answers[i]) <= allowed)) complain(pairs[i], answers[i]);
  }
  const std::vector<Question> others = namesakes(table);
  const std::vector<std::string> sizes = answers_of(others, node, script, folder);
  for (std::size_t i = 0; i < others.size(); ++i) {
    const double apart = difference(others[i], sizes[i]);
    if (apart < any_difference || apart == 1) complain(others[i], sizes[i]);
  }
  std::cout << pairs.size() << " conversions and " << others.size() << " namesakes, " << wrong
            << " wrong\n";
  return wrong == 0 && pairs.size() >= 1000 ? 0 : 1;
}

}  // namespace
}  // namespace platewright::test

int main(int count, char** arguments) {
  if (count != 4) {
    std::cerr << "check_ucum NODE SCRIPT FOLDER\n";
    return 2;
  }
  try {
    return platewright::test::check(arguments[1], arguments[2], arguments[3]);
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 2;
  }
}
