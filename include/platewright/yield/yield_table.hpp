// SPDX-License-Identifier: MIT
#pragma once
// All rows of yields, found by name.

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/problem/nearest.hpp"
#include "platewright/yield/cut.hpp"
#include "platewright/yield/cuts_alike.hpp"
#include "platewright/yield/detail/named_rows.hpp"
#include "platewright/yield/grain.hpp"
#include "platewright/yield/produce.hpp"

namespace platewright {

/// Rows as they were read from one place: the tables built into the program, or the user's own.
struct YieldRows {
  std::vector<Cut> cuts;
  std::vector<Produce> produce;
  std::vector<Grain> grains;
};

enum class YieldKind { cut, produce, grain };

/// What cuts, produce and grains have in common, for whoever only wants the ladder of a name.
struct YieldRow {
  /// The key of the row, which is not always the name it was asked for by.
  std::string name;
  YieldKind kind = YieldKind::cut;
  Ladder ladder;
};

/// Finds rows by key or by another of their names; capitals do not matter. The user's rows win over
/// the built-in ones. A key means its row; another name of a built-in cut is a plain name, which
/// says neither how closely the cut is trimmed nor who measured, and means the careful row among
/// those that it may mean. It holds what it was given and has no rows of its own.
class YieldTable {
 public:
  /// Throws Failure for two rows of one key within a kind of one of the two, for a yield of 0 or
  /// less and for a cut that gains weight without water taken up.
  explicit YieldTable(YieldRows built_in, YieldRows own = {})
      : cuts_(with_what_they_hold(std::move(built_in.cuts)),
              with_what_they_hold(std::move(own.cuts))),
        produce_(std::move(built_in.produce), std::move(own.produce)),
        grains_(std::move(built_in.grains), std::move(own.grains)) {
    for (const Cut& row : cuts()) check_cut(row);
    for (const Produce& row : produce()) check_yield(row.yield);
    for (const Grain& row : grains()) check_yield(row.yield);
  }

  /// Each throws Failure for a name that is not there, with the nearest names, and for a name that
  /// several rows share.
  const Cut& cut(std::string_view name) const& {
    if (const Cut* row = find_cut(name)) return *row;
    return found(problems::cut_unknown, name, cuts_);
  }
  const Produce& produce(std::string_view name) const& {
    return found(problems::produce_unknown, name, produce_);
  }
  const Grain& grain(std::string_view name) const& {
    return found(problems::grain_unknown, name, grains_);
  }
  const Cut& cut(std::string_view) && = delete;
  const Produce& produce(std::string_view) && = delete;
  const Grain& grain(std::string_view) && = delete;

  /// The row of that name among the user's cuts, produce and grains, then among the built-in ones.
  /// Throws Failure as `cut` does.
  YieldRow row(std::string_view name) const {
    if (auto own =
            first_of(cuts_.find_own(name), produce_.find_own(name), grains_.find_own(name))) {
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

  /// The rows of the same goods that serve the same, the careful one first; any number of cooking
  /// methods, or only those that cook like `cut`.
  std::vector<const Cut*> like(const Cut& cut, bool any_method) const {
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

  /// The cut of that name, as `cut` finds it; null where there is none.
  const Cut* find_cut(std::string_view name) const {
    if (const Cut* own = cuts_.find_own(name)) return own;
    const Cut* named = cuts_.find(name);
    if (named == nullptr || cuts_.has_key(name)) return named;
    const std::vector<const Cut*> alike = like(*named, false);
    if (!alike.empty() && alike.front()->ladder.still_held().empty()) return alike.front();
    // No row that is cooked like this takes the bone out: one that is cooked in another way does.
    const std::vector<const Cut*> all = like(*named, true);
    return all.empty() ? named : all.front();
  }

  /// The rows that can be found: the user's, then the built-in ones they do not replace.
  std::vector<Cut> cuts() const { return cuts_.all(); }
  std::vector<Produce> produce() const { return produce_.all(); }
  std::vector<Grain> grains() const { return grains_.all(); }

 private:
  static std::vector<Cut> with_what_they_hold(std::vector<Cut> cuts) {
    for (Cut& cut : cuts) cut = as_bought(std::move(cut));
    return cuts;
  }

  static std::optional<YieldRow> first_of(const Cut* cut, const Produce* produce,
                                          const Grain* grain) {
    if (cut != nullptr) return YieldRow{key_of(*cut), YieldKind::cut, cut->ladder};
    if (produce != nullptr) {
      return YieldRow{key_of(*produce), YieldKind::produce, ladder_of(*produce)};
    }
    if (grain != nullptr) return YieldRow{key_of(*grain), YieldKind::grain, ladder_of(*grain)};
    return std::nullopt;
  }

  template <class Row>
  static const Row& found(Problem (*unknown)(std::string_view, std::string), std::string_view name,
                          const detail::LayeredRows<Row>& rows) {
    if (const Row* row = rows.find(name)) return *row;
    std::vector<std::string> known;
    rows.append_names(known);
    throw Failure(unknown(name, did_you_mean(name, known)));
  }

  detail::LayeredRows<Cut> cuts_;
  detail::LayeredRows<Produce> produce_;
  detail::LayeredRows<Grain> grains_;
};

}  // namespace platewright
