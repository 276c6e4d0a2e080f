// SPDX-License-Identifier: MIT
#include "card/json_document.hpp"
#include "platewright/card/published_recipe.hpp"

namespace platewright {
namespace {

std::string lines_of(const std::vector<std::string>& texts) {
  std::string out;
  for (const std::string& text : texts) out += (out.empty() ? "" : "\n") + text;
  return out;
}

/// Properties of https://schema.org/Recipe; what is not known is left out.
Json json_ld_of(const PublishedRecipe& recipe) {
  Json out{{"@type", "Recipe"}, {"name", recipe.name}};
  if (!recipe.cautions.empty()) out["description"] = lines_of(recipe.cautions);
  if (!recipe.makes.empty()) out["recipeYield"] = recipe.makes;
  out["recipeIngredient"] = recipe.ingredients;
  if (recipe.steps.empty()) return out;
  Json steps = Json::array();
  for (const std::string& step : recipe.steps) {
    steps.push_back({{"@type", "HowToStep"}, {"text", step}});
  }
  out["recipeInstructions"] = std::move(steps);
  return out;
}

/// A page holds this inside an element `script`, which a `<` in a name could end. It stands in
/// strings alone, where the escape means the same.
std::string for_a_page(const std::string& json) {
  std::string out;
  for (const char c : json) {
    if (c == '<') {
      out += "\\u003C";
    } else {
      out += c;
    }
  }
  return out;
}

}  // namespace

std::string write_json_ld(const std::vector<PublishedRecipe>& recipes) {
  Json out{{"@context", "https://schema.org"}};
  if (recipes.size() == 1) {
    out.update(json_ld_of(recipes.front()));
    return for_a_page(json_document(out));
  }
  Json graph = Json::array();
  for (const PublishedRecipe& recipe : recipes) graph.push_back(json_ld_of(recipe));
  out["@graph"] = std::move(graph);
  return for_a_page(json_document(out));
}

}  // namespace platewright
