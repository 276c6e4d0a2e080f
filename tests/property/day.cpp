// SPDX-License-Identifier: MIT
// A plan of a day keeps to what the recipes and the kitchen say, whatever they say.

#include <rapidcheck.h>

#include <algorithm>
#include <map>
#include <set>

#include "platewright/day/plan_day.hpp"
#include "support/catch.hpp"
#include "support/change_each.hpp"
#include "support/random_kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

std::int64_t random_count(std::int64_t least, std::int64_t most) {
  return *rc::gen::inRange<std::int64_t>(least, most + 1);
}

Duration minutes_of(std::int64_t minutes) {
  return Duration::of(Rational(minutes), units::minute);
}

MethodStep random_step() {
  MethodStep out;
  out.text = "a step";
  const std::int64_t least = random_count(0, 12) * 5;
  out.takes = TimeSpan{minutes_of(least), minutes_of(least + random_count(0, 24) * 5)};
  if (*rc::gen::arbitrary<bool>()) {
    out.control = StepControl{*rc::gen::element(StepKind::hold_hot, StepKind::simmer,
                                                StepKind::carve, StepKind::dry_salt)};
  }
  if (*rc::gen::arbitrary<bool>()) out.needs.hands = minutes_of(random_count(1, 40));
  if (*rc::gen::inRange(0, 4) == 0) out.needs.role = "cook";
  return out;
}

/// Steps, the oven among them as a rule, in pans that hold some portions.
void make_it_cook(Recipe& recipe) {
  const std::int64_t before = random_count(0, 2);
  for (std::int64_t i = 0; i < before; ++i) recipe.steps.push_back(random_step());
  if (*rc::gen::inRange(0, 4) > 0) {
    recipe.vessel = RecipeVessel{"pan", std::nullopt, Rational(random_count(5, 20)), ""};
    const std::int64_t settings = random_count(1, 2);
    for (std::int64_t i = 0; i < settings; ++i) {
      recipe.oven.push_back({Temperature::fahrenheit(*rc::gen::element(325, 375)),
                             minutes_of(random_count(1, 12) * 5), std::nullopt});
    }
    MethodStep roast;
    roast.text = "the oven";
    roast.oven = true;
    recipe.steps.push_back(roast);
    if (*rc::gen::arbitrary<bool>()) recipe.rest = minutes_of(random_count(1, 6) * 5);
  }
  const std::int64_t after = random_count(0, 3);
  for (std::int64_t i = 0; i < after; ++i) recipe.steps.push_back(random_step());
  for (MethodStep& step : recipe.steps) {
    if (!recipe.lines.empty() && *rc::gen::arbitrary<bool>()) {
      step.uses.push_back((*rc::gen::elementOf(recipe.lines)).name);
    }
  }
}

Workplace random_workplace() {
  Workplace out;
  const std::int64_t ovens = random_count(0, 3);
  for (std::int64_t i = 0; i < ovens; ++i) {
    out.ovens.push_back(Oven{"oven", PanSpace{random_count(1, 6), "pan", {}}});
  }
  if (*rc::gen::arbitrary<bool>()) out.hobs = random_count(1, 3);
  for (const char* role : {"cook", "helper"}) {
    if (!*rc::gen::arbitrary<bool>()) continue;
    Crew crew{role, random_count(1, 3), {}, {}};
    if (*rc::gen::arbitrary<bool>()) {
      crew.hours = {std::chrono::minutes(random_count(0, 23) * 60),
                    std::chrono::minutes(random_count(1, 24) * 60)};
    }
    out.people.push_back(crew);
  }
  return out;
}

struct RandomDay {
  TestKitchen kitchen = random_kitchen();
  Event event;
  Workplace workplace = random_workplace();
};

RandomDay random_day() {
  RandomDay out;
  change_each(out.kitchen.book.recipes, [&](Recipe& recipe) { make_it_cook(recipe); });
  out.event.name = "a day";
  out.event.at = read_local_time("2027-10-09 18:00");
  out.event.guests = {{"guests", random_count(1, 60)}};
  std::set<std::string> menu;
  const std::int64_t dishes = random_count(1, 4);
  for (std::int64_t i = 0; i < dishes; ++i) {
    menu.insert("recipe " + std::to_string(random_count(0, 5)));
  }
  for (const std::string& name : menu) out.event.menu.push_back({name, 1, {}});
  return out;
}

