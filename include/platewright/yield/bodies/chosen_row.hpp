// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/chosen_row.hpp.

#include <algorithm>
#include <sstream>

#include "platewright/yield/chosen_row.hpp"

namespace platewright {

PLATEWRIGHT_BODY const Rational& far_apart() {
  static const Rational points = fraction(5, 100);
  return points;
}

PLATEWRIGHT_BODY bool lies_far_apart(const ChosenRow& chosen) {
  const Rational yield = chosen.row.ladder.yield();
  return std::any_of(chosen.among.begin(), chosen.among.end(), [&](const YieldRow& other) {
    const Rational apart = other.ladder.yield() - yield;
    return apart > far_apart() || -apart > far_apart();
  });
}

namespace detail {

PLATEWRIGHT_BODY bool has_words(std::string_view name, std::string_view wanted) {
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

/// The cuts whose name goes on from `name` after a comma; where none does, those whose name or
/// another of whose names has every word of it.
PLATEWRIGHT_BODY std::vector<const Cut*> cuts_worded(const std::vector<Cut>& cuts,
                                                     std::string_view name) {
  std::vector<const Cut*> called;
  std::vector<const Cut*> worded;
  const std::string begins = folded_name(name) + ",";
  for (const Cut& cut : cuts) {
    if (folded_name(cut.name).compare(0, begins.size(), begins) == 0) called.push_back(&cut);
    bool meant = has_words(cut.name, name);
    for (const std::string& other : cut.names) meant = meant || has_words(other, name);
    if (meant) worded.push_back(&cut);
  }
  return called.empty() ? worded : called;
}

/// Of rows found by words: those as purchased that serve what most of them can serve. A row with
/// the bone still in it is left out where another takes it out, and one without the skin where
/// another has it: yields of unlike plates can't be compared.
PLATEWRIGHT_BODY void keep_comparable(std::vector<const Cut*>& rows) {
  const auto drop_where_others_differ = [&](const auto& unlike) {
    if (std::all_of(rows.begin(), rows.end(), unlike)) return;
    rows.erase(std::remove_if(rows.begin(), rows.end(), unlike), rows.end());
  };
  drop_where_others_differ([](const Cut* cut) { return cut->ladder.first() != Stage::purchased; });
  drop_where_others_differ([](const Cut* cut) { return !cut->ladder.still_held().empty(); });
  drop_where_others_differ([](const Cut* cut) { return cut->ladder.holds(Loss::skin); });
  std::stable_sort(rows.begin(), rows.end(), [](const Cut* left, const Cut* right) {
    return is_more_careful(*left, *right);
  });
}

/// `chosen` with what it was chosen from and which row takes its bone out.
PLATEWRIGHT_BODY ChosenRow with_others(const YieldTable& table, const Cut& chosen,
                                       const std::vector<const Cut*>& among) {
  ChosenRow out{row_of(chosen), {}, std::nullopt, chosen.note};
  const bool taken_out = chosen.ladder.still_held().empty();
  for (const Cut* cut : among) {
    if (!taken_out || cut->ladder.still_held().empty()) out.among.push_back(row_of(*cut));
  }
  if (taken_out) return out;
  for (const bool any_method : {false, true}) {
    const std::vector<const Cut*> like = table.like(chosen, any_method);
    if (out.takes_out || like.empty() || !like.front()->ladder.still_held().empty()) continue;
    out.takes_out = row_of(*like.front());
  }
  return out;
}

/// The rows of the same produce, however it is trimmed, the lowest yield first.
PLATEWRIGHT_BODY std::vector<YieldRow> trimmed_otherwise(const YieldTable& table,
                                                         const YieldRow& row) {
  const std::string goods = folded_name(goods_of(table.produce(row.name)));
  std::vector<YieldRow> among;
  for (const Produce& other : table.produce()) {
    if (folded_name(goods_of(other)) != goods) continue;
    among.push_back({other.name, YieldKind::produce, ladder_of(other)});
  }
  std::stable_sort(among.begin(), among.end(), [](const YieldRow& left, const YieldRow& right) {
    return left.ladder.yield() < right.ladder.yield();
  });
  return among;
}

}  // namespace detail

PLATEWRIGHT_BODY ChosenRow row_named(const YieldTable& table, std::string_view name) {
  const YieldRow row = table.row(name);
  if (row.kind == YieldKind::grain) return {row, {}, std::nullopt, {}};
  if (row.kind == YieldKind::produce) {
    return {row, detail::trimmed_otherwise(table, row), std::nullopt, {}};
  }
  const Cut& cut = table.cut(row.name);
  return detail::with_others(table, cut, table.like(cut, false));
}

PLATEWRIGHT_BODY ChosenRow choose_cut(const YieldTable& table, std::string_view words,
                                      RowChoice choice, RowMethods methods) {
  const std::vector<Cut> cuts = table.cuts();
  std::vector<const Cut*> rows;
  if (const Cut* named = table.find_cut(words)) {
    rows = table.like(*named, methods == RowMethods::any);
  } else {
    rows = detail::cuts_worded(cuts, words);
  }
  detail::keep_comparable(rows);
  if (rows.empty()) {
    std::vector<std::string> known;
    for (const Cut& cut : cuts) known.push_back(cut.name);
    throw Failure(problems::cut_unknown(words, did_you_mean(words, known)));
  }
  const std::size_t index = choice == RowChoice::careful ? 0 : (rows.size() - 1) / 2;
  return detail::with_others(table, *rows[index], rows);
}

}  // namespace platewright
