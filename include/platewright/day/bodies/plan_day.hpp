// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/day/plan_day.hpp.

#include <algorithm>
#include <map>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include "platewright/day/plan_day.hpp"

namespace platewright {

namespace detail {

class DayPlanner {
 public:
  DayPlanner(const Event& event, const Production& production, const Workplace& workplace) {
    plan_.served = event.at->instant();
    plan_.zone = event.at->zone();
    plan_.workplace = workplace;
    plan_.people = persons_of(workplace.people);
    for (const DishPlan& dish : production.dishes) chains_.push_back(chain_of(dish.scaled, {}));
    dishes_ = chains_.size();
    // Users stand behind what they use.
    for (auto sub = production.sub_recipes.rbegin(); sub != production.sub_recipes.rend(); ++sub) {
      chains_.push_back(chain_of(sub->scaled, sub->used_by));
    }
    for (std::size_t i = 0; i < chains_.size(); ++i) by_name_[chains_[i].name()].push_back(i);
  }

  DayPlan run() {
    for (std::size_t i = 0; i < dishes_; ++i) {
      chains_[i].ready = plan_.served.time_since_epoch().count();
      dishes_in_order_.push_back(&chains_[i]);
    }
    // Those that can't move have the first choice of hands.
    std::stable_sort(
        dishes_in_order_.begin(), dishes_in_order_.end(),
        [](RecipeChain* left, RecipeChain* right) { return slack_of(*left) < slack_of(*right); });
    best_ = place();
    keep();
    look_for_ovens_sooner(look_for_an_order());
    cook_later_what_can();
    return std::move(best_);
  }

 private:
  /// How often hands are looked for anew, in either way.
  static constexpr int most_tries = 6;

  bool may_go_on(int tries) const {
    return tries < most_tries && !best_.hands_short.empty() && left_ > 0;
  }

  /// Nothing is cooked sooner than it has to be if another order alone will do. Gives the orders
  /// that were tried, the first among them.
  std::vector<std::vector<RecipeChain*>> look_for_an_order() {
    std::vector<std::vector<RecipeChain*>> out{dishes_in_order_};
    DayPlan last = best_;
    for (int tries = 0; may_go_on(tries); ++tries) {
      put_first_what_was_short(last);
      if (std::find(out.begin(), out.end(), dishes_in_order_) != out.end()) break;
      out.push_back(dishes_in_order_);
      last = place();
      keep_if_better(last);
    }
    return out;
  }

  /// What is short of hands in an order goes into the oven sooner, and sooner again.
  void look_for_ovens_sooner(const std::vector<std::vector<RecipeChain*>>& orders) {
    for (const std::vector<RecipeChain*>& order : orders) {
      dishes_in_order_ = order;
      for (RecipeChain* dish : order) dish->sooner = 0;
      for (int tries = 0; may_go_on(tries); ++tries) {
        const DayPlan plan = place();
        keep_if_better(plan);
        cook_sooner_what_was_short(plan);
      }
    }
    go_back_to_the_best();
  }

  void keep_if_better(const DayPlan& plan) {
    if (!is_better(plan, best_)) return;
    best_ = plan;
    keep();
  }

  /// The dishes in their order, then what they use.
  DayPlan place() {
    DayPlan out = plan_;
    OvenPlanner ovens(out.workplace, left_);
    std::vector<RecipeChain*> dishes;
    for (std::size_t i = 0; i < dishes_; ++i) dishes.push_back(&chains_[i]);
    ovens.place(dishes, out);
    PeopleOnDuty people(out.people, out.zone, named_roles());
    WorkPlacer works(people, out);
    for (RecipeChain* dish : dishes_in_order_) works.place(*dish);
    for (std::size_t i = dishes_; i < chains_.size(); ++i) {
      chains_[i].ready = user_of(chains_[i]).second;
      ovens.place({&chains_[i]}, out);
      works.place(chains_[i]);
    }
    find_shortages(chains_, out);
    find_longest_line(out);
    set_in_order(out);
    return out;
  }

  /// Fewer ovens that do not do, then fewer steps short of hands.
  static bool is_better(const DayPlan& left, const DayPlan& right) {
    const auto shortage = [](const DayPlan& plan) {
      return std::pair(plan.ovens_short.size(), plan.hands_short.size());
    };
    return shortage(left) < shortage(right);
  }

  static bool is_short(const RecipeChain& dish, const DayPlan& plan) {
    return std::any_of(plan.hands_short.begin(), plan.hands_short.end(),
                       [&](const HandsShort& one) { return one.recipe == dish.name(); });
  }

  void put_first_what_was_short(const DayPlan& plan) {
    std::stable_partition(dishes_in_order_.begin(), dishes_in_order_.end(),
                          [&](const RecipeChain* dish) { return is_short(*dish, plan); });
  }

  void cook_sooner_what_was_short(const DayPlan& plan) {
    for (RecipeChain* dish : dishes_in_order_) {
      if (dish->has_oven() && is_short(*dish, plan)) dish->sooner += 15;
    }
  }