/// The works of one recipe that is made at one size alone, in their order.
std::vector<PlannedWork> works_of(const DayPlan& plan, const std::string& recipe) {
  std::vector<PlannedWork> out;
  for (const PlannedWork& work : plan.works) {
    if (work.recipe == recipe) out.push_back(work);
  }
  std::sort(out.begin(), out.end(), [](const PlannedWork& left, const PlannedWork& right) {
    return left.number < right.number;
  });
  return out;
}

bool left_out(const DayPlan& plan, const std::string& recipe) {
  return std::any_of(plan.ovens_short.begin(), plan.ovens_short.end(), [&](const OvensShort& one) {
    return std::find(one.left_out.begin(), one.left_out.end(), recipe) != one.left_out.end();
  });
}

/// Each work begins where the one before it ends, and takes what its step allows; what is in the
/// oven in several loads waits between them.
void check_chain(const ScaledRecipe& scaled, const std::string& name, Instant ready,
                 const DayPlan& plan) {
  const std::vector<Work> written = work_of(scaled);
  const std::vector<PlannedWork> planned = works_of(plan, name);
  RC_ASSERT(planned.size() == written.size());
  Instant last_out = Instant::min();
  for (const PlannedLoad& load : plan.loads) {
    if (load.recipe == name) last_out = std::max(last_out, load.out);
  }
  for (std::size_t i = 0; i < planned.size(); ++i) {
    const Instant end = i + 1 < planned.size() ? planned[i + 1].begin : ready;
    RC_ASSERT(planned[i].end == end);
    const bool last_in_oven = written[i].kind == WorkKind::oven &&
                              (i + 1 == planned.size() || written[i + 1].kind != WorkKind::oven);
    if (last_in_oven && last_out != Instant::min()) {
      RC_ASSERT(end == last_out);
    } else {
      RC_ASSERT(end - planned[i].begin >= written[i].least);
      RC_ASSERT(end - planned[i].begin <= written[i].most);
    }
  }
}

std::int64_t racks_taken(const DayPlan& plan, std::size_t oven, Instant at) {
  std::int64_t out = 0;
  for (const PlannedLoad& load : plan.loads) {
    if (load.oven == oven && load.in <= at && at < load.out) out += load.racks;
  }
  return out;
}

/// What a load sets its oven to, if it is in it then.
std::optional<Temperature> setting_at(const PlannedLoad& load, Instant at) {
  if (at < load.in || at >= load.out) return std::nullopt;
  Instant until = load.in;
  for (const OvenStep& step : load.settings) {
    until +=
        std::chrono::minutes(static_cast<std::int64_t>(ceiling_of(step.time->in(units::minute))));
    if (at < until) return step.oven;
  }
  return std::nullopt;
}

/// Minute by minute: no oven holds more than it has racks, or has two temperatures at once.
void check_ovens(const DayPlan& plan) {
  for (const PlannedLoad& load : plan.loads) {
    for (Instant at = load.in; at < load.out; at += std::chrono::minutes(1)) {
      RC_ASSERT(racks_taken(plan, load.oven, at) <=
                static_cast<std::int64_t>(ceiling_of(plan.workplace.ovens[load.oven].racks.holds)));
      for (const PlannedLoad& other : plan.loads) {
        if (other.oven != load.oven) continue;
        const auto set = setting_at(other, at);
        RC_ASSERT(!set || *set == *setting_at(load, at));
      }
    }
  }
}

void check_pans(const ScaledRecipe& scaled, const std::string& name, const DayPlan& plan) {
  if (plan.workplace.ovens.empty() || scaled.recipe->oven.empty() || left_out(plan, name)) return;
  std::int64_t pans = 0;
  for (const PlannedLoad& load : plan.loads) {
    if (load.recipe == name) pans += load.pans;
  }
  RC_ASSERT(Rational(pans) == scaled.plan.vessels->count);
}

