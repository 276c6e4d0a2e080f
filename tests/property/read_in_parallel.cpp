// SPDX-License-Identifier: MIT
// However many threads read a book, it is the same book, and the same is said of it in the same
// order.

#include <rapidcheck.h>

#include <algorithm>

#include "files/in_parallel.hpp"
#include "files/reading.hpp"
#include "support/catch.hpp"
#include "support/small_book.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// A recipe as it should be, more often than not; else with something to say of it.
std::string recipe_text(int number, int recipes) {
  const auto name = [](int of) { return "dish " + std::to_string(of); };
  const std::string good =
      "recipe: " + name(number) + "\nwith: [larder.yaml]\nmakes: 4 portions of 6 oz, whole dish\n";
  const std::string lines = "ingredients:\n  - salt: 2 oz\n";
  switch (*rc::gen::inRange(0, 20)) {
    case 0:
      return good + lines + "  - slat: 1 oz\n";
    case 1:
      return good + lines + "  - salt: 1 onz\n  - salt: 2 onz\n";
    case 2:
      return good + lines + "  - salt 3 oz\n";
    case 3:
      return good + lines + "oven: [900 F for 5 min]\n";
    case 4:
      return good + lines + "colour: green\n";
    case 5:
      return "recipe: " + name(*rc::gen::inRange(0, recipes)) + "\n" + lines;
    case 6:
      return good + lines + "\t- salt: 1 oz\n";
    case 7:
      return "receipt: " + name(number) + "\n";
    case 8:
      return good + lines + "  - \xFF: 1 oz\n";
    case 9:
      return good + "with: [another.yaml]\n" + lines;
    case 10:
      return "recipe: " + name(number) + "\nwith: [larder.yaml, missing.yaml]\n" + lines;
    case 11:
      return good + lines + "  - salt: 2 #10 cans\n";
    case 12:
      return good + lines + "  - " + name(*rc::gen::inRange(0, recipes)) + ": 3 oz\n";
    default:
      return good + lines;
  }
}

Files random_book(int recipes) {
  Files out{{"larder.yaml",
             "currency: USD\nlarder:\n  salt: {buy: [{pack: 3 lb, price: 2.00, from: the "
             "market}], allergens: none}\n"}};
  const int chapters = *rc::gen::inRange(1, 4);
  std::string of_chapters;
  for (int chapter = 0; chapter < chapters; ++chapter) {
    const std::string file = "chapter" + std::to_string(chapter) + ".yaml";
    std::string names;
    for (int i = chapter; i < recipes; i += chapters) names += "d" + std::to_string(i) + ".yaml, ";
    out.push_back({file, "currency: USD\nwith: [" + names + "larder.yaml]\nlarder: {}\n"});
    of_chapters += (chapter > 0 ? ", " : "") + file;
  }
  for (int i = 0; i < recipes; ++i) {
    out.push_back({"d" + std::to_string(i) + ".yaml", recipe_text(i, recipes)});
  }
  out.push_back({"event.yaml", "event: a supper\nwith: [" + of_chapters +
                                   "]\nat: 2027-10-09 18:30 America/Chicago\nguests: {adults: "
                                   "84}\nmenu: [dish 0]\n"});
  return out;
}

/// All that tells one book from another here.
std::vector<std::string> words_of(const Book& book) {
  std::vector<std::string> out = book.files;
  for (const auto& [name, recipe] : book.recipes.recipes) {
    out.push_back(name + " of " + recipe.place.file);
    for (const RecipeLine& line : recipe.lines) {
      const LineAmount* amount = line.amount.amount();
      out.push_back(line.name + ": " + (amount->low() ? amount_text(*amount->low()) : "") + " " +
                    line.place.file + " " + line.place.path);
    }
  }
  return out;
}

}  // namespace

TEST_CASE("a book is the same, and so is what is said of it, whoever reads it") {
  CHECK(rc::check([] {
    SmallBook files(random_book(*rc::gen::inRange(1, 25)));
    ProblemList alone;
    ProblemList together;
    std::vector<std::string> by_one;
    std::vector<std::string> by_many;
    {
      const reading::Threads one(1);
      by_one = words_of(reading::read_what_can_be({files.path("event.yaml")}, alone));
    }
    {
      const reading::Threads many(*rc::gen::inRange<std::size_t>(2, 6));
      by_many = words_of(reading::read_what_can_be({files.path("event.yaml")}, together));
    }
    RC_CLASSIFY(!alone.all().empty(), "with something to say");
    RC_ASSERT(by_one == by_many);
    RC_ASSERT(alone.all() == together.all());
    RC_ASSERT(alone.left_out() == together.left_out());
  }));
}
