// SPDX-License-Identifier: MIT
#pragma once
// What a YAML file holds, with the position of every value.

#include <string>
#include <utility>
#include <vector>

#include "platewright/problem/place.hpp"

namespace platewright::yaml {

/// A value as it stands in the file. Scalars are text: nothing is turned into a number here.
struct Node {
  enum class Kind { nothing, scalar, list, map };

  // Defined below, where the type is whole: clang 14 needs that for a vector of pairs of it.
  Node();

  Kind kind = Kind::nothing;
  std::string text;     ///< of a scalar
  bool quoted = false;  ///< a scalar in quotation marks or a block: `~` and `null` are text then
  int line = 0;
  int column = 0;
  std::vector<Node> items;                     ///< of a list
  std::vector<std::pair<Node, Node>> entries;  ///< of a map, in the order of the file

  bool is_scalar() const { return kind == Kind::scalar; }
  bool is_list() const { return kind == Kind::list; }
  bool is_map() const { return kind == Kind::map; }
  bool is_nothing() const { return kind == Kind::nothing; }
};

inline Node::Node() = default;

inline Place place_of(const Node& node, const std::string& file, const std::string& path = {}) {
  return Place{file, node.line, node.column, path};
}

}  // namespace platewright::yaml
