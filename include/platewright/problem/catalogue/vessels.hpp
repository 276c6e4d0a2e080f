#pragma once
// What can be wrong with the vessel that a recipe names.

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/problem/nearest.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

inline Problem vessel_malformed(std::string_view text) {
  return make_problem("vessel-malformed", in_quotes(text),
                      "a vessel such as `full-size hotel pan, 4 in, holds 2 legs` or "
                      "`tub of 12 qt, holds 3 legs`",
                      "write it in one of these forms");
}

inline Problem vessel_without_volume(std::string_view vessel,
                                     const std::vector<std::string>& known) {
  std::string remedy = did_you_mean(vessel, known);
  if (remedy.empty()) {
    remedy = "write what it holds, as in `tub of 12 qt`, or see `platewright tables vessels`";
  }
  return make_problem("vessel-unknown", "the vessel " + in_quotes(vessel) + " and a line by cover",
                      "a vessel whose volume is known", std::move(remedy));
}

inline Problem vessel_missing(std::string_view line) {
  return make_problem("vessel-missing",
                      in_quotes(line) + " follows a vessel that the recipe does not name",
                      "`pan: full-size hotel pan, 4 in, holds 2 legs`",
                      "write in what it is made, or scale the line in proportion");
}

inline Problem vessel_too_small(std::string_view vessel) {
  return make_problem("vessel-too-small", in_quotes(vessel) + " is filled by the meat alone",
                      "room left in the vessel for what covers the meat",
                      "put fewer pieces in one, or name a larger vessel");
}

}  // namespace platewright::problems
