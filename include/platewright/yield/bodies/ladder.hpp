// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/ladder.hpp.

#include <algorithm>
#include <iterator>
#include <utility>

#include "platewright/yield/ladder.hpp"

namespace platewright {

PLATEWRIGHT_BODY Ladder::Ladder(std::vector<Rung> rungs, std::vector<Loss> bought_with)
    : rungs_(std::move(rungs)), bought_with_(std::move(bought_with)) {
  if (rungs_.empty()) throw Failure(problems::ladder_empty());
  for (auto rung = rungs_.begin(); rung != rungs_.end(); ++rung) {
    check_rung(*rung);
    if (rung == rungs_.begin()) continue;
    check_joined(*std::prev(rung), *rung);
    for (auto before = rungs_.begin(); before != rung; ++before) check_losses(*before, *rung);
  }
}

PLATEWRIGHT_BODY std::vector<Loss> Ladder::still_held() const {
  std::vector<Loss> held;
  const bool all_taken_out = std::any_of(rungs_.begin(), rungs_.end(), [](const Rung& rung) {
    return rung.to >= Stage::carved && rung.holds.empty();
  });
  for (const Loss loss : bought_with_) {
    if (!all_taken_out && !holds(loss)) held.push_back(loss);
  }
  return held;
}

PLATEWRIGHT_BODY bool Ladder::holds(Loss loss) const {
  return std::any_of(rungs_.begin(), rungs_.end(), [&](const Rung& rung) {
    return std::find(rung.holds.begin(), rung.holds.end(), loss) != rung.holds.end();
  });
}

PLATEWRIGHT_BODY bool Ladder::has(Stage stage) const {
  return rungs_.empty() || stage == first() ||
         std::any_of(rungs_.begin(), rungs_.end(),
                     [&](const Rung& rung) { return rung.to == stage; });
}

PLATEWRIGHT_BODY Rational Ladder::yield_between(Stage from, Stage to) const {
  check_has(from);
  check_has(to);
  if (to < from) throw Failure(problems::stages_out_of_order(name_of(from), name_of(to)));
  Rational yield = 1;
  for (const Rung& rung : rungs_) {
    if (rung.from >= from && rung.to <= to) yield *= rung.yield;
  }
  return yield;
}

PLATEWRIGHT_BODY std::vector<LadderStep> Ladder::walk(const Mass& mass) const {
  std::vector<LadderStep> steps{{first(), mass, 1, std::nullopt}};
  if (rungs_.empty()) steps.push_back({last(), mass, 1, std::nullopt});
  for (const Rung& rung : rungs_) {
    const LadderStep& above = steps.back();
    steps.push_back({rung.to, above.mass * rung.yield, above.share * rung.yield, rung});
  }
  return steps;
}

PLATEWRIGHT_BODY Rational Ladder::share_at(Stage stage) const {
  Rational share = 1;
  for (const Rung& rung : rungs_) {
    if (rung.to <= stage || (rung.from < stage && lost_by(rung, stage))) share *= rung.yield;
  }
  return share;
}

PLATEWRIGHT_BODY Ladder Ladder::with_own_rungs(std::vector<Rung> tests) const {
  std::stable_sort(tests.begin(), tests.end(),
                   [](const Rung& left, const Rung& right) { return left.from < right.from; });
  Ladder out = *this;
  while (!tests.empty()) out = out.with_chain(detail::take_joined(tests), loses_nothing());
  return out;
}

PLATEWRIGHT_BODY Ladder Ladder::with_own_rung(Stage from, Stage to, const Rational& yield,
                                              Source source) const {
  return with_own_rungs({Rung{from, to, yield, {}, {}, {}, std::move(source), true}});
}

PLATEWRIGHT_BODY Ladder Ladder::with_further_rung(Rung rung) const {
  std::vector<Rung> rungs = rungs_;
  rungs.push_back(std::move(rung));
  return Ladder(std::move(rungs), bought_with_);
}

PLATEWRIGHT_BODY void Ladder::check_joined(const Rung& above, const Rung& below) {
  if (below.from < above.to) {
    throw Failure(problems::stages_out_of_order(name_of(above.to), name_of(below.from)));
  }
  if (below.from != above.to) {
    throw Failure(problems::rungs_not_joined(name_of(above.to), name_of(below.from)));
  }
}

PLATEWRIGHT_BODY void Ladder::check_losses(const Rung& above, const Rung& below) {
  for (const Loss loss : below.holds) {
    if (std::find(above.holds.begin(), above.holds.end(), loss) != above.holds.end()) {
      throw Failure(problems::loss_held_twice(name_of(loss), words_for(above), words_for(below)));
    }
  }
}

PLATEWRIGHT_BODY void Ladder::check_has(Stage stage) const {
  if (has(stage)) return;
  std::string stages(name_of(first()));
  for (const Rung& rung : rungs_) stages += ", " + std::string(name_of(rung.to));
  throw Failure(problems::stage_missing(name_of(stage), stages, rungs_to_write(stage)));
}

PLATEWRIGHT_BODY std::string Ladder::rungs_to_write(Stage stage) const {
  const auto text = [](Stage from, Stage to) {
    return "{from: " + std::string(name_of(from)) + ", to: " + std::string(name_of(to)) +
           ", yield: ...}";
  };
  if (stage > last()) return text(last(), stage);
  for (const Rung& rung : rungs_) {
    if (rung.to > stage && rung.from < stage) {
      return text(rung.from, stage) + " and " + text(stage, rung.to);
    }
  }
  return text(stage, first());
}

PLATEWRIGHT_BODY Ladder Ladder::with_chain(std::vector<Rung> chain, bool water) const {
  water = water || std::any_of(rungs_.begin(), rungs_.end(), takes_up_water);
  for (Rung& rung : chain) {
    rung.own = true;
    rung.holds.clear();
    check_rung(rung);
    check_yield_at_most(rung.yield, water);
  }
  const Stage from = chain.front().from;
  const Stage to = chain.back().to;
  if (rungs_.empty()) return Ladder(std::move(chain), bought_with_);
  if (from > first()) check_has(from);
  if (to < last()) check_has(to);
  std::vector<Rung> rungs;
  std::vector<Rung> replaced;
  for (const Rung& rung : rungs_) {
    (rung.to <= from || rung.from >= to ? rungs : replaced).push_back(rung);
  }
  detail::take_over(replaced, chain);
  detail::go_on(last(), still_held(), chain);
  const auto below =
      std::find_if(rungs.begin(), rungs.end(), [&](const Rung& rung) { return rung.from >= to; });
  rungs.insert(below, chain.begin(), chain.end());
  return Ladder(std::move(rungs), bought_with_);
}

}  // namespace platewright
