// SPDX-License-Identifier: MIT
// A recipe's file.

#include "support/catch.hpp"
#include "support/small_book.hpp"

using namespace platewright;
using namespace platewright::test;

using Ids = std::vector<std::string>;

namespace {

SmallBook files_with(const std::string& recipe) {
  return SmallBook(Files{{"r.yaml", recipe}, {"larder.yaml", larder_text()}});
}

Ids ids_of_recipe(const std::string& recipe) {
  SmallBook files(Files{{"r.yaml", recipe}, {"larder.yaml", larder_text()}});
  files.read({"r.yaml", "larder.yaml"});
  return files.ids();
}

/// A recipe with these lines on top of what every recipe needs.
std::string with(const std::string& lines) {
  return "recipe: a\nmakes: 4 portions\ntested on: 1 leg of 7.5 lb\n"
         "ingredients: [{lamb: 7.5 lb}, {salt: 1 tsp}]\n" +
         lines;
}

const char* const whole_recipe =
    "recipe: roast\n"
    "makes: 10 portions of 6 oz\n"
    "tested on: 1 leg of 7.5 lb\n"
    "ingredients:\n"
    "  - lamb: 7.5 lb\n"
    "  - part: the rub\n"
    "    lines:\n"
    "      - salt: 2 tsp, ground, fine\n"
    "        scale: held back\n"
    "      - flour: 1-2 tbsp\n"
    "        scale: by surface\n"
    "        as: purchased\n"
    "oven:\n"
    "  - 450 F for 25 min\n"
    "  - 325 F for 1 h 30 min until 130 F inside\n"
    "rest: 20 min\n"
    "steps:\n"
    "  - Sharpen the knife.\n"
    "  - do: Rub.\n"
    "    uses: [lamb, salt, flour]\n"
    "    takes: 12 h to 48 h\n"
    "  - do: Roast.\n"
    "    takes: 2-3 h\n"
    "notes: Carve thin.\n";

}  // namespace

TEST_CASE("everything that a recipe can say") {
  SmallBook files = files_with(whole_recipe);
  const auto book = files.read({"r.yaml", "larder.yaml"});
  REQUIRE(book);
  CHECK(files.ids() == Ids{"below-the-minimum"});
  const Recipe& recipe = book->recipes.recipe("roast");
  CHECK(*recipe.makes.portions == 10);
  CHECK(amount_text(*recipe.makes.portion) == "6 oz");
  CHECK(recipe.tested->piece == "leg");
  CHECK(*recipe.rest == Duration::of(20, units::minute));
  CHECK(recipe.notes == Ids{"Carve thin."});
}

TEST_CASE("lines with their part, preparation, rule and stage") {
  SmallBook files = files_with(whole_recipe);
  const auto book = files.read({"r.yaml", "larder.yaml"});
  REQUIRE(book);
  const Recipe& recipe = book->recipes.recipe("roast");
  REQUIRE(recipe.lines.size() == 3);
  CHECK(recipe.lines[0].part.empty());
  CHECK(recipe.lines[1].part == "the rub");
  CHECK(recipe.lines[1].preparation == "ground, fine");
  CHECK(recipe.lines[1].scale == ScalingRule::held_back);
  CHECK(recipe.lines[1].start_share == fraction(1, 2));
  CHECK(recipe.lines[2].amount.amount()->high().has_value());
  CHECK(*recipe.lines[2].stage == Stage::purchased);
  CHECK(recipe.lines[1].place.line == 8);
}

TEST_CASE("oven and steps") {
  SmallBook files = files_with(whole_recipe);
  const auto book = files.read({"r.yaml", "larder.yaml"});
  REQUIRE(book);
  const Recipe& recipe = book->recipes.recipe("roast");
  REQUIRE(recipe.oven.size() == 2);
  CHECK(recipe.oven[0].oven == Temperature::fahrenheit(450));
  CHECK(*recipe.oven[1].time == Duration::of(90, units::minute));
  CHECK(*pull_temperature(recipe) == Temperature::fahrenheit(130));
  REQUIRE(recipe.steps.size() == 3);
  CHECK(recipe.steps[0].text == "Sharpen the knife.");
  CHECK(recipe.steps[1].takes->most == Duration::of(48, units::hour));
  CHECK(recipe.steps[2].takes->least == Duration::of(2, units::hour));
}

