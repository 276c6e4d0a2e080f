// SPDX-License-Identifier: MIT
#pragma once
// Who is there, and who is free.

#include <algorithm>
#include <chrono>
#include <string>
#include <utility>
#include <vector>

#include "platewright/day/oven_task.hpp"
#include "platewright/day/whole_count.hpp"
#include "platewright/event/zone_rules.hpp"
#include "platewright/kitchen/workplace.hpp"

namespace platewright {

/// The third of four cooks.
struct Person {
  std::string role;
  std::size_t number = 1;
  std::size_t of = 1;
  ClockHours hours = {};
};

/// Everyone, in the order of the crews.
inline std::vector<Person> persons_of(const std::vector<Crew>& crews) {
  std::vector<Person> out;
  for (const Crew& crew : crews) {
    const auto workers = static_cast<std::size_t>(whole_count(crew.workers));
    for (std::size_t i = 1; i <= workers; ++i) {
      out.push_back({crew.role, i, workers, crew.hours});
    }
  }
  return out;
}

/// Keeps who does what, so that no one does two things at once.
class PeopleOnDuty {
 public:
  /// `wanted_roles` are those that a step asks for by name: others are taken first for what anyone
  /// may do.
  PeopleOnDuty(std::vector<Person> people, ZoneRules zone, std::vector<std::string> wanted_roles)
      : people_(std::move(people)),
        busy_(people_.size()),
        zone_(std::move(zone)),
        wanted_roles_(std::move(wanted_roles)) {}

  const std::vector<Person>& people() const { return people_; }

  bool has_role(const std::string& role) const {
    return std::any_of(people_.begin(), people_.end(),
                       [&](const Person& person) { return person.role == role; });
  }

  /// So many of that role, or of any where it is empty, who are there and free from `begins` to
  /// `ends`; fewer where there are not so many. Who works on the recipe already comes first.
  std::vector<std::size_t> free_people(Minute begins, Minute ends, const std::string& role,
                                       std::size_t count, const std::string& recipe) const {
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

  void take(const std::vector<std::size_t>& persons, Minute begins, Minute ends,
            const std::string& recipe) {
    for (const std::size_t person : persons) busy_[person].push_back({begins, ends, recipe});
  }

 private:
  struct Job {
    Minute begins;
    Minute ends;
    std::string recipe;
  };

  bool is_free(std::size_t person, Minute begins, Minute ends) const {
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

  bool is_there(std::size_t person, Minute minute) const {
    const LocalTime local = zone_.local(Instant(std::chrono::minutes(minute)));
    return people_[person].hours.covers(local - std::chrono::floor<std::chrono::days>(local));
  }

  /// Lower is better: a role that no step asks for, then who knows the dish, then who has least to
  /// do.
  std::pair<int, std::size_t> preference(std::size_t person, const std::string& recipe) const {
    const bool kept_for_others = std::find(wanted_roles_.begin(), wanted_roles_.end(),
                                           people_[person].role) != wanted_roles_.end();
    const std::vector<Job>& jobs = busy_[person];
    const bool knows =
        std::any_of(jobs.begin(), jobs.end(), [&](const Job& job) { return job.recipe == recipe; });
    return {(kept_for_others ? 2 : 0) + (knows ? 0 : 1), jobs.size()};
  }

  std::vector<Person> people_;
  std::vector<std::vector<Job>> busy_;
  ZoneRules zone_;
  std::vector<std::string> wanted_roles_;
};

}  // namespace platewright
