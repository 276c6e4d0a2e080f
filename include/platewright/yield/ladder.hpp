// SPDX-License-Identifier: MIT
#pragma once
// From the weight as purchased to the weight served, and back up.

#include <optional>
#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
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
  explicit Ladder(std::vector<Rung> rungs, std::vector<Loss> bought_with = {});

  const std::vector<Rung>& rungs() const { return rungs_; }

  /// What the weight at the last stage still holds beside what is eaten: the bone, in a row that
  /// ends at the oven. A portion of such a weight is weighed with it. A rung that goes as far as
  /// the carving and names no loss is taken to hold all of them.
  std::vector<Loss> still_held() const;

  /// Whether one of the rungs accounts for this loss.
  bool holds(Loss loss) const;

  bool loses_nothing() const { return rungs_.empty(); }

  Stage first() const { return rungs_.empty() ? Stage::purchased : rungs_.front().from; }
  Stage last() const { return rungs_.empty() ? Stage::served : rungs_.back().to; }

  bool has(Stage stage) const;

  /// The yield between two stages, `from` not below `to`; 1 where they are the same. Throws Failure
  /// for a stage that the ladder does not have, and for stages in the wrong order.
  Rational yield_between(Stage from, Stage to) const;

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
  std::vector<LadderStep> walk(const Mass& mass) const;

  /// The share of the first stage's weight that is there at `stage`. A stage between the ends of a
  /// rung counts at its end where some of its loss is gone by then (`lost_by`), and at its
  /// beginning otherwise; one behind the last stage counts as the last, and all do where nothing is
  /// lost.
  Rational share_at(Stage stage) const;

  /// The same ladder with the cook's own rungs, wherever they belong. Those that join each other
  /// stand in place of all rungs between their ends and hold what those held, whatever stages they
  /// have themselves; they go on behind the last stage. A rung that goes on as far as the carving
  /// holds that, and what was still in the weight: who carves takes the bone out; one that goes on
  /// to the oven holds the cooking. Where nothing is lost so far they are the ladder. `holds` and
  /// `own` of `tests` are not read. Throws Failure for ends that are inside a rung of the ladder,
  /// as the constructor does, and for a yield above 100 % (1000 % where a rung takes up water, or
  /// no rung says what is lost).
  Ladder with_own_rungs(std::vector<Rung> tests) const;

  /// The same with one own rung, without a word on how far its samples lie apart.
  Ladder with_own_rung(Stage from, Stage to, const Rational& yield, Source source) const;

  /// The same ladder, longer by the cook's own rung, which begins at its last stage. Throws Failure
  /// as the constructor does.
  Ladder with_further_rung(Rung rung) const;

  friend bool operator==(const Ladder&, const Ladder&) = default;

 private:
  static void check_joined(const Rung& above, const Rung& below);

  static void check_losses(const Rung& above, const Rung& below);

  void check_has(Stage stage) const;

  /// The rungs with which the ladder would have the stage.
  std::string rungs_to_write(Stage stage) const;

  /// `chain` joins. `water`: nothing was lost before the cook's own rungs.
  Ladder with_chain(std::vector<Rung> chain, bool water) const;

  std::vector<Rung> rungs_;
  std::vector<Loss> bought_with_;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/ladder.hpp"
#endif
