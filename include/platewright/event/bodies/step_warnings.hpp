// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/step_warnings.hpp.

#include <utility>

#include "platewright/event/step_warnings.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY std::string both_scales(const Temperature& at, Rounding rounding) {
  return as_short_decimal(at.in_fahrenheit(), 1, rounding) + " F (" +
         as_short_decimal(at.in_celsius(), 1, rounding) + " C)";
}

PLATEWRIGHT_BODY Problem step_problem(const std::string& recipe, const StepNotice& notice) {
  const StepFigures figures{both_scales, hours_of};
  std::string found =
      step_name(notice) + " of " + in_quotes(recipe) + " " + found_words(notice, figures);
  std::string wanted = wanted_words(notice, figures);
  std::string remedy = remedy_words(notice);
  const auto made_by = [&](auto make) {
    return make(std::move(found), std::move(wanted), std::move(remedy));
  };
  switch (notice.fault) {
    case StepFault::place:
      return made_by(problems::step_place_unsafe);
    case StepFault::temperature:
      return made_by(problems::step_temperature_unsafe);
    case StepFault::time:
      return made_by(problems::step_takes_too_long);
    case StepFault::too_short:
      return made_by(problems::step_too_short);
    case StepFault::marinade:
      break;
  }
  return made_by(problems::marinade_not_boiled);
}

PLATEWRIGHT_BODY void add_step_warnings(const Recipe& recipe, const RecipeBook& book,
                                        const SafetyTable& table,
                                        const std::optional<Mass>& piece_weight, ProblemList& out) {
  for (const StepNotice& notice : step_notices(recipe, book, table, piece_weight)) {
    out.add(as_warning(at(step_problem(recipe.name, notice), notice.place)));
  }
}

}  // namespace platewright::detail