/// Nobody does two things at once, what is not theirs, or outside their hours.
void check_people(const DayPlan& plan) {
  std::map<std::size_t, std::vector<std::pair<Instant, Instant>>> busy;
  std::size_t works_short = 0;
  for (const PlannedWork& work : plan.works) {
    const std::set<std::size_t> persons(work.persons.begin(), work.persons.end());
    RC_ASSERT(persons.size() == work.persons.size());
    for (const std::size_t person : persons) {
      busy[person].emplace_back(work.begin, work.begin + work.hands);
      RC_ASSERT(work.role.empty() || plan.people[person].role == work.role);
      for (Instant at = work.begin; at < work.begin + work.hands; at += std::chrono::minutes(1)) {
        const LocalTime local = plan.zone.local(at);
        RC_ASSERT(
            plan.people[person].hours.covers(local - std::chrono::floor<std::chrono::days>(local)));
      }
    }
    if (!plan.people.empty() && work.persons.size() < work.people) ++works_short;
  }
  RC_ASSERT(works_short == plan.hands_short.size());
  for (auto& [person, times] : busy) {
    std::sort(times.begin(), times.end());
    for (std::size_t i = 1; i < times.size(); ++i) {
      RC_ASSERT(times[i - 1].second <= times[i].first);
    }
  }
}

const SubRecipePlan* find_sub(const Production& production, const std::string& name) {
  for (const SubRecipePlan& sub : production.sub_recipes) {
    if (sub.scaled.recipe->name == name) return &sub;
  }
  return nullptr;
}

/// When a recipe that others use is first used: by a step that says so, or else when its user is
/// begun; one that nothing is done for is begun when it is ready.
Instant used_at(const SubRecipePlan& sub, const Production& production, const DayPlan& plan) {
  const std::string& name = sub.scaled.recipe->name;
  Instant out = plan.served;
  for (const std::string& user : sub.used_by) {
    const SubRecipePlan* above = find_sub(production, user);
    const Recipe* recipe = above == nullptr ? nullptr : above->scaled.recipe;
    for (const DishPlan& dish : production.dishes) {
      if (dish.scaled.recipe->name == user) recipe = dish.scaled.recipe;
    }
    const std::vector<PlannedWork> works = works_of(plan, user);
    std::optional<Instant> used;
    for (const PlannedWork& work : works) {
      if (work.kind != WorkKind::step) continue;
      const std::vector<std::string>& uses = recipe->steps[work.step - 1].uses;
      if (!used && std::find(uses.begin(), uses.end(), name) != uses.end()) used = work.begin;
    }
    if (!used && !works.empty()) used = works.front().begin;
    if (!used) used = above == nullptr ? plan.served : used_at(*above, production, plan);
    out = std::min(out, *used);
  }
  return out;
}

}  // namespace

TEST_CASE("a plan of a day keeps to its recipes, its ovens and its people") {
  CHECK(rc::check([] {
    const RandomDay day = random_day();
    const Production production = plan_production(day.event, day.kitchen.book, day.kitchen.prices);
    const DayPlan plan = plan_day(day.event, production, day.workplace);
    std::map<std::string, int> times_made;
    for (const DishPlan& dish : production.dishes) ++times_made[dish.scaled.recipe->name];
    for (const SubRecipePlan& sub : production.sub_recipes) ++times_made[sub.scaled.recipe->name];
    const bool once = std::all_of(times_made.begin(), times_made.end(),
                                  [](const auto& item) { return item.second == 1; });
    if (once) {
      for (const DishPlan& dish : production.dishes) {
        check_chain(dish.scaled, dish.scaled.recipe->name, plan.served, plan);
        check_pans(dish.scaled, dish.scaled.recipe->name, plan);
      }
      for (const SubRecipePlan& sub : production.sub_recipes) {
        check_chain(sub.scaled, sub.scaled.recipe->name, used_at(sub, production, plan), plan);
        check_pans(sub.scaled, sub.scaled.recipe->name, plan);
      }
    }
    check_ovens(plan);
    check_people(plan);
  }));
}

