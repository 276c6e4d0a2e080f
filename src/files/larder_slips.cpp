// SPDX-License-Identifier: MIT
#include "files/larder_slips.hpp"

#include <algorithm>
#include <string>
#include <string_view>

#include "platewright/problem/catalogue/books.hpp"

namespace platewright::reading {
namespace {

bool is_ingredient_key(std::string_view name) {
  constexpr std::string_view keys[] = {
      "cut",       "produce",     "grain", "tested yields", "weighs as", "weighs",     "safety",
      "allergens", "may contain", "free",  "buy",           "in store",  "by-products"};
  return std::find(std::begin(keys), std::end(keys), name) != std::end(keys);
}

Problem key_too_far_left(const yaml::Node& name, const yaml::Node& key) {
  const auto column = static_cast<std::size_t>(key.column) + 1;
  return problems::wrong_shape(in_quotes(key.text) + " as far left as " + in_quotes(name.text),
                               "what belongs to an ingredient 2 spaces further in than its name",
                               "write `" + std::string(column, ' ') + key.text + ":`, behind " +
                                   std::to_string(column) + " spaces");
}

}  // namespace

std::set<std::size_t> report_keys_too_far_left(const yaml::Node& larder, const Reading& reading) {
  std::set<std::size_t> out;
  for (std::size_t i = 0; i + 1 < larder.entries.size(); ++i) {
    const yaml::Node& name = larder.entries[i].first;
    if (!larder.entries[i].second.is_nothing() || is_ingredient_key(name.text)) continue;
    for (std::size_t k = i + 1; k < larder.entries.size(); ++k) {
      const yaml::Node& key = larder.entries[k].first;
      if (!is_ingredient_key(key.text)) break;
      out.insert({i, k});
      reading.problems.add(
          at(key_too_far_left(name, key),
             yaml::place_of(key, reading.file.file, "larder > " + in_quotes(name.text))));
    }
  }
  return out;
}

}  // namespace platewright::reading
