#pragma once
// One cut, several rows: the user says how to choose, and sees what was not chosen.

#include <algorithm>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/nearest.hpp"
#include "platewright/yield/yield_table.hpp"

namespace platewright {

/// `careful` is the row of the lowest yield, so that enough is bought; `middle` the one in the
/// middle, the lower of the two where their number is even.
enum class RowChoice { careful, middle };

struct ChosenRow {
  YieldRow row;
  /// All rows that the choice was made from, the lowest yield first.
  std::vector<YieldRow> among;
};

namespace detail {

/// True where every word of `wanted` is part of `name`.
inline bool has_words(std::string_view name, std::string_view wanted) {
  const std::string folded = folded_name(name);
  std::string letters = folded_name(wanted);
  std::replace(letters.begin(), letters.end(), ',', ' ');
  std::istringstream words(letters);
  std::string word;
  while (words >> word) {
    if (folded.find(word) == std::string::npos) return false;
  }
  return true;
}

}  // namespace detail

/// The cuts that are called `name`, as `name` itself or with more said after a comma; where they
/// are not several, the cuts whose name or another of their names has every word of it.
inline std::vector<YieldRow> rows_called(const std::vector<Cut>& cuts, std::string_view name) {
  std::vector<YieldRow> called;
  std::vector<YieldRow> worded;
  const std::string begins = folded_name(name) + ",";
  for (const Cut& cut : cuts) {
    const YieldRow row{cut.name, YieldKind::cut, cut.ladder};
    if ((folded_name(cut.name) + ",").compare(0, begins.size(), begins) == 0) {
      called.push_back(row);
    }
    bool meant = detail::has_words(cut.name, name);
    for (const std::string& other : cut.names) meant = meant || detail::has_words(other, name);
    if (meant) worded.push_back(row);
  }
  return called.size() > 1 ? called : worded;
}

/// Chooses among the cuts of that name (see `rows_called`), as far as they go from the delivery to
/// the stage that is nearest to the plate: yields of unlike steps can't be compared. Throws Failure
/// where there is none.
inline ChosenRow choose_cut(const YieldTable& table, std::string_view words, RowChoice choice) {
  const std::vector<Cut> cuts = table.cuts();
  std::vector<YieldRow> rows = rows_called(cuts, words);
  Stage last = Stage::purchased;
  for (const YieldRow& row : rows) last = std::max(last, row.ladder.last());
  const auto unlike = [&](const YieldRow& row) {
    return row.ladder.last() != last || row.ladder.first() != Stage::purchased;
  };
  rows.erase(std::remove_if(rows.begin(), rows.end(), unlike), rows.end());
  if (rows.empty()) {
    std::vector<std::string> known;
    for (const Cut& cut : cuts) known.push_back(cut.name);
    throw Failure(problems::yield_name_unknown("cut", words, did_you_mean(words, known)));
  }
  std::stable_sort(rows.begin(), rows.end(), [](const YieldRow& left, const YieldRow& right) {
    return left.ladder.yield() < right.ladder.yield();
  });
  const std::size_t index = choice == RowChoice::careful ? 0 : (rows.size() - 1) / 2;
  return {rows[index], rows};
}

}  // namespace platewright
