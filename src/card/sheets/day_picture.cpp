#include "card/sheets/day_picture.hpp"

#include <algorithm>
#include <map>

#include "platewright/event/local_time.hpp"

namespace platewright {
namespace {

using std::chrono::minutes;

struct Stretch {
  Instant begin;
  Instant end;
  char sign;
};

/// The hours that are drawn, and how many minutes a sign stands for.
struct Scale {
  Instant begin;
  Instant end;
  minutes step;

  std::size_t signs() const { return static_cast<std::size_t>((end - begin) / step); }
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

std::string drawn(const std::vector<Stretch>& bars, const Scale& scale) {
  std::string out(scale.signs(), '.');
  for (const Stretch& bar : bars) {
    for (std::size_t i = 0; i < out.size(); ++i) {
      const Instant begin = scale.begin + scale.step * i;
      if (bar.begin < begin + scale.step && begin < bar.end) out[i] = bar.sign;
    }
  }
  return out;
}

/// The hours over their first signs: `14..15..16..`; every second one where they stand close.
std::string hours_text(const Scale& scale, const ZoneRules& zone) {
  std::string out(scale.signs(), '.');
  for (std::size_t i = 0; i + 1 < out.size(); ++i) {
    const std::string clock = clock_text(zone.local(scale.begin + scale.step * i));
    const bool close = scale.step > minutes(15) && (clock[1] - '0') % 2 != 0;
    if (clock.substr(3) != "00" || close) continue;
    out[i] = clock[0];
    out[i + 1] = clock[1];
  }
  return out;
}

/// Loads that are in an oven together stand in lines of their own.
std::vector<std::vector<Stretch>> lanes_of(const std::vector<Stretch>& bars) {
  std::vector<std::vector<Stretch>> out;
  for (const Stretch& bar : bars) {
    const auto lane = std::find_if(out.begin(), out.end(), [&](const std::vector<Stretch>& one) {
      return one.back().end <= bar.begin;
    });
    if (lane == out.end()) {
      out.push_back({bar});
    } else {
      lane->push_back(bar);
    }
  }
  return out;
}

}  // namespace

std::string person_text(const Person& person) {
  return person.of == 1 ? person.role : person.role + " " + std::to_string(person.number);
}

Table day_picture(const DayPlan& day) {
  const Scale scale = scale_of(day);
  Letters letters;
  Table out{"picture",
            "The day",
            {words_column("who", "Who, what"), words_column("hours", hours_text(scale, day.zone))},
            {},
            {},
            {}};
  out.open_group("Ovens");
  for (std::size_t oven = 0; oven < day.workplace.ovens.size(); ++oven) {
    std::vector<Stretch> bars;
    for (const PlannedLoad& load : day.loads) {
      if (load.oven == oven) bars.push_back({load.in, load.out, letters.of(load.recipe)});
    }
    std::string name = day.workplace.ovens[oven].name;
    if (bars.empty()) out.add({words(name), words(drawn({}, scale))});
    for (const std::vector<Stretch>& lane : lanes_of(bars)) {
      out.add({words(name), words(drawn(lane, scale))});
      name.clear();
    }
  }
  if (!day.people.empty()) out.open_group("People");
  for (std::size_t person = 0; person < day.people.size(); ++person) {
    std::vector<Stretch> bars;
    for (const PlannedWork& work : day.works) {
      if (std::find(work.persons.begin(), work.persons.end(), person) != work.persons.end()) {
        bars.push_back({work.begin, work.begin + work.hands, letters.of(work.recipe)});
      }
    }
    out.add({words(person_text(day.people[person])), words(drawn(bars, scale))});
  }
  out.notes = letters.legend();
  out.notes.push_back("A sign is " + std::to_string(scale.step.count()) +
                      " min, and stands where any of it is taken.");
  return out;
}

}  // namespace platewright
