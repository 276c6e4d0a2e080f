// SPDX-License-Identifier: MIT
// What a message says to type mends the file.

#include "yaml/line_slips.hpp"

#include "support/catch.hpp"
#include "yaml/read_yaml.hpp"

using namespace platewright;

namespace {

const std::string top = "recipe: a soup\nwith: [larder.yaml]\ningredients:\n  - beef: 9 lb\n";

/// The only problem of a text.
Problem problem_of_text(const std::string& text) {
  ProblemList problems;
  yaml::read_yaml(text, "soup.yaml", problems);
  REQUIRE(problems.all().size() == 1);
  return problems.all().front();
}

/// The line between the first backticks of a remedy.
std::string line_to_type(const Problem& problem) {
  const std::size_t first = problem.remedy.find('`');
  REQUIRE(first != std::string::npos);
  return problem.remedy.substr(first + 1, problem.remedy.find('`', first + 1) - first - 1);
}

/// The text with the problem's line as its remedy says; a remedy may leave out how far in it
/// stands.
std::string mended(const std::string& text, const Problem& problem) {
  std::size_t start = 0;
  for (int line = 1; line < problem.place.line; ++line) start = text.find('\n', start) + 1;
  const std::size_t end = text.find('\n', start);
  std::string line = line_to_type(problem);
  if (line.front() != ' ') {
    const std::string old = text.substr(start, end - start);
    line = old.substr(0, std::min(old.find_first_not_of(' '), old.size())) + line;
  }
  return text.substr(0, start) + line + text.substr(end);
}

bool is_read(const std::string& text) {
  ProblemList problems;
  return yaml::read_yaml(text, "soup.yaml", problems).has_value() && problems.all().empty();
}

}  // namespace

TEST_CASE("the line that a message says to type mends the file") {
  const std::string slip =
      GENERATE(as<std::string>{}, "\t- salt: 1 tbsp\n", "  - salt: \"1 tbsp\n",
               "  - salt: '1 tbsp\n", "   - salt: 1 tbsp\n", " - salt: 1 tbsp\n",
               "  salt: 1 tbsp\n", "steps:\n  - do: Melt: slowly.\n", "notes: Serve it: hot.\n",
               "notes: 'Don't burn it'\n", "notes: \"Rub\" all over\n", "notes: @home\n",
               "notes: * hot\n", "notes: %5 more\n", "notes: [hot, cold\n",
               "steps:\n  - {do: Stir, takes: 5 min\n", "steps:\n  - {do: Stir, uses: [beef}\n",
               "steps:\n  - Stir.\n    uses: [beef]\n", "makes 4 qt\nrest: 5 min\n");
  const std::string text = top + slip + "tested on: 1 roast of 9 lb\n";
  const Problem problem = problem_of_text(text);
  INFO(slip << problem.found << "\n" << problem.remedy);
  CHECK(problem.place.line > 4);
  CHECK(is_read(mended(text, problem)));
}

TEST_CASE("a slip is reported where it stands, not where the parser gave up") {
  const Problem open = problem_of_text(top + "notes: [hot, cold\nrest: 5 min\n");
  CHECK(open.place.line == 5);
  CHECK(open.place.column == 8);
  const Problem quote = problem_of_text(top + "  - salt: \"1 tbsp\n  - \"butter\": 1 oz\n");
  CHECK(quote.id == "quote-left-open");
  CHECK(quote.place.line == 5);
  CHECK(quote.place.column == 11);
  const Problem colon = problem_of_text("recipe a soup\nmakes: 4 qt\n");
  CHECK(colon.place.line == 1);
}

TEST_CASE("what is meant to go on over several lines is no slip") {
  CHECK(is_read(top + "notes: \"Serve hot: it\n  is better so\"\n"));
  CHECK(is_read(top + "notes: |\n  \"Serve\n  - [hot\n"));
  CHECK(is_read(top + "notes: [\n  hot, \"cold, too\",\n]\n"));
  CHECK(is_read(top + "notes: the cook's \"best\" [so far\n"));
  CHECK(is_read(top + "notes: ['it''s hot', 'so']  # don't\n"));
}

TEST_CASE("text that is no known slip is left to the parser's words") {
  CHECK(!yaml::slip_before("a: b\n", "soup.yaml", 1));
  CHECK(!yaml::slip_before("", "soup.yaml", 1));
  CHECK(!yaml::slip_before("a: b\n", "soup.yaml", 99));
}