TEST_CASE("what a recipe makes") {
  const auto ids = [](const std::string& makes) {
    return ids_of_recipe("recipe: a\nmakes: " + makes + "\ningredients: [{salt: 1 tsp}]\n");
  };
  CHECK(ids("24 portions").empty());
  CHECK(ids("2 qt").empty());
  CHECK(ids("1 portion of 6 oz").empty());
  CHECK(ids("0 portions") == Ids{"number-not-positive"});
  CHECK(ids("4 portions of 0 oz") == Ids{"number-not-positive"});
  CHECK(ids("4 bowls of 6 oz") == Ids{"recipe-makes"});
  CHECK(ids("plenty") == Ids{"number-missing"});
}

TEST_CASE("what a recipe was tested on") {
  const auto ids = [](const std::string& tested) {
    return ids_of_recipe("recipe: a\nmakes: 2 qt\ntested on: " + tested +
                         "\ningredients: [{salt: 1 tsp}]\n");
  };
  CHECK(ids("2 legs of 7.5 lb").empty());
  CHECK(ids("1 leg") == Ids{"recipe-tested-on"});
  CHECK(ids("0 legs of 7.5 lb") == Ids{"number-not-positive"});
  CHECK(ids("1 leg of 0 lb") == Ids{"number-not-positive"});
  CHECK(ids("1 leg of 3 cups") == Ids{"wrong-dimension"});
}

TEST_CASE("oven settings, times and steps that can't be read") {
  CHECK(ids_of_recipe(with("oven: [450 F]\n")) == Ids{"oven-step"});
  CHECK(ids_of_recipe(with("oven: [hot for 20 min]\n")) == Ids{"number-missing"});
  CHECK(ids_of_recipe(with("oven: [450 for 20 min]\n")) == Ids{"temperature-malformed"});
  CHECK(ids_of_recipe(with("oven: [450 F for 20 lb]\n")) == Ids{"wrong-dimension"});
  CHECK(ids_of_recipe(with("steps: [{do: Wait., takes: 48 h to 12 h}]\n")) == Ids{"time-span"});
  CHECK(ids_of_recipe(with("steps: [{do: Wait., takes: 3 cups}]\n")) == Ids{"wrong-dimension"});
  CHECK(ids_of_recipe(with("steps: [{takes: 3 h}]\n")) == Ids{"key-missing"});
  CHECK(ids_of_recipe(with("steps: [[a]]\n")).front() == "wrong-shape");
}

TEST_CASE("temperatures that food and ovens can't have") {
  const auto ids = [](const std::string& oven) {
    return ids_of_recipe(with("oven: [" + oven + "]\n"));
  };
  CHECK(ids("325 F until 20 F inside") == Ids{"inside-temperature"});
  CHECK(ids("325 F until 31.9 F inside") == Ids{"inside-temperature"});
  CHECK(ids("325 F until 32 F inside") == Ids{"below-the-minimum"});
  CHECK(ids("450 F until 212 F inside").empty());
  CHECK(ids("450 F until 213 F inside") == Ids{"inside-temperature"});
  CHECK(ids("150 F until 165 F inside") == Ids{"inside-above-oven"});
  CHECK(ids("60 C until 140 F inside") == Ids{"below-the-minimum"});
  CHECK(ids("3750 F for 20 min") == Ids{"oven-temperature-unusual"});
  CHECK(ids("99 F for 20 min") == Ids{"oven-temperature-unusual"});
  CHECK(ids("100 F for 20 min").empty());
  CHECK(ids("600 F for 20 min").empty());
}

TEST_CASE("a rest is four hours at most") {
  // FDA Food Code 2022, 3-501.19(B)
  CHECK(ids_of_recipe(with("rest: 4 h\n")).empty());
  CHECK(ids_of_recipe(with("rest: 241 min\n")) == Ids{"rest-too-long"});
  CHECK(ids_of_recipe(with("rest: 400 days\n")) == Ids{"rest-too-long"});
}

