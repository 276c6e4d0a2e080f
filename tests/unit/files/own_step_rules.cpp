// SPDX-License-Identifier: MIT
// Rules for steps of another country, in a file of the book.

#include "platewright/recipe/step_notices.hpp"
#include "support/catch.hpp"
#include "support/small_book.hpp"

using namespace platewright;
using namespace platewright::test;

using Ids = std::vector<std::string>;

namespace {

Ids ids_of_rules(const std::string& rows) {
  return ids_of("tables: ours\nstep rules:\n" + rows);
}

}  // namespace

TEST_CASE("rules of one's own stand in place of all that are built in") {
  SmallBook files(Files{
      {"t.yaml",
       "tables: ours\nstep rules:\n"
       "  - {step: hold hot, demand: stands at, at: 63 C, bound: at least, source: our code}\n"
       "  - {step: chill, where: blast chiller, demand: reaches, at: 3 C, bound: at most,\n"
       "     within: 90 min, source: our code, row: annex 2}\n"},
      {"larder.yaml", larder_text()},
      {"r.yaml",
       "recipe: a\nmakes: 4 portions\ningredients: [{lamb: 7.5 lb}]\nsteps:\n"
       "  - {do: Cool., kind: chill, takes: 10 h}\n"
       "  - {do: Keep., kind: hold hot, at: 60 C}\n"
       "  - {do: Keep., kind: hold cold, at: 20 C}\n"}});
  const auto book = files.read({"r.yaml", "larder.yaml", "t.yaml"});
  REQUIRE(book);
  const auto& rules = book->tables.safety.step_rules;
  REQUIRE(rules.size() == 2);
  CHECK(rules[1].where == StepPlace::blast_chiller);
  CHECK(rules[1].within == Duration::of(90, units::minute));
  CHECK(rules[1].row == "annex 2");
  const auto found = step_notices(book->recipes.recipe("a"), book->recipes, book->tables.safety);
  REQUIRE(found.size() == 1);
  CHECK(found[0].number == 2);
  CHECK(found[0].rule.source == "our code");
}

TEST_CASE("a rule that is not whole is a problem") {
  CHECK(ids_of_rules("  - {step: chill, demand: lasts, within: 4 h, source: ours}\n").empty());
  CHECK(ids_of_rules("  - {step: chill, demand: lasts, within: 4 h}\n") ==
        Ids{"row-without-source"});
  CHECK(ids_of_rules("  - {step: chill, demand: lasts, source: ours}\n") == Ids{"key-missing"});
  CHECK(ids_of_rules("  - {step: chill, demand: reaches, source: ours}\n") == Ids{"key-missing"});
  CHECK(ids_of_rules("  - {step: chill, demand: told, source: ours}\n") == Ids{"key-missing"});
  CHECK(ids_of_rules("  - {step: chill, demand: stands at, at: 41 F, source: ours}\n") ==
        Ids{"key-missing"});
  CHECK(ids_of_rules("  - {step: chilling, demand: told, note: x, source: ours}\n") ==
        Ids{"word-unknown"});
}