TEST_CASE("no step is planned outside its bounds on the timeline") {
  CHECK(rc::check([] {
    const RandomDay day = random_day();
    const Production production = plan_production(day.event, day.kitchen.book, day.kitchen.prices);
    Timeline timeline = make_timeline(day.event, production, Order{});
    set_planned(plan_day(day.event, production, day.workplace), timeline);
    for (const TimelineEntry& entry : timeline.entries) {
      if (!entry.planned) continue;
      RC_ASSERT(*entry.planned <= entry.latest);
      if (entry.earliest) RC_ASSERT(*entry.planned >= *entry.earliest);
    }
  }));
}

namespace {

bool may_stand(const std::vector<OvenRoom>& rooms, const std::vector<OvenTask>& tasks,
               const std::vector<OvenLoad>& loads, Minute from, Minute until) {
  for (Minute minute = from; minute < until; ++minute) {
    for (std::size_t oven = 0; oven < rooms.size(); ++oven) {
      std::int64_t racks = 0;
      std::optional<Temperature> at;
      for (const OvenLoad& load : loads) {
        const OvenTask& task = tasks[load.task];
        if (load.oven != oven || minute < load.begins) continue;
        if (minute >= load.begins + task.lasts()) continue;
        const Temperature wanted = task.settings.front().at;
        if (at && !(*at == wanted)) return false;
        at = wanted;
        racks += load.racks;
      }
      if (racks > rooms[oven].racks) return false;
    }
  }
  return true;
}

/// Every way to put one load of each task at each minute of the grid, one after another.
bool any_way(const std::vector<OvenRoom>& rooms, const std::vector<OvenTask>& tasks,
             std::vector<OvenLoad> loads, std::size_t next) {
  if (next == tasks.size()) return may_stand(rooms, tasks, loads, 0, 400);
  const OvenTask& task = tasks[next];
  for (Minute begins = task.latest; begins >= task.soonest; begins -= day_grid) {
    for (std::size_t oven = 0; oven < rooms.size(); ++oven) {
      std::vector<OvenLoad> more = loads;
      more.push_back({next, oven, begins, task.pans, task.pans});
      if (any_way(rooms, tasks, more, next + 1)) return true;
    }
  }
  return false;
}

}  // namespace

// One load each, so that all ways can be walked; no time to change, so that only what stands in an
// oven at one minute counts.
// What is found beside may be in several loads.
TEST_CASE("a way of loading is found where there is one with a load for each dish") {
  CHECK(rc::check([] {
    const std::vector<OvenRoom> rooms(static_cast<std::size_t>(random_count(1, 2)), OvenRoom{3, 0});
    std::vector<OvenTask> tasks(static_cast<std::size_t>(random_count(1, 4)));
    std::vector<std::size_t> all;
    for (OvenTask& task : tasks) {
      all.push_back(all.size());
      task.latest = 100 + random_count(0, 10) * 5;
      task.soonest = task.latest - random_count(0, 4) * 5;
      task.settings = {
          {random_count(2, 8) * 5, Temperature::fahrenheit(*rc::gen::element(325, 375))}};
      task.pans = *rc::gen::element<std::int64_t>(1, 2, 3);
      task.on_a_rack.assign(rooms.size(), 1);
      task.racks_high.assign(rooms.size(), 1);
    }
    const FoundLoads found = find_loads(rooms, tasks, all);
    const bool there_is = any_way(rooms, tasks, {}, 0);
    if (there_is) RC_ASSERT(found.loads.has_value());
    if (found.loads) {
      RC_ASSERT(may_stand(rooms, tasks, *found.loads, 0, 400));
      std::map<std::size_t, std::int64_t> pans;
      for (const OvenLoad& load : *found.loads) {
        pans[load.task] += load.pans;
        RC_ASSERT(load.begins <= tasks[load.task].latest);
        RC_ASSERT(load.begins >= tasks[load.task].soonest);
      }
      for (std::size_t i = 0; i < tasks.size(); ++i) RC_ASSERT(pans[i] == tasks[i].pans);
    }
  }));
}
