// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/day/people_on_duty.hpp.

#include <algorithm>
#include <chrono>

#include "platewright/day/people_on_duty.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::vector<Person> persons_of(const std::vector<Crew>& crews) {
  std::vector<Person> out;
  for (const Crew& crew : crews) {
    const auto workers = static_cast<std::size_t>(whole_count(crew.workers));
    for (std::size_t i = 1; i <= workers; ++i) {
      out.push_back({crew.role, i, workers, crew.hours});
    }
  }
  return out;
}

PLATEWRIGHT_BODY PeopleOnDuty::PeopleOnDuty(std::vector<Person> people, ZoneRules zone,
                                            std::vector<std::string> wanted_roles)
    : people_(std::move(people)),
      busy_(people_.size()),
      zone_(std::move(zone)),
      wanted_roles_(std::move(wanted_roles)) {}

PLATEWRIGHT_BODY bool PeopleOnDuty::has_role(const std::string& role) const {
  return std::any_of(people_.begin(), people_.end(),
                     [&](const Person& person) { return person.role == role; });
}

PLATEWRIGHT_BODY std::vector<std::size_t> PeopleOnDuty::free_people(
    Minute begins, Minute ends, const std::string& role, std::size_t count,
    const std::string& recipe) const {
  std::vector<std::size_t> out;
  for (std::size_t person = 0; person < people_.size(); ++person) {
    if (!role.empty() && people_[person].role != role) continue;
    if (is_free(person, begins, ends)) out.push_back(person);
  }
  std::stable_sort(out.begin(), out.end(), [&](std::size_t left, std::size_t right) {
    return preference(left, recipe) < preference(right, recipe);
  });
  if (out.size() > count) out.resize(count);
  return out;
}

PLATEWRIGHT_BODY void PeopleOnDuty::take(const std::vector<std::size_t>& persons, Minute begins,
                                         Minute ends, const std::string& recipe) {
  for (const std::size_t person : persons) busy_[person].push_back({begins, ends, recipe});
}

PLATEWRIGHT_BODY bool PeopleOnDuty::is_free(std::size_t person, Minute begins, Minute ends) const {
  const std::vector<Job>& jobs = busy_[person];
  const bool other_job = std::any_of(jobs.begin(), jobs.end(), [&](const Job& job) {
    return job.begins < ends && begins < job.ends;
  });
  if (other_job) return false;
  // Hours are written to five minutes at the finest.
  for (Minute minute = begins; minute < ends; minute += 5) {
    if (!is_there(person, minute)) return false;
  }
  return is_there(person, ends - 1);
}

PLATEWRIGHT_BODY bool PeopleOnDuty::is_there(std::size_t person, Minute minute) const {
  const LocalTime local = zone_.local(Instant(std::chrono::minutes(minute)));
  return people_[person].hours.covers(local - std::chrono::floor<std::chrono::days>(local));
}

PLATEWRIGHT_BODY std::pair<int, std::size_t> PeopleOnDuty::preference(
    std::size_t person, const std::string& recipe) const {
  const bool kept_for_others = std::find(wanted_roles_.begin(), wanted_roles_.end(),
                                         people_[person].role) != wanted_roles_.end();
  const std::vector<Job>& jobs = busy_[person];
  const bool knows =
      std::any_of(jobs.begin(), jobs.end(), [&](const Job& job) { return job.recipe == recipe; });
  return {(kept_for_others ? 2 : 0) + (knows ? 0 : 1), jobs.size()};
}

}  // namespace platewright
