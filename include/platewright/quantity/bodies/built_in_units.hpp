// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/quantity/built_in_units.hpp.

#include <stdexcept>
#include <unordered_map>

#include "platewright/quantity/built_in_units.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::vector<std::string> split_list(std::string_view joined) {
  std::vector<std::string> out;
  while (!joined.empty()) {
    const std::size_t bar = joined.find('|');
    out.emplace_back(joined.substr(0, bar));
    joined = bar == std::string_view::npos ? std::string_view{} : joined.substr(bar + 1);
  }
  return out;
}

namespace detail {

PLATEWRIGHT_BODY UnitRecord record_from(const UnitRow& row) {
  UnitRecord record;
  record.name = row.name;
  record.dimension = row.dimension;
  record.size = to_rational(row.size);
  record.system = row.system;
  record.symbol = row.symbol;
  record.plural = row.plural;
  record.names = split_list(row.names);
  record.bare = split_list(row.bare);
  record.ucum = row.ucum;
  record.kind = row.kind;
  record.exactness = row.exactness;
  record.source = row.source;
  record.note = row.note;
  return record;
}

}  // namespace detail

PLATEWRIGHT_BODY const std::vector<Unit>& built_in_units() {
  static const std::vector<Unit> units = [] {
    std::vector<Unit> out;
    for (const UnitRow& row : detail::unit_rows) out.emplace_back(detail::record_from(row));
    return out;
  }();
  return units;
}

PLATEWRIGHT_BODY const Unit& built_in_unit(std::string_view name) {
  static const std::unordered_map<std::string_view, const Unit*> by_name = [] {
    std::unordered_map<std::string_view, const Unit*> out;
    for (const Unit& unit : built_in_units()) out.emplace(unit.name(), &unit);
    return out;
  }();
  const auto found = by_name.find(name);
  if (found == by_name.end()) throw std::out_of_range("no built-in unit " + std::string(name));
  return *found->second;
}

}  // namespace platewright
