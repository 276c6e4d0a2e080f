// SPDX-License-Identifier: MIT
#include "files/fetched_file.hpp"

#include <utility>

#include "files/file_kind.hpp"
#include "yaml/read_yaml.hpp"

namespace platewright::reading {

FetchedFile fetch_file(const std::string& file) {
  ProblemList problems;
  const auto text = yaml::read_file(file, problems);
  if (!text || !may_be_ours(*text, file, problems)) return {};
  auto root = yaml::read_yaml(*text, file, problems);
  if (!root || !problems.all().empty()) return {};
  const std::size_t values = values_in(*root);
  return {text->size(), values, std::make_shared<const yaml::Node>(std::move(*root))};
}

std::size_t values_in(const yaml::Node& node) {
  std::size_t out = 1;
  for (const yaml::Node& item : node.items) out += values_in(item);
  for (const auto& [key, value] : node.entries) out += 1 + values_in(value);
  return out;
}

std::vector<std::string> names_with(const yaml::Node& root) {
  std::vector<std::string> out;
  for (const auto& [key, value] : root.entries) {
    if (key.text != "with") continue;
    if (value.is_scalar()) out.push_back(value.text);
    for (const yaml::Node& item : value.items) {
      if (item.is_scalar()) out.push_back(item.text);
    }
  }
  return out;
}

}  // namespace platewright::reading
