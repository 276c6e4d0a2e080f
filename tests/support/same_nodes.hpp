// SPDX-License-Identifier: MIT
#pragma once
// Nodes held against each other.

#include <algorithm>

#include "yaml/node.hpp"

namespace platewright::test {

/// Whether both hold the same at the same places.
inline bool same_nodes(const yaml::Node& left, const yaml::Node& right) {
  const auto same_entry = [](const auto& one, const auto& other) {
    return same_nodes(one.first, other.first) && same_nodes(one.second, other.second);
  };
  return left.kind == right.kind && left.text == right.text && left.quoted == right.quoted &&
         left.line == right.line && left.column == right.column &&
         std::equal(left.items.begin(), left.items.end(), right.items.begin(), right.items.end(),
                    same_nodes) &&
         std::equal(left.entries.begin(), left.entries.end(), right.entries.begin(),
                    right.entries.end(), same_entry);
}

}  // namespace platewright::test
