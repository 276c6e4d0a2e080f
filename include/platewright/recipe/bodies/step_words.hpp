// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/step_words.hpp.

#include "platewright/recipe/step_words.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY std::string with_source(const std::string& words, const StepRule& rule) {
  return rule.source.empty() ? words : words + " (" + source_words(rule.source, rule.row) + ")";
}

/// `41 F or below`: rounded to the safe side.
PLATEWRIGHT_BODY std::string bound_words(const BoundTemperature& limit,
                                         const StepFigures& figures) {
  return limit.bound == Bound::at_least
             ? figures.temperature(limit.at, Rounding::up) + " or above"
             : figures.temperature(limit.at, Rounding::down) + " or below";
}

/// What was found, towards the side on which it is wrong.
PLATEWRIGHT_BODY std::string found_temperature(const StepNotice& notice,
                                               const StepFigures& figures) {
  const bool low = notice.rule.temperature && notice.rule.temperature->bound == Bound::at_least;
  return figures.temperature(*notice.at, low ? Rounding::down : Rounding::up);
}

PLATEWRIGHT_BODY std::string piece_words(const Mass& piece) {
  return as_short_decimal(piece.in(units::pound), 1, Rounding::up) + " lb (" +
         as_short_decimal(piece.in(units::kilogram), 1, Rounding::up) + " kg)";
}

}  // namespace detail

PLATEWRIGHT_BODY std::string limit_words(const StepRule& rule, const StepFigures& figures) {
  const std::string temperature =
      rule.temperature ? detail::bound_words(*rule.temperature, figures) : std::string();
  const std::string within =
      rule.within ? figures.time(*rule.within, Rounding::down) : std::string();
  switch (rule.demand) {
    case StepDemand::never:
    case StepDemand::told:
      return rule.note;
    case StepDemand::stands_at:
      return within.empty() ? temperature : temperature + ", " + within + " at most";
    case StepDemand::reaches:
      return within.empty() ? temperature : temperature + " within " + within;
    case StepDemand::lasts:
      return within + " at most";
    case StepDemand::waits:
      return rule.within ? figures.time(*rule.within, Rounding::up) + " at least" : std::string();
    case StepDemand::dated:
      return "label it with its name and the day it is made; " + within +
             " at most, that day being the first";
  }
  return {};
}

PLATEWRIGHT_BODY std::string thawing_words(const StepThawing& thawing, const StepFigures& figures) {
  const ThawingRate& rate = thawing.rate;
  std::string each = as_short_decimal(rate.each.in(units::pound), 1, Rounding::down);
  if (rate.each_at_most != rate.each) {
    each += " to " + as_short_decimal(rate.each_at_most.in(units::pound), 1, Rounding::down);
  }
  const std::string by_weight = figures.time(rate.time, Rounding::up) + " for each " + each + " lb";
  const auto time = thawing.time();
  if (!time) return by_weight;
  const std::string least = figures.time(time->least, Rounding::up);
  const std::string most = figures.time(time->most, Rounding::up);
  return "a piece of " + detail::piece_words(*thawing.piece) + " takes " +
         (least == most ? least : least + " to " + most) + "; " + by_weight;
}

PLATEWRIGHT_BODY std::string step_name(const StepNotice& notice) {
  const std::string number = "step " + std::to_string(notice.number);
  if (notice.fault == StepFault::marinade) return number;
  return number + " (" + std::string(name_of(notice.kind)) + ")";
}

PLATEWRIGHT_BODY std::string found_words(const StepNotice& notice, const StepFigures& figures) {
  switch (notice.fault) {
    case StepFault::place:
      return "stands " + where_words(*notice.where);
    case StepFault::temperature:
      return (notice.rule.demand == StepDemand::reaches ? "comes to " : "stands at ") +
             detail::found_temperature(notice, figures);
    case StepFault::time:
      if (notice.at) {
        return "is at " + detail::found_temperature(notice, figures) + " after " +
               figures.time(*notice.time, Rounding::up);
      }
      return "takes up to " + figures.time(*notice.time, Rounding::up);
    case StepFault::too_short:
      return "takes " + figures.time(*notice.time, Rounding::down) +
             (notice.thawing ? " for a piece of " + detail::piece_words(*notice.thawing->piece)
                             : std::string());
    case StepFault::marinade:
      return "uses " + in_quotes(notice.marinade) + ", in which raw food has lain";
  }
  return {};
}

PLATEWRIGHT_BODY std::string wanted_words(const StepNotice& notice, const StepFigures& figures) {
  const std::string limit = limit_words(notice.rule, figures);
  return detail::with_source(limit.empty() ? "another place" : limit, notice.rule);
}

PLATEWRIGHT_BODY std::string remedy_words(const StepNotice& notice) {
  switch (notice.fault) {
    case StepFault::place:
      return "do it where the rule allows it";
    case StepFault::temperature:
      return notice.rule.temperature && notice.rule.temperature->bound == Bound::at_least
                 ? "heat it further"
                 : "keep it colder";
    case StepFault::time:
      return notice.rule.demand == StepDemand::reaches && notice.kind == StepKind::chill
                 ? "cool it faster: shallow pans, smaller portions, ice water, ice in the food "
                   "(FDA Food Code 2022, 3-501.15)"
                 : "make it shorter, or do it later";
    case StepFault::too_short:
      return "begin earlier";
    case StepFault::marinade:
      return "boil it in a step of its own (`kind: simmer`), or keep a part back under another "
             "name";
  }
  return {};
}

}  // namespace platewright
