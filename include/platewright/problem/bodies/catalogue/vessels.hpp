// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/vessels.hpp.

#include <utility>

#include "platewright/problem/catalogue/vessels.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem vessel_malformed(std::string_view text, std::string_view content) {
  const std::string some = several(content);
  return make_problem("vessel-malformed", in_quotes(text),
                      "a vessel such as `full-size hotel pan, 4 in`, `tub of 12 qt, holds 3 " +
                          some + "`, `kettle, holds 72 L` or `tray of 18 x 26 in`",
                      "write it in one of these forms; this recipe counts " + some);
}

PLATEWRIGHT_BODY Problem vessel_below_a_piece(std::string_view vessel, std::string_view piece) {
  return make_problem("vessel-below-a-piece",
                      in_quotes(vessel) + " takes less than one " + std::string(piece),
                      "a vessel that takes one whole " + std::string(piece),
                      "name a larger one, or say what one holds, as in `" + std::string(vessel) +
                          ", holds 1 " + std::string(piece) + "`");
}

PLATEWRIGHT_BODY Problem vessel_size_unknown(std::string_view vessel, std::string_view recipe,
                                             std::string_view content,
                                             const std::vector<std::string>& known) {
  const std::string name(vessel);
  const std::string meant = did_you_mean(vessel, known);
  return make_problem("vessel-size-unknown",
                      in_quotes(vessel) + ", and nothing that says how much of " +
                          in_quotes(recipe) + " goes into one",
                      "what one holds, or its size and that of the vessel the recipe was tested in",
                      (meant.empty() ? "" : meant + "; or ") + "write `" + name + ", holds 4 " +
                          several(content) + "`; a size is written `" + name +
                          " of 12 qt` or, of a tray, `" + name +
                          " of 18 x 26 in`; `platewright tables vessels` has those that are known");
}

PLATEWRIGHT_BODY Problem vessel_without_volume(std::string_view vessel,
                                               const std::vector<std::string>& known) {
  std::string remedy = did_you_mean(vessel, known);
  if (remedy.empty()) {
    remedy = "write what it holds, as in `tub of 12 qt`, or see `platewright tables vessels`";
  }
  return make_problem("vessel-unknown", "the vessel " + in_quotes(vessel) + " and a line by cover",
                      "a vessel whose volume is known", std::move(remedy));
}

PLATEWRIGHT_BODY Problem vessel_missing(std::string_view line) {
  return make_problem("vessel-missing",
                      in_quotes(line) + " follows a vessel that the recipe does not name",
                      "`pan: full-size hotel pan, 4 in, holds 2 legs`",
                      "write in what it is made, or scale the line in proportion");
}

PLATEWRIGHT_BODY Problem vessel_too_small(std::string_view vessel) {
  return make_problem("vessel-too-small", in_quotes(vessel) + " is filled by the meat alone",
                      "room left in the vessel for what covers the meat",
                      "put fewer pieces in one, or name a larger vessel");
}

}  // namespace platewright::problems
