// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/day/day_warnings.hpp.

#include <algorithm>

#include "platewright/day/day_warnings.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string_view words_of(Space space) {
  switch (space) {
    case Space::hobs:
      return "on the hobs";
    case Space::hot_box:
      return "in the hot box";
    case Space::cold_room:
      return "in the cold room";
  }
  return {};
}

PLATEWRIGHT_BODY std::string people_words(std::size_t count, const std::string& role) {
  const std::string out = std::to_string(count) + (count == 1 ? " person" : " people");
  return role.empty() ? out : out + " of the role " + in_quotes(role);
}

PLATEWRIGHT_BODY NotSaidWords words_of(NotSaid what) {
  switch (what) {
    case NotSaid::pan:
      return {"does not say how many pans it fills",
              "a whole oven is planned for it, and no place in a hot box or a cold room",
              "write its pan, as in `pan: full-size hotel pan, 4 in, holds 2 legs`"};
    case NotSaid::oven_time:
      return {
          "does not say how long it is in the oven", "no oven is planned for it",
          "write a time before the temperature inside, as in `325 F for 2 h until 130 F inside`"};
    case NotSaid::pan_size:
      return {"names no pan that is known to go into the ovens and rooms of this kitchen",
              "no place is planned for it",
              "name a pan of `platewright tables vessels`, or one with its size, as in `tray of 60 "
              "x 40 cm`, for the recipe and for the kitchen"};
    case NotSaid::too_hot:
      return {"wants a temperature that no oven of this kitchen has", "no oven is planned for it",
              "correct the range of an oven, or cook it otherwise"};
    case NotSaid::height:
      return {"does not say how high it stands in its pan",
              "one rack is planned for each pan, which a roast may not fit under",
              "write the height of the loaded pan, as in `stands: 8 in`"};
    case NotSaid::dishing_up:
      return {"leaves the oven at the minute at which it is served",
              "no time is planned to rest it, carve it or dish it up",
              "write a step behind its oven, as in `kind: plate` with `takes: 10 min`"};
  }
  return {};
}

PLATEWRIGHT_BODY std::vector<std::string> ways_out(const OvensShort& one,
                                                   std::string (*time)(const Duration&, Rounding)) {
  std::vector<std::string> out;
  if (!one.one_more_oven.empty()) {
    out.push_back("one more oven like " + in_quotes(one.one_more_oven));
  }
  for (const OvensShort::Sooner& sooner : one.sooner) {
    out.push_back(in_quotes(sooner.recipe) + " up to " +
                  time(Duration::of(Rational(sooner.time.count()), units::minute), Rounding::up) +
                  " sooner in the oven, and kept hot meanwhile");
  }
  if (out.empty()) out.emplace_back("more ovens, another dish, or one that is made the day before");
  return out;
}

PLATEWRIGHT_BODY std::string way_out(const HandsShort& one, const std::vector<Person>& people) {
  const auto has_it = [&](const Person& person) { return person.role == one.role; };
  if (one.role.empty() || std::any_of(people.begin(), people.end(), has_it)) {
    return "more people at that hour, or a step behind it that may take longer, so that it can be "
           "done sooner";
  }
  std::vector<std::string> roles;
  for (const Person& person : people) {
    if (roles.empty() || roles.back() != person.role) roles.push_back(person.role);
  }
  const std::string meant = did_you_mean(one.role, roles);
  return (meant.empty() ? "" : meant + " ") + "nobody in this kitchen has that role: name one of " +
         detail::names_of(roles) + ", or add it to the kitchen's people";
}

PLATEWRIGHT_BODY ProblemList day_warnings(const DayPlan& plan, const Place& event) {
  ProblemList out;
  const auto clock = [&](const Instant& instant) {
    const LocalTime local = plan.zone.local(instant);
    return date_text(local) + " " + clock_text(local);
  };
  for (const OvensShort& one : plan.ovens_short) {
    std::string remedy;
    for (const std::string& way : ways_out(one, detail::hours_of)) {
      remedy += (remedy.empty() ? "" : "; or ") + way;
    }
    if (!one.sooner.empty()) {
      remedy +=
          "; `kind: hold hot` with `takes: 0 min to 1 h` behind an oven says how long it may wait";
    }
    out.add(
        as_warning(at(problems::ovens_short(detail::names_of(one.recipes), clock(one.from),
                                            clock(one.until), one.looked_at_all, std::move(remedy)),
                      event)));
  }
  for (const HandsShort& one : plan.hands_short) {
    const std::string step = "step " + std::to_string(one.step);
    out.add(as_warning(
        at(problems::hands_short(step, one.recipe, clock(one.begin), clock(one.end),
                                 people_words(one.wanted, one.role),
                                 people_words(one.free, one.role), way_out(one, plan.people)),
           one.place)));
  }
  for (const SpaceShort& one : plan.space_short) {
    out.add(as_warning(at(
        problems::space_short(words_of(one.space), detail::names_of(one.recipes), clock(one.begin),
                              clock(one.end), as_short_decimal(one.wanted, 0, Rounding::up),
                              as_short_decimal(one.there, 0, Rounding::down)),
        event)));
  }
  for (const DayNotSaid& one : plan.not_said) {
    const NotSaidWords words = words_of(one.what);
    out.add(as_warning(at(
        problems::day_not_said(one.recipe, words.what, words.meanwhile, std::string(words.remedy)),
        event)));
  }
  return out;
}

}  // namespace platewright
