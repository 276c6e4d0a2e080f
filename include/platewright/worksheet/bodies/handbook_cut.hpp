// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/handbook_cut.hpp.

#include <algorithm>
#include <cctype>

#include "platewright/worksheet/handbook_cut.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY bool holds_bone(std::string_view bought) {
  const std::vector<Loss> held = held_as_bought(bought);
  return std::find(held.begin(), held.end(), Loss::bone) != held.end();
}

/// True where `bone` or `bones` stands in the name as a word.
PLATEWRIGHT_BODY bool names_bone(const std::string& name) {
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

PLATEWRIGHT_BODY bool takes_bone_off(const TrimTestResult& trim) {
  return std::any_of(trim.lines.begin(), trim.lines.end(), [](const TrimLine& line) {
    return line.kind != PartKind::usable && line.weight > Mass{} && names_bone(line.name);
  });
}

/// Whether the row still has the bone in the weight that the rung begins with.
PLATEWRIGHT_BODY bool has_bone_before(const Cut& cut, const Rung& rung) {
  if (!holds_bone(cut.bought)) return false;
  const auto& rungs = cut.ladder.rungs();
  return std::none_of(rungs.begin(), rungs.end(), [&](const Rung& earlier) {
    const bool holds =
        std::find(earlier.holds.begin(), earlier.holds.end(), Loss::bone) != earlier.holds.end();
    return holds && earlier.to <= rung.from;
  });
}

/// A name without its word for how the goods are bought.
PLATEWRIGHT_BODY std::string without_bought(const std::string& name, const std::string& bought) {
  const std::string part = ", " + bought;
  const std::size_t at = name.find(part);
  return at == std::string::npos ? name : name.substr(0, at) + name.substr(at + part.size());
}

}  // namespace detail

PLATEWRIGHT_BODY std::string_view bought_in(std::string_view name) {
  for (const BoughtWord& known : bought_words) {
    const std::string part = ", " + std::string(known.word);
    const std::size_t at = name.find(part);
    if (at == std::string_view::npos) continue;
    const std::size_t end = at + part.size();
    if (end == name.size() || name[end] == ',') return known.word;
  }
  return {};
}

PLATEWRIGHT_BODY TestedBone tested_bone(std::string_view bought,
                                        const std::optional<TrimTestResult>& trim,
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

PLATEWRIGHT_BODY bool is_of_another_cut(const HandbookComparison& comparison, const Cut& cut,
                                        const TestedBone& tested) {
  if (cut.bought.empty()) return false;
  const bool oven_ready = comparison.from_oven_ready || comparison.rung.from >= Stage::trimmed;
  const std::optional<bool>& bone = oven_ready ? tested.oven_ready : tested.purchased;
  return bone && *bone != detail::has_bone_before(cut, comparison.rung);
}

PLATEWRIGHT_BODY std::string bought_otherwise(const YieldTable& table, const Cut& cut) {
  const std::string plain = detail::without_bought(cut.name, cut.bought);
  for (const Cut& other : table.cuts()) {
    const bool differs = detail::holds_bone(other.bought) != detail::holds_bone(cut.bought);
    if (differs && detail::without_bought(other.name, other.bought) == plain) return other.name;
  }
  return {};
}

}  // namespace platewright
