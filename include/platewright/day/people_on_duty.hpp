// SPDX-License-Identifier: MIT
#pragma once
// Who is there, and who is free.

#include <string>
#include <utility>
#include <vector>

#include "platewright/day/oven_task.hpp"
#include "platewright/day/whole_count.hpp"
#include "platewright/event/zone_rules.hpp"
#include "platewright/kitchen/workplace.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// The third of four cooks.
struct Person {
  std::string role;
  std::size_t number = 1;
  std::size_t of = 1;
  ClockHours hours = {};
};

/// Everyone, in the order of the crews.
std::vector<Person> persons_of(const std::vector<Crew>& crews);

/// Keeps who does what, so that no one does two things at once.
class PeopleOnDuty {
 public:
  /// `wanted_roles` are those that a step asks for by name: others are taken first for what anyone
  /// may do.
  PeopleOnDuty(std::vector<Person> people, ZoneRules zone, std::vector<std::string> wanted_roles);

  const std::vector<Person>& people() const { return people_; }

  bool has_role(const std::string& role) const;

  /// So many of that role, or of any where it is empty, who are there and free from `begins` to
  /// `ends`; fewer where there are not so many. Who works on the recipe already comes first.
  std::vector<std::size_t> free_people(Minute begins, Minute ends, const std::string& role,
                                       std::size_t count, const std::string& recipe) const;

  void take(const std::vector<std::size_t>& persons, Minute begins, Minute ends,
            const std::string& recipe);

 private:
  struct Job {
    Minute begins;
    Minute ends;
    std::string recipe;
  };

  bool is_free(std::size_t person, Minute begins, Minute ends) const;

  bool is_there(std::size_t person, Minute minute) const;

  /// Lower is better: a role that no step asks for, then who knows the dish, then who has least to
  /// do.
  std::pair<int, std::size_t> preference(std::size_t person, const std::string& recipe) const;

  std::vector<Person> people_;
  std::vector<std::vector<Job>> busy_;
  ZoneRules zone_;
  std::vector<std::string> wanted_roles_;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/day/bodies/people_on_duty.hpp"
#endif
