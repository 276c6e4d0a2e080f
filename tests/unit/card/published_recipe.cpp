// SPDX-License-Identifier: MIT
#include "platewright/card/published_recipe.hpp"

#include <nlohmann/json.hpp>

#include "support/catch.hpp"

using namespace platewright;

namespace {

PublishedRecipe soup() {
  PublishedRecipe out;
  out.name = "soup \"of the day\"";
  out.ingredients = {"1 qt water"};
  return out;
}

}  // namespace

TEST_CASE("one recipe stands by itself, several stand in a graph") {
  const auto one = nlohmann::json::parse(write_json_ld({soup()}));
  CHECK(one["@context"] == "https://schema.org");
  CHECK(one["@type"] == "Recipe");
  CHECK(one["name"] == "soup \"of the day\"");
  const auto two = nlohmann::json::parse(write_json_ld({soup(), soup()}));
  CHECK(two["@context"] == "https://schema.org");
  CHECK(two["@graph"].size() == 2);
  CHECK(two["@graph"][1]["recipeIngredient"][0] == "1 qt water");
}

TEST_CASE("what is not known of a recipe is left out") {
  const auto one = nlohmann::json::parse(write_json_ld({soup()}));
  for (const char* key : {"recipeYield", "recipeInstructions", "description"}) {
    CHECK_FALSE(one.contains(key));
  }
}

TEST_CASE("hostile names stay texts") {
  PublishedRecipe recipe = soup();
  recipe.name = "a\xE2\x80\xAE" "b</script>\xFF";
  const std::string text = write_json_ld({recipe});
  CHECK(text.find("\xE2\x80\xAE") == std::string::npos);
  CHECK(text.find('<') == std::string::npos);  // it stands inside an element of a page
  CHECK(nlohmann::json::parse(text)["name"] ==
        "a\xE2\x80\xAE" "b</script>\xEF\xBF\xBD");
}
