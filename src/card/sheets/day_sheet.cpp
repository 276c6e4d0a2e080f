// SPDX-License-Identifier: MIT
#include "platewright/card/day_sheet.hpp"

#include <algorithm>
#include <map>

#include "card/sheets/day_picture.hpp"
#include "card/sheets/recipe_card_parts.hpp"
#include "card/sheets/shared.hpp"
#include "card/sheets/step_boxes.hpp"
#include "platewright/costing/day_text.hpp"
#include "platewright/day/day_warnings.hpp"
#include "platewright/event/local_time.hpp"

namespace platewright {
namespace {

std::string clock_of(const DayPlan& day, const Instant& instant) {
  return clock_text(day.zone.local(instant));
}

std::string date_of(const DayPlan& day, const Instant& instant) {
  const LocalTime local = day.zone.local(instant);
  return weekday_text(local) + " " + date_text(local).substr(5);
}

/// `Sat 10-09 14:40`.
std::string moment_of(const DayPlan& day, const Instant& instant) {
  return date_of(day, instant) + " " + clock_of(day, instant);
}

std::string span_of(const DayPlan& day, const Instant& begin, const Instant& end) {
  return moment_of(day, begin) + " to " + clock_of(day, end);
}

void add_ovens_short(const DayPlan& day, Box& box) {
  for (const OvensShort& one : day.ovens_short) {
    box.lines.push_back("Ovens, " + moment_of(day, one.from) + " to " + clock_of(day, one.until) +
                        ": no room at their temperatures for " + detail::names_of(one.recipes) +
                        (one.looked_at_all ? "." : ", as far as ways of loading were looked at."));
    box.lines.push_back("Without an oven in this plan: " + detail::names_of(one.left_out) + ".");
    box.lines.emplace_back("Any one of these would do:");
    for (const std::string& way : ways_out(one, card::step_figures().time))
      box.lines.push_back("- " + way);
  }
}

Box short_box(const DayPlan& day) {
  Box box{"short", "THE DAY DOES NOT FIT", {}};
  add_ovens_short(day, box);
  for (const HandsShort& one : day.hands_short) {
    box.lines.push_back("Hands, " + span_of(day, one.begin, one.end) + ": " + one.recipe +
                        ", step " + std::to_string(one.step) + ", takes " +
                        people_words(one.wanted, one.role) + "; free: " + std::to_string(one.free) +
                        ".");
    box.lines.push_back("What would do: " + way_out(one, day.people) + ".");
  }
  for (const SpaceShort& one : day.space_short) {
    box.lines.push_back("More " + std::string(words_of(one.space)) + " than there is room, " +
                        span_of(day, one.begin, one.end) + ": " +
                        as_short_decimal(one.wanted, 0, Rounding::up) + " of " +
                        as_short_decimal(one.there, 0, Rounding::down) + " places, by " +
                        detail::names_of(one.recipes) + ".");
  }
  return box;
}

Box not_said_box(const DayPlan& day) {
  Box box{"not_said", "NOT SAID", {}};
  for (const DayNotSaid& one : day.not_said) {
    const NotSaidWords words = words_of(one.what);
    box.lines.push_back(one.recipe + " " + std::string(words.what) + ": " +
                        std::string(words.meanwhile) + ".");
  }
  return box;
}

/// `6 x full-size hotel pan, 6 of 10 racks`.
std::string load_text(const PlannedLoad& load, const Oven& oven) {
  const std::string racks =
      std::to_string(load.racks) + " of " + as_short_decimal(oven.racks.holds, 0) + " racks";
  if (load.pans == 0) return "the whole oven";
  return std::to_string(load.pans) + " x " + load.pan + ", " + racks;
}

/// `450 °F for 25 min, then 325 °F until 130 °F inside, about 1 h 30 min`.
std::string settings_text(const std::vector<OvenStep>& settings) {
  std::string out;
  for (const OvenStep& setting : settings) {
    out += (out.empty() ? "" : ", then ") + fahrenheit_text(setting.oven, Rounding::half_up);
    if (setting.until) out += " until " + fahrenheit_text(*setting.until, Rounding::up) + " inside";
    if (setting.time) {
      out += (setting.until ? ", about " : " for ") +
             duration_text(setting.time->in(units::minute), Rounding::half_up);
    }
  }
  return out;
}

Table oven_table(const DayPlan& day) {
  Table out{"ovens",
            "Ovens",
            {words_column("in", "In"), words_column("out", "Out"), words_column("recipe", "What"),
             words_column("load", "Load"), words_column("settings", "Oven"), data_column("oven"),
             data_column("in_at"), data_column("out_at")},
            {},
            {},
            {"Out: when it is likely to be done; the thermometer decides. Heat an oven before its "
             "first load."}};
  for (std::size_t oven = 0; oven < day.workplace.ovens.size(); ++oven) {
    const Oven& one = day.workplace.ovens[oven];
    out.open_group(one.name + (one.fan ? " (fan)" : ""));
    for (const PlannedLoad& load : day.loads) {
      if (load.oven != oven) continue;
      const std::string part =
          load.of == 1 ? ""
                       : ", load " + std::to_string(load.number) + " of " + std::to_string(load.of);
      out.add({words(moment_of(day, load.in)), words(clock_of(day, load.out)),
               words(load.recipe + part), words(load_text(load, one)),
               words(settings_text(load.settings)), words(one.name),
               words(instant_text(load.in, day.zone)), words(instant_text(load.out, day.zone))});
    }
  }
  const bool waits = std::any_of(day.loads.begin(), day.loads.end(),
                                 [](const PlannedLoad& load) { return load.of > 1; });
  if (waits) {
    out.notes.emplace_back(
        "Of several loads the later ones stay cold, at 41 \u00B0F (5 \u00B0C) or below, until "
        "their turn; the earlier ones are held at 135 \u00B0F (57 \u00B0C) or above until the last "
        "is out (FDA Food Code 2022, 3-501.16). Local codes come first.");
  }
  return out;
}

/// A step; not one that this plan has no time left for, as a holding that may be 0 min.
bool is_done(const PlannedWork& work) {
  return work.kind == WorkKind::step && !(work.timed && work.begin == work.end);
}

Row work_row(const DayPlan& day, const PlannedWork& work) {
  const bool hands = work.hands.count() > 0;
  return {words(clock_of(day, work.begin)),
          words(hands ? clock_of(day, work.begin + work.hands) : ""), words(work.recipe),
          words(work.text), words(instant_text(work.begin, day.zone))};
}

/// By day, and on each by person; what takes no hands that are known, or has too few, comes last.
Table work_table(const DayPlan& day) {
  Table out{"work",
            "Who does what",
            {words_column("from", "From"), words_column("until", "Until"),
             words_column("recipe", "For"), words_column("what", "Do"), data_column("from_at")},
            {},
            {},
            {"Until: when the hands are free again. What no one is named for goes by itself or has "
             "too few people; somebody begins it."}};
  std::vector<std::string> days;
  for (const PlannedWork& work : day.works) {
    const std::string one = date_of(day, work.begin);
    if (std::find(days.begin(), days.end(), one) == days.end()) days.push_back(one);
  }
  const auto add_group = [&](const std::string& title, const std::string& on, auto&& whose) {
    std::vector<Row> rows;
    for (const PlannedWork& work : day.works) {
      if (!is_done(work) || date_of(day, work.begin) != on || !whose(work)) continue;
      rows.push_back(work_row(day, work));
    }
    if (rows.empty()) return;
    out.open_group(on + ": " + title);
    for (Row& row : rows) out.add(std::move(row));
  };
  for (const std::string& on : days) {
    for (std::size_t person = 0; person < day.people.size(); ++person) {
      add_group(person_text(day.people[person]), on, [&](const PlannedWork& work) {
        return std::find(work.persons.begin(), work.persons.end(), person) != work.persons.end();
      });
    }
    add_group("no one named", on, [](const PlannedWork& work) { return work.persons.empty(); });
  }
  return out;
}

/// `carrot, in batons: 39 lb (43 lb as purchased)`.
std::string line_taken(const ScaledLine& line, const KitchenView& kitchen) {
  const std::string amount = kitchen.measure(line.amount).text;
  const std::string bought = card::weight_as_purchased(line, kitchen).text;
  const bool more = !bought.empty() && bought != amount;
  return card::line_name(*line.line) + ": " + amount +
         (more ? " (" + bought + " as purchased)" : "");
}

std::string taken_out(const std::vector<std::string>& uses, const ScaledRecipe& scaled,
                      const KitchenView& kitchen) {
  std::string out;
  for (const std::string& name : uses) {
    for (const ScaledLine& line : scaled.lines) {
      if (line.line->name != name) continue;
      out += (out.empty() ? "" : "; ") + line_taken(line, kitchen);
    }
  }
  return out;
}

Table pull_table(const EventPlan& plan, const DayPlan& day, const KitchenView& kitchen) {
  Table out{"pull",
            "Pull list",
            {words_column("at", "At"), words_column("recipe", "For"),
             words_column("what", "Take out"), data_column("at_time")},
            {},
            {},
            {"Amounts are as the recipe uses them; what is trimmed or cooked first is taken as "
             "purchased.",
             "Take out of the cold room what is for the next work alone; raw meat stays at 41 "
             "\u00B0F (5 \u00B0C) or below until it is worked on (FDA Food Code 2022, 3-501.16)."}};
  for (const PlannedWork& work : day.works) {
    const ScaledRecipe* scaled = find_scaled(plan.production(), work.recipe);
    if (work.kind != WorkKind::step || scaled == nullptr) continue;
    const MethodStep& step = scaled->recipe->steps[work.step - 1];
    if (step.uses.empty()) continue;
    out.add({words(moment_of(day, work.begin)), words(work.recipe),
             words(taken_out(step.uses, *scaled, kitchen)),
             words(instant_text(work.begin, day.zone))});
  }
  return out;
}

struct RoleHours {
  Rational there;   ///< minutes on a day
  Rational busy;    ///< minutes of the plan
  Rational quoted;  ///< minutes
};

Cell minutes_cell(const Rational& time, Rounding rounding) {
  return time == 0 ? words("none") : duration_cell(time, rounding);
}

Table staff_table(const Event& event, const DayPlan& day) {
  std::vector<std::string> roles;
  std::map<std::string, RoleHours> hours;
  const auto role = [&](const std::string& name) -> RoleHours& {
    if (hours.count(name) == 0) roles.push_back(name);
    return hours[name];
  };
  for (const Person& person : day.people) {
    role(person.role).there += Rational(person.hours.length().count());
  }
  for (const PlannedWork& work : day.works) {
    for (const std::size_t person : work.persons) {
      role(day.people[person].role).busy += Rational(work.hands.count());
    }
  }
  for (const LabourLine& line : event.terms.labour) {
    role(line.role).quoted += line.workers * line.time.in(units::minute);
  }
  Table out{"staff",
            "People, here and in the quote",
            {words_column("role", "Role"), figures_column("there", "Hours a day"),
             figures_column("busy", "Hands"), figures_column("quoted", "In the quote"),
             words_column("note", "")},
            {},
            {},
            {"Hands: minutes of work in this plan, cleaning, serving and breaks not among them."}};
  for (const std::string& name : roles) {
    const RoleHours& one = hours[name];
    const bool lacking = event.has_terms && one.quoted < one.busy;
    out.add({words(name), minutes_cell(one.there, Rounding::down),
             minutes_cell(one.busy, Rounding::up),
             event.has_terms ? minutes_cell(one.quoted, Rounding::down) : words(""),
             words(lacking ? "QUOTE PAYS FOR LESS" : "")});
  }
  return out;
}

Paragraphs longest_line(const DayPlan& day) {
  Paragraphs out{"longest", "What has to begin first", {}};
  std::string line;
  for (const LineOfWork& one : day.longest) {
    line += (line.empty() ? "" : "; then ") + one.recipe + ", " + moment_of(day, one.begin) +
            " to " + moment_of(day, one.end);
  }
  const PlannedWork* longest = nullptr;
  for (const PlannedWork& work : day.works) {
    const bool on_line =
        std::any_of(day.longest.begin(), day.longest.end(),
                    [&](const LineOfWork& one) { return one.recipe == work.recipe; });
    if (!on_line || work.kind == WorkKind::rest) continue;
    if (longest == nullptr || longest->end - longest->begin < work.end - work.begin) {
      longest = &work;
    }
  }
  out.texts.push_back(line + ".");
  if (longest != nullptr) {
    out.texts.push_back(
        "Its longest work takes " +
        duration_text(Rational((longest->end - longest->begin).count()), Rounding::half_up) + ": " +
        (longest->kind == WorkKind::oven ? "the oven of " + longest->recipe : longest->text));
  }
  return out;
}

}  // namespace

std::vector<Box> day_boxes(const DayPlan& day) {
  std::vector<Box> out;
  if (!fits(day)) out.push_back(short_box(day));
  if (!day.not_said.empty()) out.push_back(not_said_box(day));
  return out;
}

Sheet day_sheet(const EventPlan& plan, const DayPlan& day, const KitchenView& kitchen) {
  Sheet sheet(SheetKind::day);
  sheet.title = "Plan of the day: " + plan.event().name;
  if (const std::string served = card::served_text(plan.event()); !served.empty()) {
    sheet.subtitles.push_back(served);
  }
  for (Box& box : day_boxes(day)) sheet.add(std::move(box));
  const bool ovens = !day.workplace.ovens.empty();
  if (ovens || !day.people.empty()) sheet.add(day_picture(day));
  if (ovens) sheet.add(oven_table(day));
  sheet.add(work_table(day));
  sheet.add(pull_table(plan, day, kitchen));
  if (!day.people.empty()) sheet.add(staff_table(plan.event(), day));
  if (!day.longest.empty()) sheet.add(longest_line(day));
  return sheet;
}

}  // namespace platewright
