// SPDX-License-Identifier: MIT
#include "files/schema_recipe.hpp"

#include <algorithm>

namespace platewright::reading {
namespace {

/// `Recipe`, also with the name of the vocabulary in front.
bool is_recipe_type(const std::string& type) {
  const std::size_t last = type.find_last_of("/:");
  return (last == std::string::npos ? type : type.substr(last + 1)) == "Recipe";
}

bool is_recipe(const yaml::Node& object) {
  const yaml::Node* type = property(object, "@type");
  const yaml::Node* name = property(object, "name");
  if (type == nullptr || name == nullptr || !name->is_scalar() || name->text.empty()) return false;
  if (type->is_scalar()) return is_recipe_type(type->text);
  return std::any_of(type->items.begin(), type->items.end(),
                     [](const yaml::Node& one) { return is_recipe_type(one.text); });
}

/// The parser bounds how deep this goes.
void append_texts(const yaml::Node& node, std::vector<const yaml::Node*>& out) {
  if (node.is_scalar()) out.push_back(&node);
  for (const yaml::Node& item : node.items) append_texts(item, out);
  if (!node.is_map()) return;
  for (const char* name : {"itemListElement", "text", "name"}) {
    if (const yaml::Node* inner = property(node, name)) return append_texts(*inner, out);
  }
}

}  // namespace

std::vector<const yaml::Node*> schema_recipes(const yaml::Node& root) {
  std::vector<const yaml::Node*> out;
  if (is_recipe(root)) out.push_back(&root);
  const yaml::Node* graph = property(root, "@graph");
  for (const yaml::Node& item : graph == nullptr ? root.items : graph->items) {
    if (is_recipe(item)) out.push_back(&item);
  }
  return out;
}

const yaml::Node* property(const yaml::Node& object, const std::string& name) {
  for (const auto& [key, value] : object.entries) {
    if (key.text == name) return &value;
  }
  return nullptr;
}

std::vector<const yaml::Node*> property_texts(const yaml::Node& object, const std::string& name) {
  std::vector<const yaml::Node*> out;
  if (const yaml::Node* value = property(object, name)) append_texts(*value, out);
  return out;
}

std::string schema_yield(const yaml::Node& recipe) {
  const yaml::Node* written = property(recipe, "recipeYield");
  if (written == nullptr) return {};
  // The same yield several times over, as a number and in words: the words say more.
  if (written->is_list() && !written->items.empty()) written = &written->items.back();
  if (written->is_scalar()) return written->text;
  const yaml::Node* value = property(*written, "value");
  const yaml::Node* unit = property(*written, "unitText");
  if (value == nullptr || !value->is_scalar()) return {};
  return value->text + (unit == nullptr || unit->text.empty() ? "" : " " + unit->text);
}

}  // namespace platewright::reading
