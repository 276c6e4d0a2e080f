// SPDX-License-Identifier: MIT
// Which files make a book, and what happens to those that can't.

#include <algorithm>

#include "support/catch.hpp"
#include "support/small_book.hpp"

using namespace platewright;
using namespace platewright::test;

using Ids = std::vector<std::string>;

TEST_CASE("files named in a book are found beside it, each once") {
  SmallBook files(Files{{"menu/event.yaml",
                         "event: lunch\nwith: [../soup.yaml, ../larder.yaml]\nguests: {adults: 4}\n"
                         "menu: [soup]\n"},
                        {"soup.yaml",
                         "recipe: soup\nwith: larder.yaml\nmakes: 4 portions\n"
                         "ingredients: [{salt: 1 tsp}]\n"},
                        {"larder.yaml", larder_text()}});
  const auto book = files.read({"menu/event.yaml"});
  REQUIRE(book);
  CHECK(book->files.size() == 3);
  CHECK(book->events.size() == 1);
  CHECK(book->recipes.recipes.count("soup") == 1);
}

TEST_CASE("only recipes of files that were named are the main ones") {
  SmallBook files(
      Files{{"soup.yaml",
             "recipe: soup\nwith: [stock.yaml, larder.yaml]\nmakes: 4 portions\n"
             "ingredients: [{stock: 1 qt}]\n"},
            {"stock.yaml", "recipe: stock\nmakes: 1 gal\ningredients: [{salt: 1 tsp}]\n"},
            {"larder.yaml", larder_text()}});
  CHECK(files.read({"soup.yaml"})->main_recipes == Ids{"soup"});
  CHECK(files.read({"stock.yaml", "soup.yaml"})->main_recipes == Ids{"stock", "soup"});
}

TEST_CASE("files that name each other are read once each") {
  SmallBook files(
      Files{{"a.yaml", "recipe: a\nwith: b.yaml\nmakes: 1 qt\ningredients: [{salt: 1 g}]\n"},
            {"b.yaml",
             "recipe: b\nwith: [./a.yaml, larder.yaml]\nmakes: 1 qt\n"
             "ingredients: [{salt: 1 g}]\n"},
            {"larder.yaml", larder_text()}});
  const auto book = files.read({"a.yaml"});
  REQUIRE(book);
  CHECK(book->files.size() == 3);
}

TEST_CASE("a file that is not there is reported where it is named") {
  SmallBook files(Files{{"a.yaml",
                         "recipe: a\nwith: [lost.yaml]\nmakes: 1 qt\n"
                         "ingredients: [{salt: 1 g}]\n"}});
  CHECK_FALSE(files.read({"a.yaml"}));
  REQUIRE(files.ids().front() == "file-not-there");
  CHECK(files.problems.all().front().place.file == files.path("a.yaml"));
  CHECK(files.problems.all().front().place.line == 2);
}

TEST_CASE("a folder in place of a file") {
  SmallBook files(Files{{"folder/a.yaml", "x: 1\n"}});
  CHECK_FALSE(files.read({"folder"}));
  CHECK(files.ids() == Ids{"file-not-readable"});
  CHECK_FALSE(files.read({"nowhere.yaml"}));
  CHECK(files.ids() == Ids{"file-not-there"});
}

TEST_CASE("text that is no book") {
  CHECK(ids_of("") == Ids{"yaml-empty"});
  CHECK(ids_of("# nothing but a remark\n") == Ids{"yaml-empty"});
  CHECK(ids_of("soup\n") == Ids{"not-a-book"});
  CHECK(ids_of("- soup\n") == Ids{"not-a-book"});
  CHECK(ids_of("- recipe: soup\n") == Ids{"wrong-shape"});
  CHECK(ids_of("soup: hot\n") == Ids{"not-a-book"});
  CHECK(ids_of("recipe: [a\n") == Ids{"not-yaml"});
  CHECK(ids_of("recipe: b: c\n") == Ids{"not-yaml"});
}

TEST_CASE("text that is not UTF-8, or can't be seen") {
  CHECK(ids_of("recipe: cr\xE8me\n") == Ids{"file-not-utf8"});
  CHECK(ids_of("recipe: \xC0\xAF\n") == Ids{"file-not-utf8"});
  CHECK(ids_of("recipe: \xED\xA0\x80\n") == Ids{"file-not-utf8"});
  CHECK(ids_of(std::string("recipe: a\0b\n", 12)) == Ids{"file-control-character"});
  CHECK(ids_of("recipe: \x1B[2J\n") == Ids{"file-control-character"});
}

TEST_CASE("a byte order mark and the line ends of another system do no harm") {
  SmallBook files(Files{{"larder.yaml", "\xEF\xBB\xBF" + larder_text()}});
  CHECK(files.read({"larder.yaml"}));
  std::string text = larder_text();
  for (std::size_t at = text.find('\n'); at != std::string::npos; at = text.find('\n', at + 2)) {
    text.insert(at, "\r");
  }
  SmallBook other(Files{{"larder.yaml", text}});
  CHECK(other.read({"larder.yaml"}));
}

TEST_CASE("what YAML can do and a book need not") {
  CHECK(ids_of("recipe: &a soup\n") == Ids{"yaml-alias"});
  CHECK(ids_of("recipe: *a\n") == Ids{"not-yaml"});
  CHECK(ids_of("recipe: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n") == Ids{"yaml-alias"});
  CHECK(ids_of("recipe: &a [*a]\n") == Ids{"yaml-alias"});
  CHECK(ids_of("recipe: !!binary aGVsbG8=\n") == Ids{"yaml-tag"});
  CHECK(ids_of("recipe: a\n[a, b]: c\n").front() == "key-not-text");
  CHECK(ids_of("recipe: a\n---\nrecipe: b\n").front() == "yaml-second-document");
  CHECK(ids_of("recipe: " + std::string(40, '[') + std::string(40, ']') + "\n") ==
        Ids{"yaml-too-deep"});
}

