// SPDX-License-Identifier: MIT
#pragma once
// From the weight as purchased to the weight served, and back up.

#include <algorithm>
#include <iterator>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/quantity/quantity.hpp"
#include "platewright/yield/detail/own_rungs.hpp"
#include "platewright/yield/rung.hpp"

namespace platewright {

/// The weight at one stage of a ladder.
struct LadderStep {
  Stage stage = Stage::purchased;
  Mass mass;
  /// Of the weight at the ladder's first stage.
  Rational share = 1;
  /// The rung that led here; none at the first stage.
  std::optional<Rung> rung;
};

/// A chain of rungs, each of which begins where the one before it ends; stages may be skipped.
/// Down: out = in x y1 x y2 x ...; up: in = out / (y1 x y2 x ...). The two are exact inverses.
class Ladder {
 public:
  /// For goods that lose and gain nothing: every stage is there and weighs the same.
  static Ladder nothing_lost() { return Ladder(); }

  /// Nothing is lost.
  Ladder() = default;

  /// Throws Failure for no rungs, for what `check_rung` refuses, for a rung that does not begin
  /// where the one before it ends, and for a loss that two rungs hold. `bought_with` is what the
  /// goods hold at the first stage beside what is eaten: bone, shell.
  explicit Ladder(std::vector<Rung> rungs, std::vector<Loss> bought_with = {})
      : rungs_(std::move(rungs)), bought_with_(std::move(bought_with)) {
    if (rungs_.empty()) throw Failure(problems::ladder_empty());
    for (auto rung = rungs_.begin(); rung != rungs_.end(); ++rung) {
      check_rung(*rung);
      if (rung == rungs_.begin()) continue;
      check_joined(*std::prev(rung), *rung);
      for (auto before = rungs_.begin(); before != rung; ++before) check_losses(*before, *rung);
    }
  }

  const std::vector<Rung>& rungs() const { return rungs_; }

  /// What the weight at the last stage still holds beside what is eaten: the bone, in a row that
  /// ends at the oven. A portion of such a weight is weighed with it. A rung that goes as far as
  /// the carving and names no loss is taken to hold all of them.
  std::vector<Loss> still_held() const {
    std::vector<Loss> held;
    const bool all_taken_out = std::any_of(rungs_.begin(), rungs_.end(), [](const Rung& rung) {
      return rung.to >= Stage::carved && rung.holds.empty();
    });
    for (const Loss loss : bought_with_) {
      if (!all_taken_out && !holds(loss)) held.push_back(loss);
    }
    return held;
  }

  /// Whether one of the rungs accounts for this loss.
  bool holds(Loss loss) const {
    return std::any_of(rungs_.begin(), rungs_.end(), [&](const Rung& rung) {
      return std::find(rung.holds.begin(), rung.holds.end(), loss) != rung.holds.end();
    });
  }

  bool loses_nothing() const { return rungs_.empty(); }

  Stage first() const { return rungs_.empty() ? Stage::purchased : rungs_.front().from; }
  Stage last() const { return rungs_.empty() ? Stage::served : rungs_.back().to; }

  bool has(Stage stage) const {
    return rungs_.empty() || stage == first() ||
           std::any_of(rungs_.begin(), rungs_.end(),
                       [&](const Rung& rung) { return rung.to == stage; });
  }

  /// The yield between two stages, `from` not below `to`; 1 where they are the same. Throws Failure
  /// for a stage that the ladder does not have, and for stages in the wrong order.
  Rational yield_between(Stage from, Stage to) const {
    check_has(from);
    check_has(to);
    if (to < from) throw Failure(problems::stages_out_of_order(name_of(from), name_of(to)));
    Rational yield = 1;
    for (const Rung& rung : rungs_) {
      if (rung.from >= from && rung.to <= to) yield *= rung.yield;
    }
    return yield;
  }

  /// The yield of the whole ladder.
  Rational yield() const { return yield_between(first(), last()); }

  /// What `mass` at `from` weighs at the later stage `to`. Throws as `yield_between` does.
  Mass down(const Mass& mass, Stage from, Stage to) const { return mass * yield_between(from, to); }
  /// The whole way down, from the first stage to the last.
  Mass down(const Mass& mass) const { return mass * yield(); }