TEST_CASE("cooked until a temperature, it says of what kind the food is") {
  const auto ids = [](const std::string& ingredient) {
    SmallBook files(Files{
        {"r.yaml",
         "recipe: a\nmakes: 2 qt\noven: [400 F until 140 F inside]\n"
         "ingredients: [{thighs: 5 lb}, {carrot: 1 lb}]\n"},
        {"l.yaml", "currency: USD\nlarder:\n  thighs: {free: yes, allergens: none" + ingredient +
                       "}\n"
                       "  carrot: {produce: \"carrot, peeled\", free: yes, allergens: "
                       "none}\n"}});
    files.read({"r.yaml", "l.yaml"});
    return files.ids();
  };
  CHECK(ids("") == Ids{"safety-not-stated"});
  CHECK(ids(", safety: Poultry") == Ids{"below-the-minimum"});
  CHECK(ids(", safety: none").empty());
  CHECK(ids(", safety: poutlry").front() == "word-unknown");
}

TEST_CASE("a step uses lines of its recipe, and every line if any") {
  CHECK(ids_of_recipe(with("steps: [{do: Mix., uses: [lamb, slat]}]\n")) ==
        Ids{"step-uses-unknown", "line-not-used"});
  CHECK(ids_of_recipe(with("steps: [{do: Mix., uses: [lamb]}]\n")) == Ids{"line-not-used"});
  CHECK(ids_of_recipe(with("steps: [{do: Mix.}]\n")).empty());
}

TEST_CASE("lines that follow pieces need pieces") {
  const std::string recipe =
      "recipe: a\nmakes: 4 portions\ningredients:\n  - salt: 1 tsp\n    scale: ";
  CHECK(ids_of_recipe(recipe + "by surface\n") == Ids{"surface-no-pieces"});
  CHECK(ids_of_recipe(recipe + "by piece\n") == Ids{"surface-no-pieces"});
  CHECK(ids_of_recipe(recipe + "held back\n    start with: 120 %\n") == Ids{"share-out-of-range"});
  CHECK(ids_of_recipe(recipe + "held back\n    start with: 0\n") == Ids{"share-out-of-range"});
  CHECK(ids_of_recipe(recipe + "by colour\n") == Ids{"word-unknown"});
}

TEST_CASE("sub-recipes are asked for in what they make") {
  const auto ids = [](const std::string& amount) {
    SmallBook files(
        Files{{"r.yaml", "recipe: a\nmakes: 4 portions\ningredients: [{stock: " + amount + "}]\n"},
              {"s.yaml", "recipe: stock\nmakes: 2 qt\ningredients: [{salt: 1 tsp}]\n"},
              {"larder.yaml", larder_text()}});
    files.read({"r.yaml", "s.yaml", "larder.yaml"});
    return files.ids();
  };
  CHECK(ids("1 cup").empty());
  CHECK(ids("to taste").empty());
  CHECK(ids("1 lb") == Ids{"recipe-amount-unreachable"});
}

TEST_CASE("an amount that can't be bought is found when the book is read") {
  CHECK(ids_of_recipe("recipe: a\nmakes: 4 portions\ningredients: [{flour: 3 cloves}]\n") ==
        Ids{"piece-weight-missing"});
  CHECK(ids_of_recipe("recipe: a\nmakes: 4 portions\ningredients: [{flour: 3 in}]\n").size() == 1);
}

TEST_CASE("lines of a wrong shape") {
  const auto ids = [](const std::string& line) {
    return ids_of_recipe("recipe: a\nmakes: 2 qt\ningredients: [" + line + "]\n");
  };
  CHECK(ids("salt") == Ids{"wrong-shape"});
  CHECK(ids("{salt: [1 tsp]}") == Ids{"wrong-shape"});
  CHECK(ids("{salt: 0 tsp}") == Ids{"number-not-positive"});
  CHECK(ids("") == Ids{"wrong-shape"});
  CHECK(ids("{slat: 1 tsp}") == Ids{"name-unknown"});
}
