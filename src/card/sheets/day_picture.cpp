// SPDX-License-Identifier: MIT
#include "card/sheets/day_picture.hpp"

#include <algorithm>
#include <map>

#include "platewright/event/local_time.hpp"
#include "platewright/number/round.hpp"

namespace platewright {
namespace {

using std::chrono::minutes;

/// The hours that are drawn, and how many minutes a sign stands for.
struct Scale {
  Instant begin;
  Instant end;
  minutes step;

  Rational minutes_to(const Instant& instant) const { return Rational((instant - begin).count()); }
};

/// All that is drawn, by its beginning.
std::vector<std::pair<Instant, Instant>> busy_times(const DayPlan& day) {
  std::vector<std::pair<Instant, Instant>> out;
  for (const PlannedLoad& load : day.loads) out.emplace_back(load.in, load.out);
  for (const PlannedWork& work : day.works) {
    if (!work.persons.empty()) out.emplace_back(work.begin, work.begin + work.hands);
  }
  std::sort(out.begin(), out.end());
  return out;
}

/// From the last pause on in which nothing is done for four hours.
Scale scale_of(const DayPlan& day) {
  constexpr minutes hour(60);
  Instant first = day.served;
  Instant busy_until = day.served;
  for (const auto& [begin, end] : busy_times(day)) {
    if (first == day.served || begin - busy_until >= 4 * hour) first = begin;
    busy_until = first == begin ? end : std::max(busy_until, end);
  }
  const auto to_hour = [&](const Instant& instant, bool up) {
    const minutes into = day.zone.local(instant).time_since_epoch() % hour;
    return up && into > minutes(0) ? instant + (hour - into) : instant - into;
  };
  const Instant end = to_hour(day.served, true);
  const Instant begin = std::max(to_hour(first, false), end - 24 * hour);
  return {begin, end, end - begin <= 12 * hour ? minutes(15) : minutes(30)};
}

/// Each recipe has its letter, in the order in which they are begun.
class Letters {
 public:
  char of(const std::string& recipe) {
    const auto [known, is_new] = letters_.emplace(recipe, letter(letters_.size()));
    if (is_new) order_.push_back(recipe);
    return known->second;
  }
  std::vector<std::string> legend() const {
    std::vector<std::string> out;
    for (const std::string& recipe : order_) {
      out.push_back(std::string(1, letters_.at(recipe)) + "  " + recipe);
    }
    return out;
  }

 private:
  static char letter(std::size_t number) {
    if (number < 26) return static_cast<char>('A' + number);
    return number < 52 ? static_cast<char>('a' + (number - 26)) : '+';
  }

