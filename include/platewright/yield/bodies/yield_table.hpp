// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/yield_table.hpp.

#include <algorithm>
#include <utility>

#include "platewright/yield/yield_table.hpp"

namespace platewright {

PLATEWRIGHT_BODY YieldTable::YieldTable(YieldRows built_in, YieldRows own)
    : cuts_(with_what_they_hold(std::move(built_in.cuts)),
            with_what_they_hold(std::move(own.cuts))),
      produce_(std::move(built_in.produce), std::move(own.produce)),
      grains_(std::move(built_in.grains), std::move(own.grains)) {
  for (const Cut& row : cuts()) check_cut(row);
  for (const Produce& row : produce()) check_yield(row.yield);
  for (const Grain& row : grains()) check_yield(row.yield);
}

PLATEWRIGHT_BODY const Cut& YieldTable::cut(std::string_view name) const& {
  if (const Cut* row = find_cut(name)) return *row;
  return found(problems::cut_unknown, name, cuts_);
}

PLATEWRIGHT_BODY const Produce& YieldTable::produce(std::string_view name) const& {
  return found(problems::produce_unknown, name, produce_);
}

PLATEWRIGHT_BODY const Grain& YieldTable::grain(std::string_view name) const& {
  return found(problems::grain_unknown, name, grains_);
}

PLATEWRIGHT_BODY YieldRow YieldTable::row(std::string_view name) const {
  if (auto own = first_of(cuts_.find_own(name), produce_.find_own(name), grains_.find_own(name))) {
    return *std::move(own);
  }
  if (auto any = first_of(find_cut(name), produce_.find(name), grains_.find(name))) {
    return *std::move(any);
  }
  std::vector<std::string> known;
  cuts_.append_names(known);
  produce_.append_names(known);
  grains_.append_names(known);
  throw Failure(problems::yield_unknown(name, did_you_mean(name, known)));
}

PLATEWRIGHT_BODY std::vector<const Cut*> YieldTable::like(const Cut& cut, bool any_method) const {
  std::vector<const Cut*> rows;
  cuts_.for_each([&](const Cut& other) {
    if (serve_alike(cut, other) && (any_method || cooked_alike(cut, other))) {
      rows.push_back(&other);
    }
  });
  std::stable_sort(rows.begin(), rows.end(), [](const Cut* left, const Cut* right) {
    return is_more_careful(*left, *right);
  });
  return rows;
}

PLATEWRIGHT_BODY const Cut* YieldTable::find_cut(std::string_view name) const {
  if (const Cut* own = cuts_.find_own(name)) return own;
  const Cut* named = cuts_.find(name);
  if (named == nullptr || cuts_.has_key(name)) return named;
  const std::vector<const Cut*> alike = like(*named, false);
  if (!alike.empty() && alike.front()->ladder.still_held().empty()) return alike.front();
  // No row that is cooked like this takes the bone out: one that is cooked in another way does.
  const std::vector<const Cut*> all = like(*named, true);
  return all.empty() ? named : all.front();
}

PLATEWRIGHT_BODY std::vector<Cut> YieldTable::with_what_they_hold(std::vector<Cut> cuts) {
  for (Cut& cut : cuts) cut = as_bought(std::move(cut));
  return cuts;
}

PLATEWRIGHT_BODY std::optional<YieldRow> YieldTable::first_of(const Cut* cut,
                                                              const Produce* produce,
                                                              const Grain* grain) {
  if (cut != nullptr) return YieldRow{key_of(*cut), YieldKind::cut, cut->ladder};
  if (produce != nullptr) {
    return YieldRow{key_of(*produce), YieldKind::produce, ladder_of(*produce)};
  }
  if (grain != nullptr) return YieldRow{key_of(*grain), YieldKind::grain, ladder_of(*grain)};
  return std::nullopt;
}

}  // namespace platewright
