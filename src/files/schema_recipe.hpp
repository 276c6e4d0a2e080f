// SPDX-License-Identifier: MIT
#pragma once
// What a recipe of schema.org says, as texts.

#include <string>
#include <vector>

#include "yaml/node.hpp"

namespace platewright::reading {

/// Every object of the type `Recipe` that has a name: the root, in a list of it, or in its
/// `@graph`.
std::vector<const yaml::Node*> schema_recipes(const yaml::Node& root);

/// The value of a property; nothing where it has none.
const yaml::Node* property(const yaml::Node& object, const std::string& name);

/// The texts of a property: one, several in a list, or those of objects with a `text` or a `name`,
/// of which those with an `itemListElement` hold more of them.
std::vector<const yaml::Node*> property_texts(const yaml::Node& object, const std::string& name);

/// The yield as a text: `4 servings`; of a value with a unit, the two of them. Empty where there is
/// none.
std::string schema_yield(const yaml::Node& recipe);

}  // namespace platewright::reading
