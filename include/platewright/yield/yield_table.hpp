// SPDX-License-Identifier: MIT
#pragma once
// All rows of yields, found by name.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
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
  explicit YieldTable(YieldRows built_in, YieldRows own = {});

  /// Each throws Failure for a name that is not there, with the nearest names, and for a name that
  /// several rows share.
  const Cut& cut(std::string_view name) const&;
  const Produce& produce(std::string_view name) const&;
  const Grain& grain(std::string_view name) const&;
  const Cut& cut(std::string_view) && = delete;
  const Produce& produce(std::string_view) && = delete;
  const Grain& grain(std::string_view) && = delete;

  /// The row of that name among the user's cuts, produce and grains, then among the built-in ones.
  /// Throws Failure as `cut` does.
  YieldRow row(std::string_view name) const;

  /// The rows of the same goods that serve the same, the careful one first; any number of cooking
  /// methods, or only those that cook like `cut`.
  std::vector<const Cut*> like(const Cut& cut, bool any_method) const;

  /// The cut of that name, as `cut` finds it; null where there is none.
  const Cut* find_cut(std::string_view name) const;

  /// The rows that can be found: the user's, then the built-in ones they do not replace.
  std::vector<Cut> cuts() const { return cuts_.all(); }
  std::vector<Produce> produce() const { return produce_.all(); }
  std::vector<Grain> grains() const { return grains_.all(); }

 private:
  static std::vector<Cut> with_what_they_hold(std::vector<Cut> cuts);

  static std::optional<YieldRow> first_of(const Cut* cut, const Produce* produce,
                                          const Grain* grain);

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

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/yield_table.hpp"
#endif