  std::map<std::string, char> letters_;
  std::vector<std::string> order_;
};

/// As much of the time as is drawn; empty where none is.
std::vector<Stretch> stretch_of(const Scale& scale, const ZoneRules& zone, const Instant& begin,
                                const Instant& end, char letter) {
  const Instant from = std::max(begin, scale.begin);
  const Instant to = std::min(end, scale.end);
  if (from >= to) return {};
  const std::string sign(1, letter);
  return {{scale.minutes_to(from), scale.minutes_to(to), sign,
           sign + " " + clock_text(zone.local(begin)) + " to " + clock_text(zone.local(end))}};
}

/// The full hours; every second one where they stand close.
Axis axis_of(const Scale& scale, const ZoneRules& zone) {
  Axis out{"", 0, scale.minutes_to(scale.end), {}};
  for (Instant at = scale.begin; at <= scale.end; at += scale.step) {
    const std::string clock = clock_text(zone.local(at));
    const bool close = scale.step > minutes(15) && (clock[1] - '0') % 2 != 0;
    if (clock.substr(3) == "00" && !close) out.ticks.push_back({scale.minutes_to(at), clock});
  }
  return out;
}

/// Loads that are in an oven together stand in lines of their own.
std::vector<std::vector<Stretch>> lanes_of(const std::vector<Stretch>& bars) {
  std::vector<std::vector<Stretch>> out;
  for (const Stretch& bar : bars) {
    const auto lane = std::find_if(out.begin(), out.end(), [&](const std::vector<Stretch>& one) {
      return one.back().to <= bar.from;
    });
    if (lane == out.end()) {
      out.push_back({bar});
    } else {
      lane->push_back(bar);
    }
  }
  return out;
}

void append(std::vector<Stretch>& to, std::vector<Stretch> more) {
  for (Stretch& one : more) to.push_back(std::move(one));
}

LaneGroup oven_lanes(const DayPlan& day, const Scale& scale, Letters& letters) {
  LaneGroup out{"Ovens", {}};
  for (std::size_t oven = 0; oven < day.workplace.ovens.size(); ++oven) {
    std::vector<Stretch> bars;
    for (const PlannedLoad& load : day.loads) {
      if (load.oven != oven) continue;
      append(bars, stretch_of(scale, day.zone, load.in, load.out, letters.of(load.recipe)));
    }
    std::string name = day.workplace.ovens[oven].name;
    if (bars.empty()) out.lanes.push_back({name, {}});
    for (std::vector<Stretch>& lane : lanes_of(bars)) {
      out.lanes.push_back({name, std::move(lane)});
      name.clear();
    }
  }
  return out;
}

LaneGroup people_lanes(const DayPlan& day, const Scale& scale, Letters& letters) {
  LaneGroup out{"People", {}};
  for (std::size_t person = 0; person < day.people.size(); ++person) {
    std::vector<Stretch> bars;
    for (const PlannedWork& work : day.works) {
      const auto& whose = work.persons;
      if (std::find(whose.begin(), whose.end(), person) == whose.end()) continue;
      append(bars, stretch_of(scale, day.zone, work.begin, work.begin + work.hands,
                              letters.of(work.recipe)));
    }
    out.lanes.push_back({person_text(day.people[person]), std::move(bars)});
  }
  return out;
}

/// A sign for each step of the scale, and `.` where nothing is.
std::string in_signs(const Lane& lane, const Axis& axis, const Rational& step) {
  std::string out(static_cast<std::size_t>(steps_of(axis.to, step, Rounding::down)), '.');
  for (const Stretch& bar : lane.stretches) {
    for (std::size_t i = 0; i < out.size(); ++i) {
      const Rational begin = step * static_cast<unsigned>(i);
      if (bar.from < begin + step && begin < bar.to) out[i] = bar.sign[0];
    }
  }
  return out;
}

/// The hours over their first signs: `14..15..16..`.
std::string hours_text(const Axis& axis, const Rational& step) {
  std::string out = in_signs({}, axis, step);
  for (const Tick& tick : axis.ticks) {
    const auto i = static_cast<std::size_t>(steps_of(tick.at, step, Rounding::down));
    if (i + 1 < out.size()) out.replace(i, 2, tick.label.substr(0, 2));
  }
  return out;
}

Table lanes_table(const Lanes& lanes, const minutes& step) {
  const Rational each(step.count());
  Table out{"picture",
            "The day",
            {words_column("who", "Who, what"), words_column("hours", hours_text(lanes.axis, each))},
            {},
            {},
            lanes.legend};
  for (const LaneGroup& group : lanes.groups) {
    out.open_group(group.title);
    for (const Lane& lane : group.lanes) {
      out.add({words(lane.label), words(in_signs(lane, lanes.axis, each))});
    }
  }
  out.notes.push_back("A sign is " + std::to_string(step.count()) +
                      " min, and stands where any of it is taken.");
  return out;
}

}  // namespace

std::string person_text(const Person& person) {
  return person.of == 1 ? person.role : person.role + " " + std::to_string(person.number);
}

Picture day_picture(const DayPlan& day) {
  const Scale scale = scale_of(day);
  Letters letters;
  Lanes lanes{axis_of(scale, day.zone), {oven_lanes(day, scale, letters)}, {}};
  if (!day.people.empty()) lanes.groups.push_back(people_lanes(day, scale, letters));
  lanes.legend = letters.legend();
  Table said = lanes_table(lanes, scale.step);
  return {std::move(said), std::move(lanes)};
}

}  // namespace platewright
