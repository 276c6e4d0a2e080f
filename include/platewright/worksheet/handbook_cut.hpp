// SPDX-License-Identifier: MIT
#pragma once
// Whether the row of a table is of the cut that was tested: a yield of meat with its bone is not
// one of meat without it.

#include <algorithm>
#include <cctype>
#include <optional>
#include <string>
#include <string_view>

#include "platewright/worksheet/handbook.hpp"
#include "platewright/yield/yield_table.hpp"

namespace platewright {

/// Whether the bone is in what was tested; nothing where neither the sheet nor a weight says so.
struct TestedBone {
  std::optional<bool> purchased;
  std::optional<bool> oven_ready;
};

namespace detail {

inline bool holds_bone(std::string_view bought) {
  const std::vector<Loss> held = held_as_bought(bought);
  return std::find(held.begin(), held.end(), Loss::bone) != held.end();
}

/// True where `bone` or `bones` stands in the name as a word.
inline bool names_bone(const std::string& name) {
  const std::string folded = folded_name(name);
  const auto letter = [&](std::size_t at) {
    return at < folded.size() && std::isalpha(static_cast<unsigned char>(folded[at])) != 0;
  };
  for (std::size_t at = folded.find("bone"); at != std::string::npos;
       at = folded.find("bone", at + 1)) {
    const std::size_t end = at + (folded.compare(at, 5, "bones") == 0 ? 5 : 4);
    if ((at == 0 || !letter(at - 1)) && !letter(end)) return true;
  }
  return false;
}

inline bool takes_bone_off(const TrimTestResult& trim) {
  return std::any_of(trim.lines.begin(), trim.lines.end(), [](const TrimLine& line) {
    return line.kind != PartKind::usable && line.weight > Mass{} && names_bone(line.name);
  });
}

/// Whether the row still has the bone in the weight that the rung begins with.
inline bool has_bone_before(const Cut& cut, const Rung& rung) {
  if (!holds_bone(cut.bought)) return false;
  const auto& rungs = cut.ladder.rungs();
  return std::none_of(rungs.begin(), rungs.end(), [&](const Rung& earlier) {
    const bool holds =
        std::find(earlier.holds.begin(), earlier.holds.end(), Loss::bone) != earlier.holds.end();
    return holds && earlier.to <= rung.from;
  });
}

/// A name without its word for how the goods are bought.
inline std::string without_bought(const std::string& name, const std::string& bought) {
  const std::string part = ", " + bought;
  const std::size_t at = name.find(part);
  return at == std::string::npos ? name : name.substr(0, at) + name.substr(at + part.size());
}

}  // namespace detail

/// The word for how goods are bought that stands between commas of a name, as in `lamb leg,
/// bone-in`; empty where none does.
inline std::string_view bought_in(std::string_view name) {
  for (const BoughtWord& known : bought_words) {
    const std::string part = ", " + std::string(known.word);
    const std::size_t at = name.find(part);
    if (at == std::string_view::npos) continue;
    const std::size_t end = at + part.size();
    if (end == name.size() || name[end] == ',') return known.word;
  }
  return {};
}

/// `bought` is the word for how the goods were bought, empty where the sheet has none; then a bone
/// that was cut off says that there was one. Where some bone was cut off and some came off after
/// cooking, nobody knows what went into the oven.
inline TestedBone tested_bone(std::string_view bought, const std::optional<TrimTestResult>& trim,
                              const std::optional<CookingLossResult>& cooking) {
  TestedBone out;
  const bool taken_off = trim && detail::takes_bone_off(*trim);
  if (!bought.empty()) {
    out.purchased = detail::holds_bone(bought);
  } else if (taken_off) {
    out.purchased = true;
  }
  if (!taken_off) {
    out.oven_ready = out.purchased;
  } else if (cooking && cooking->bones_and_trim == Mass{}) {
    out.oven_ready = false;
  }
  return out;
}

/// Whether the comparison is one with another cut: what its rung begins with has the bone in it and
/// what the test begins with has not, or the other way round.
inline bool is_of_another_cut(const HandbookComparison& comparison, const Cut& cut,
                              const TestedBone& tested) {
  if (cut.bought.empty()) return false;
  const bool oven_ready = comparison.from_oven_ready || comparison.rung.from >= Stage::trimmed;
  const std::optional<bool>& bone = oven_ready ? tested.oven_ready : tested.purchased;
  return bone && *bone != detail::has_bone_before(cut, comparison.rung);
}

/// The row that differs from this one in how the goods are bought alone: `beef rib roast, boneless,
/// roasted` for `beef rib roast, bone-in, roasted`. Empty where the table has none.
inline std::string bought_otherwise(const YieldTable& table, const Cut& cut) {
  const std::string plain = detail::without_bought(cut.name, cut.bought);
  for (const Cut& other : table.cuts()) {
    const bool differs = detail::holds_bone(other.bought) != detail::holds_bone(cut.bought);
    if (differs && detail::without_bought(other.name, other.bought) == plain) return other.name;
  }
  return {};
}

}  // namespace platewright