  /// What `mass` at `from` weighed at the earlier stage `to`. Throws as `yield_between` does.
  Mass up(const Mass& mass, Stage from, Stage to) const { return mass / yield_between(to, from); }
  /// The whole way up, from the last stage to the first.
  Mass up(const Mass& mass) const { return mass / yield(); }

  /// The weight at each stage of the ladder, when `mass` is at its first. Where nothing is lost
  /// these are the first stage and the last.
  std::vector<LadderStep> walk(const Mass& mass) const {
    std::vector<LadderStep> steps{{first(), mass, 1, std::nullopt}};
    if (rungs_.empty()) steps.push_back({last(), mass, 1, std::nullopt});
    for (const Rung& rung : rungs_) {
      const LadderStep& above = steps.back();
      steps.push_back({rung.to, above.mass * rung.yield, above.share * rung.yield, rung});
    }
    return steps;
  }

  /// The share of the first stage's weight that is there at `stage`. A stage between the ends of a
  /// rung counts at its end where some of its loss is gone by then (`lost_by`), and at its
  /// beginning otherwise; one behind the last stage counts as the last, and all do where nothing is
  /// lost.
  Rational share_at(Stage stage) const {
    Rational share = 1;
    for (const Rung& rung : rungs_) {
      if (rung.to <= stage || (rung.from < stage && lost_by(rung, stage))) share *= rung.yield;
    }
    return share;
  }

  /// The same ladder with the cook's own rungs, wherever they belong. Those that join each other
  /// stand in place of all rungs between their ends and hold what those held, whatever stages they
  /// have themselves; they go on behind the last stage. A rung that goes on as far as the carving
  /// holds that, and what was still in the weight: who carves takes the bone out; one that goes on
  /// to the oven holds the cooking. Where nothing is lost so far they are the ladder. `holds` and
  /// `own` of `tests` are not read. Throws Failure for ends that are inside a rung of the ladder,
  /// as the constructor does, and for a yield above 100 % (1000 % where a rung takes up water, or
  /// no rung says what is lost).
  Ladder with_own_rungs(std::vector<Rung> tests) const {
    std::stable_sort(tests.begin(), tests.end(),
                     [](const Rung& left, const Rung& right) { return left.from < right.from; });
    Ladder out = *this;
    while (!tests.empty()) out = out.with_chain(detail::take_joined(tests), loses_nothing());
    return out;
  }

  /// The same with one own rung, without a word on how far its samples lie apart.
  Ladder with_own_rung(Stage from, Stage to, const Rational& yield, Source source) const {
    return with_own_rungs({Rung{from, to, yield, {}, {}, {}, std::move(source), true}});
  }

  /// The same ladder, longer by the cook's own rung, which begins at its last stage. Throws Failure
  /// as the constructor does.
  Ladder with_further_rung(Rung rung) const {
    std::vector<Rung> rungs = rungs_;
    rungs.push_back(std::move(rung));
    return Ladder(std::move(rungs), bought_with_);
  }

  friend bool operator==(const Ladder&, const Ladder&) = default;

 private:
  static void check_joined(const Rung& above, const Rung& below) {
    if (below.from < above.to) {
      throw Failure(problems::stages_out_of_order(name_of(above.to), name_of(below.from)));
    }
    if (below.from != above.to) {
      throw Failure(problems::rungs_not_joined(name_of(above.to), name_of(below.from)));
    }
  }

  static void check_losses(const Rung& above, const Rung& below) {
    for (const Loss loss : below.holds) {
      if (std::find(above.holds.begin(), above.holds.end(), loss) != above.holds.end()) {
        throw Failure(problems::loss_held_twice(name_of(loss), words_for(above), words_for(below)));
      }
    }
  }

  void check_has(Stage stage) const {
    if (has(stage)) return;
    std::string stages(name_of(first()));
    for (const Rung& rung : rungs_) stages += ", " + std::string(name_of(rung.to));
    throw Failure(problems::stage_missing(name_of(stage), stages, rungs_to_write(stage)));
  }

  /// The rungs with which the ladder would have the stage.
  std::string rungs_to_write(Stage stage) const {
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

  /// `chain` joins. `water`: nothing was lost before the cook's own rungs.
  Ladder with_chain(std::vector<Rung> chain, bool water) const {
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

  std::vector<Rung> rungs_;
  std::vector<Loss> bought_with_;
};

}  // namespace platewright