TEST_CASE("bounds on what a file holds") {
  CHECK(ids_of("recipe: " + std::string(70000, 'x') + "\n") == Ids{"file-too-large"});
  std::string many = "recipe:\n";
  for (int i = 0; i < 400001; ++i) many += "- a\n";
  CHECK(ids_of(many) == Ids{"file-too-large"});
  CHECK(ids_of(std::string((8U << 20U) + 1, '#')) == Ids{"file-too-large"});
}

TEST_CASE("a key that stands twice says where it was first") {
  SmallBook files(Files{{"a.yaml", "currency: USD\nlarder: {}\ncurrency: EUR\n"}});
  CHECK_FALSE(files.read({"a.yaml"}));
  REQUIRE(files.ids() == Ids{"key-twice"});
  const Problem& problem = files.problems.all().front();
  CHECK(problem.found == "\"currency\" again, first written on line 1");
  CHECK(problem.place.line == 3);
}

// The reader's library never returns from its own way of loading all documents of this text.
TEST_CASE("a comma alone is answered") {
  CHECK_FALSE(ids_of(",").empty());
  CHECK_FALSE(ids_of("[,]").empty());
}

TEST_CASE("what stands between two values, on lines and in lists has bounds") {
  CHECK(ids_of("recipe: a\nnotes: " + std::string(2U << 20U, '[') + "\n") == Ids{"file-too-large"});
  CHECK(ids_of("recipe: a\n" + std::string(1'000'001, '\n')) == Ids{"file-too-large"});
  std::string many = "recipe: a\nnotes:\n";
  for (int i = 0; i < 5001; ++i) many += "- a\n";
  CHECK(ids_of(many) == Ids{"file-too-large"});
}

TEST_CASE("all files of a run together have a bound") {
  // Each is refused by itself as well: a million letters before its first value.
  const std::string large = "#" + std::string((8U << 20U) - 20, 'a') + "\nlarder: {}\n";
  SmallBook files(
      Files{{"a.yaml", large}, {"b.yaml", large}, {"c.yaml", large}, {"d.yaml", large}});
  CHECK_FALSE(files.read({"a.yaml", "b.yaml", "c.yaml", "d.yaml"}));
  const Ids ids = files.ids();
  CHECK(std::count(ids.begin(), ids.end(), "book-too-large") == 1);
}

TEST_CASE("marks without end on one letter are refused, and those of languages are not") {
  const auto marked = [](int count) {
    std::string out = "recipe: a";
    for (int i = 0; i < count; ++i) out += "\u0301";
    return ids_of(out + "\nmakes: 2 qt\ningredients: []\n");
  };
  CHECK(marked(31).front() == "marks-piled-up");
  CHECK(marked(4).front() != "marks-piled-up");
}

TEST_CASE(
    "a row of the user's own with letters of two scripts is warned of, by each of its names") {
  SmallBook files(Files{
      {"own.yaml",
       "tables: own\nunits:\n  - {unit: l\u0430dle, names: [sc\u043Eop, dipper], is: 4 fl oz, "
       "source: mine}\n"
       "cuts:\n  - cut: g\u043Eat leg\n    rungs:\n"
       "      - {from: purchased, to: cooked, yield: 60 %, source: mine}\n"}});
  files.read({"own.yaml"});
  CHECK(files.ids() == Ids{"names-look-alike", "names-look-alike", "names-look-alike"});
}

TEST_CASE("suppliers and kinds of guests with letters of two scripts are warned of") {
  SmallBook files(
      Files{{"larder.yaml",
             "currency: USD\nlarder:\n  salt:\n"
             "    buy: [{pack: 3 lb, price: 2, from: \u041Exbow}]\n    allergens: none\n"},
            {"soup.yaml",
             "recipe: soup\nwith: larder.yaml\nmakes: 10 portions\n"
             "ingredients: [salt: 1 lb]\n"},
            {"event.yaml",
             "event: lunch\nwith: soup.yaml\nguests: {\u0430dults: 7}\n"
             "menu: [soup: everyone]\n"}});
  CHECK(files.read({"event.yaml"}));
  CHECK(files.ids() == Ids{"names-look-alike", "names-look-alike"});
}

TEST_CASE("files take their measures from the nearest that says them, the first named of two") {
  const auto makes_of = [](const std::string& first, const std::string& second) {
    SmallBook files(Files{{"top.yaml", "recipe: a\nwith: [" + first + ", " + second +
                                           "]\nmakes: 1 cup\ningredients: [water: 1 cup]\n"},
                          {"far.yaml",
                           "recipe: b\nwith: near.yaml\nmakes: 1 cup\n"
                           "ingredients: [water: 1 cup]\n"},
                          {"near.yaml", "currency: USD\nmeasures: metric\nlarder: {}\n"},
                          {"us.yaml",
                           "currency: USD\nmeasures: us\n"
                           "larder:\n  water: {free: yes, allergens: none}\n"}});
    const auto book = files.read({"top.yaml"});
    REQUIRE(book);
    return book->measures;
  };
  CHECK(makes_of("far.yaml", "us.yaml") == MeasuringSystem::us);
  CHECK(makes_of("near.yaml", "us.yaml") == MeasuringSystem::metric);
  CHECK(makes_of("us.yaml", "near.yaml") == MeasuringSystem::us);
}
