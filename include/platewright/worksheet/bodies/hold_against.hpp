// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/hold_against.hpp.

#include "platewright/worksheet/hold_against.hpp"

namespace platewright {

PLATEWRIGHT_BODY HandbookRow held_against(const Worksheet& sheet, const std::string& name,
                                          const YieldTable& table) {
  const YieldRow row = table.row(name);
  HandbookRow out{
      row.name, beside_handbook(row.ladder, TestedYields::of(sheet.trim, sheet.cooking)), {}, {}};
  if (row.kind != YieldKind::cut) return out;
  const Cut& cut = table.cut(row.name);
  const TestedBone tested = tested_bone(sheet.bought, sheet.trim, sheet.cooking);
  out.bought = cut.bought;
  for (HandbookComparison& comparison : out.comparisons) {
    comparison.other_cut = is_of_another_cut(comparison, cut, tested);
  }
  if (out.has_other_cut()) out.instead = bought_otherwise(table, cut);
  return out;
}

}  // namespace platewright
