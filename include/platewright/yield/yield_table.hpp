#pragma once
// All rows of yields, found by name.

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/problem/nearest.hpp"
#include "platewright/yield/cut.hpp"
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
/// the built-in ones. It holds what it was given and has no rows of its own.
class YieldTable {
 public:
  /// Throws Failure for two rows of one key within a kind of one of the two, for a yield of 0 or
  /// less and for a cut that gains weight without water taken up.
  explicit YieldTable(YieldRows built_in, YieldRows own = {})
      : cuts_(std::move(built_in.cuts), std::move(own.cuts)),
        produce_(std::move(built_in.produce), std::move(own.produce)),
        grains_(std::move(built_in.grains), std::move(own.grains)) {
    for (const Cut& row : cuts()) check_cut(row);
    for (const Produce& row : produce()) check_yield(row.yield);
    for (const Grain& row : grains()) check_yield(row.yield);
  }

  /// Each throws Failure for a name that is not there, with the nearest names, and for a name that
  /// several rows share.
  const Cut& cut(std::string_view name) const { return found("cut", name, cuts_); }
  const Produce& produce(std::string_view name) const { return found("produce", name, produce_); }
  const Grain& grain(std::string_view name) const { return found("grain", name, grains_); }

  /// The row of that name among the user's cuts, produce and grains, then among the built-in ones.
  /// Throws Failure as `cut` does.
  YieldRow row(std::string_view name) const {
    if (auto own =
            first_of(cuts_.find_own(name), produce_.find_own(name), grains_.find_own(name))) {
      return *std::move(own);
    }
    if (auto any = first_of(cuts_.find(name), produce_.find(name), grains_.find(name))) {
      return *std::move(any);
    }
    std::vector<std::string> known;
    cuts_.append_names(known);
    produce_.append_names(known);
    grains_.append_names(known);
    throw Failure(problems::yield_name_unknown("yield", name, did_you_mean(name, known)));
  }

  /// The rows that can be found: the user's, then the built-in ones they do not replace.
  std::vector<Cut> cuts() const { return cuts_.all(); }
  std::vector<Produce> produce() const { return produce_.all(); }
  std::vector<Grain> grains() const { return grains_.all(); }

 private:
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
  static const Row& found(std::string_view kind, std::string_view name,
                          const detail::LayeredRows<Row>& rows) {
    if (const Row* row = rows.find(name)) return *row;
    std::vector<std::string> known;
    rows.append_names(known);
    throw Failure(problems::yield_name_unknown(kind, name, did_you_mean(name, known)));
  }

  detail::LayeredRows<Cut> cuts_;
  detail::LayeredRows<Produce> produce_;
  detail::LayeredRows<Grain> grains_;
};

}  // namespace platewright
