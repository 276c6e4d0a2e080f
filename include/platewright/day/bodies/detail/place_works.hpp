// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/day/detail/place_works.hpp.

#include <algorithm>
#include <utility>

#include "platewright/day/detail/place_works.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY void WorkPlacer::place(RecipeChain& chain) {
  const std::size_t count = chain.works.size();
  chain.begins.assign(count, chain.ready);
  hired_.assign(count, {});
  settled_ = count;
  MinuteSpan next{chain.ready, chain.ready};
  for (std::size_t i = count; i-- > 0;) {
    if (chain.has_oven() && i + 1 == chain.oven_to) {
      i = chain.oven_from;
      place_oven(chain);
      next = {chain.first_load, chain.first_load};
      continue;
    }
    next = begin_of(chain, i, next);
    hired_[i].hands = hands_of(chain.works[i], *chain.scaled);
    if (hired_[i].hands.time.count() == 0 || people_.people().empty()) continue;
    const Minute begin = hire(chain, i, next);
    settle(chain, i, begin);
    next = {begin, begin};
  }
  if (settled_ > 0) settle(chain, 0, on_the_clock(next));
  for (std::size_t i = 0; i < count; ++i) report(chain, i);
}

PLATEWRIGHT_BODY MinuteSpan WorkPlacer::begin_of(const RecipeChain& chain, std::size_t work,
                                                 const MinuteSpan& next) {
  const Work& one = chain.works[work];
  MinuteSpan out{next.least - one.most.count(), next.most - one.least.count()};
  if (!chain.has_oven() || work < chain.oven_to) return out;
  const Minute pulled = chain.last_load + oven_time(chain);
  const MinuteSpan between = time_of_works(chain, chain.oven_to, work);
  out.least = std::max(out.least, pulled + between.least);
  out.most = std::min(out.most, pulled + between.most);
  return out;
}

PLATEWRIGHT_BODY void WorkPlacer::settle(RecipeChain& chain, std::size_t work, Minute begin) {
  Minute latest = settled_ < chain.works.size() ? chain.begins[settled_] : chain.ready;
  for (std::size_t i = settled_; i-- > work;) {
    latest -= chain.works[i].least.count();
    chain.begins[i] = latest;
  }
  if (work < settled_) chain.begins[work] = begin;
  for (std::size_t i = work; i + 1 < settled_; ++i) {
    chain.begins[i + 1] =
        std::min(chain.begins[i + 1], chain.begins[i] + chain.works[i].most.count());
  }
  settled_ = work;
}

PLATEWRIGHT_BODY void WorkPlacer::place_oven(RecipeChain& chain) {
  settle(chain, chain.oven_to, chain.last_load + oven_time(chain));
  Minute begin = chain.first_load;
  for (std::size_t i = chain.oven_from; i < chain.oven_to; ++i) {
    chain.begins[i] = begin;
    begin += chain.works[i].least.count();
  }
  settled_ = chain.oven_from;
}

PLATEWRIGHT_BODY Minute WorkPlacer::hire(const RecipeChain& chain, std::size_t number,
                                         const MinuteSpan& begins) {
  Hired& hired = hired_[number];
  const Minute time = hired.hands.time.count();
  const auto free_at = [&](Minute minute) {
    return people_.free_people(minute, minute + time, hired.hands.role, hired.hands.people,
                               chain.name());
  };
  Minute begin = on_the_clock(begins);
  hired.persons = free_at(begin);
  const Minute soonest = std::max(begins.least, begins.most - most_sooner);
  for (Minute sooner = begin - day_grid;
       hired.persons.size() < hired.hands.people && sooner >= soonest; sooner -= day_grid) {
    std::vector<std::size_t> free = free_at(sooner);
    if (free.size() < hired.hands.people) continue;
    begin = sooner;
    hired.persons = std::move(free);
  }
  people_.take(hired.persons, begin, begin + time, chain.name());
  return begin;
}

PLATEWRIGHT_BODY void WorkPlacer::report(const RecipeChain& chain, std::size_t number) {
  const Work& work = chain.works[number];
  const bool hired = work.kind == WorkKind::step;
  PlannedWork out;
  out.recipe = chain.name();
  out.for_others = !chain.used_by.empty();
  out.number = number;
  out.kind = work.kind;
  out.timed = work.takes.has_value();
  out.begin = Instant(std::chrono::minutes(chain.begins[number]));
  out.end = Instant(std::chrono::minutes(chain.end_of(number)));
  if (hired) {
    out.text = work.step->text;
    out.step = work.number;
    out.hands = hired_[number].hands.time;
    out.people = out.hands.count() > 0 ? hired_[number].hands.people : 0;
    out.role = hired_[number].hands.role;
    out.persons = hired_[number].persons;
  }
  if (!plan_.people.empty() && out.persons.size() < out.people) {
    plan_.hands_short.push_back({out.recipe, out.step, out.text, out.role, out.begin,
                                 out.begin + out.hands, out.people, out.persons.size(),
                                 work.step->place});
  }
  plan_.works.push_back(std::move(out));
}

}  // namespace platewright::detail