  void keep() {
    best_order_ = dishes_in_order_;
    best_sooner_.clear();
    for (const RecipeChain* dish : best_order_) best_sooner_.push_back(dish->sooner);
  }

  void go_back_to_the_best() {
    dishes_in_order_ = best_order_;
    for (std::size_t i = 0; i < best_order_.size(); ++i) best_order_[i]->sooner = best_sooner_[i];
  }

  /// What was tried on the way to the best plan and turns out not to be needed is taken back.
  void cook_later_what_can() {
    for (RecipeChain* dish : dishes_in_order_) {
      const Minute sooner = std::exchange(dish->sooner, 0);
      if (sooner == 0) continue;
      DayPlan other = place();
      if (left_ <= 0) return;
      if (is_better(best_, other)) {
        dish->sooner = sooner;
      } else {
        best_ = std::move(other);
      }
    }
  }

  std::vector<std::string> named_roles() const {
    std::vector<std::string> out;
    for (const RecipeChain& chain : chains_) {
      for (const Work& work : chain.works) {
        if (work.step != nullptr && !work.step->needs.role.empty()) {
          out.push_back(work.step->needs.role);
        }
      }
    }
    return out;
  }

  /// Of those that use the recipe the one that needs it first, and when. All are placed already.
  std::pair<const RecipeChain*, Minute> user_of(const RecipeChain& chain) const {
    std::pair<const RecipeChain*, Minute> out{nullptr, 0};
    for (const std::string& name : chain.used_by) {
      for (const std::size_t user : by_name_.at(name)) {
        const Minute needed = needs_at(chains_[user], chain.name());
        if (out.first == nullptr || needed < out.second) out = {&chains_[user], needed};
      }
    }
    return out;
  }

  void find_longest_line(DayPlan& plan) const {
    if (chains_.empty()) return;
    const RecipeChain* chain = &*std::min_element(
        chains_.begin(), chains_.end(), [](const RecipeChain& left, const RecipeChain& right) {
          return left.begin() < right.begin();
        });
    while (chain != nullptr) {
      plan.longest.push_back({chain->name(), Instant(std::chrono::minutes(chain->begin())),
                              Instant(std::chrono::minutes(chain->ready))});
      chain = user_of(*chain).first;
    }
  }

  static void set_in_order(DayPlan& plan) {
    std::stable_sort(
        plan.works.begin(), plan.works.end(),
        [](const PlannedWork& left, const PlannedWork& right) { return left.begin < right.begin; });
    std::stable_sort(
        plan.loads.begin(), plan.loads.end(),
        [](const PlannedLoad& left, const PlannedLoad& right) { return left.in < right.in; });
    std::vector<DayNotSaid> once;
    for (const DayNotSaid& one : plan.not_said) {
      const bool known = std::any_of(once.begin(), once.end(), [&](const DayNotSaid& other) {
        return other.recipe == one.recipe && other.what == one.what;
      });
      if (!known) once.push_back(one);
    }
    plan.not_said = std::move(once);
  }

  DayPlan plan_;
  std::vector<RecipeChain> chains_;  ///< dishes first, then each behind all that use it
  std::size_t dishes_ = 0;
  std::int64_t left_ = 10 * most_load_trials;  ///< that the ovens of the whole day may try
  std::vector<RecipeChain*> dishes_in_order_ = {};
  DayPlan best_ = {};
  std::vector<RecipeChain*> best_order_ = {};  ///< of the dishes in the best plan
  std::vector<Minute> best_sooner_ = {};       ///< of them
  std::map<std::string, std::vector<std::size_t>> by_name_;
};

}  // namespace detail

PLATEWRIGHT_BODY DayPlan plan_day(const Event& event, const Production& production,
                                  const Workplace& workplace) {
  if (!event.at) throw Failure(at(problems::event_without_time(event.name), event.place));
  return detail::DayPlanner(event, production, workplace).run();
}

PLATEWRIGHT_BODY void set_planned(const DayPlan& plan, Timeline& timeline) {
  using Key = std::tuple<std::string, bool, std::size_t>;
  std::map<Key, Instant> begins;
  for (const PlannedWork& work : plan.works) {
    const auto [known, is_new] =
        begins.emplace(Key(work.recipe, work.for_others, work.number), work.begin);
    if (!is_new) known->second = std::min(known->second, work.begin);
  }
  for (TimelineEntry& entry : timeline.entries) {
    if (is_a_day(entry) || entry.kind == TimelineKind::serve) continue;
    const auto begin = begins.find(Key(entry.recipe, entry.for_others, entry.work));
    if (begin != begins.end()) entry.planned = begin->second;
  }
  std::stable_sort(timeline.entries.begin(), timeline.entries.end(),
                   [](const TimelineEntry& left, const TimelineEntry& right) {
                     return begin_of(left) < begin_of(right);
                   });
}

}  // namespace platewright
