// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/check_answers.hpp.

#include <algorithm>
#include <optional>
#include <string>
#include <utility>

#include "platewright/worksheet/check_answers.hpp"

namespace platewright {

namespace detail {

/// True where `value`, rounded to the last place of the answer by the rule named, is the answer.
PLATEWRIGHT_BODY bool answers_to(const Answer& answer, const Figure& value,
                                 Rounding rounding = Rounding::half_up) {
  if (answer.value == value) return true;
  if (!answer.last_place) return false;
  const auto exact = ratio_of(value, *answer.last_place);
  const auto written = ratio_of(answer.value, *answer.last_place);
  return exact && written && round_to(*exact, 1, rounding) == *written;
}

/// The terms of a step as the student has them, and the answers that they come from.
struct OwnTerms {
  std::vector<Term> terms;
  std::vector<std::string> from;
};

/// Finds the slips that give an answer, and what it was rounded from.
class SlipFinder {
 public:
  SlipFinder(const WorkingStep& step, const Answer& answer) : step_(step), answer_(answer) {}

  /// Tries every slip that can be made on these terms.
  void try_on(const OwnTerms& own) {
    const auto value = worked(step_.operation, own.terms);
    if (!value) return;
    own_ = own.from;
    const bool cut = answers_to(answer_, *value, Rounding::down);
    if (cut) found(Astray::truncated, {}, *value);
    if (!cut && answers_to(answer_, *value, Rounding::up)) found(Astray::rounded_up, {}, *value);
    try_without_percent(*value);
    try_left_out(own.terms, *value);
    try_other_operation(own.terms);
    try_misread(own.terms, *value);
  }

  /// Tries the slips known of the step, and those in proportion to one of the student's figures.
  void try_known(const OwnFigures& own) {
    for (const KnownSlip& slip : step_.slips) {
      own_.clear();
      if (answers_to(answer_, slip.value)) {
        found(Astray::known_slip, slip.what, slip.value);
        continue;
      }
      const auto figure = own.find(slip.follows);
      if (figure == own.end()) continue;
      own_ = figure->second.from;
      for (const Figure& start : {figure->second.written, figure->second.unrounded}) {
        const auto value = in_proportion(slip, start);
        if (!value || !answers_to(answer_, *value)) continue;
        found(Astray::known_slip, slip.what, *value);
        break;
      }
    }
  }

  std::vector<FoundSlip> take() { return std::move(slips_); }
  bool found_none() const { return slips_.empty(); }
  /// What the plainest slip comes to; the answer itself where none was found.
  Figure unrounded() const { return value_.value_or(answer_.value); }

 private:
  void found(Astray astray, std::string what, const Figure& value) {
    if (!value_) value_ = value;
    slips_.push_back({astray, std::move(what), own_});
  }

  void try_without_percent(const Figure& value) {
    const auto* share = std::get_if<Rational>(&answer_.value);
    if (share == nullptr || step_.form == FigureForm::factor) return;
    Answer hundredth = answer_;
    hundredth.value = *share / 100;
    if (answer_.last_place) hundredth.last_place = std::get<Rational>(*answer_.last_place) / 100;
    if (answers_to(hundredth, value)) found(Astray::no_percent, {}, value);
  }

  bool sums() const {
    return step_.operation == Operation::add || step_.operation == Operation::subtract;
  }

  /// What the step comes to without the change that one of its terms makes to a sum.
  std::optional<Figure> without(const Figure& sum, const Figure& change) const {
    const bool added = step_.operation == Operation::add;
    return carry_out(added ? Operation::subtract : Operation::add, sum, change);
  }

  void try_left_out(const std::vector<Term>& terms, const Figure& sum) {
    if (!sums() || terms.size() < 2) return;
    for (std::size_t i = step_.operation == Operation::subtract ? 1 : 0; i < terms.size(); ++i) {
      const auto value = without(sum, terms[i].value);
      if (value && answers_to(answer_, *value))
        found(Astray::left_out, terms[i].name + " left out", *value);
    }
  }

  /// Each of the weights misread, all of them, and the result so written.
  void try_misread(const std::vector<Term>& terms, const Figure& right) {
    std::vector<Term> all = terms;
    std::string whats;
    std::size_t number = 0;
    for (std::size_t i = 0; i < terms.size(); ++i) {
      const auto wrong = misread(terms[i].value);
      if (!wrong) continue;
      all[i].value = wrong->weight;
      whats += (number++ == 0 ? "" : ", ") + wrong->what;
      try_known_value(wrong->what, with_one(terms, i, wrong->weight, right));
    }
    if (number > 1) try_known_value(whats, worked(step_.operation, all));
    if (step_.form == FigureForm::factor) return;
    if (const auto wrong = misread(right)) try_known_value(wrong->what, wrong->weight);
  }

  void try_known_value(const std::string& what, const std::optional<Figure>& value) {
    if (value && answers_to(answer_, *value)) found(Astray::known_slip, what, *value);
  }

  /// The step with another figure for one term. Sums can be long: they are not added up again.
  std::optional<Figure> with_one(const std::vector<Term>& terms, std::size_t changed,
                                 const Figure& figure, const Figure& right) const {
    if (sums() && changed > 0) {
      const auto less = carry_out(Operation::subtract, terms[changed].value, figure);
      return less ? without(right, *less) : std::nullopt;
    }
    std::vector<Term> one = terms;
    one[changed].value = figure;
    return worked(step_.operation, one);
  }

  void try_other_operation(std::vector<Term> terms) {
    if (terms.size() < 2) return;
    Operation operation = Operation::add;
    Astray astray = Astray::added;
    switch (step_.operation) {
      case Operation::subtract:
        break;
      case Operation::add:
        operation = Operation::subtract;
        astray = Astray::subtracted;
        break;
      case Operation::divide:
        operation = Operation::divide;
        astray = Astray::upside_down;
        std::reverse(terms.begin(), terms.end());
        break;
      case Operation::multiply:
        return;
    }
    const auto value = worked(operation, terms);
    if (value && answers_to(answer_, *value)) found(astray, {}, *value);
  }

  /// What a slip comes to when the term that it follows is `start`.
  std::optional<Figure> in_proportion(const KnownSlip& slip, const Figure& start) const {
    for (const Term& term : step_.terms) {
      if (term.name != slip.follows) continue;
      const auto ratio = ratio_of(start, term.value);
      if (!ratio) return std::nullopt;
      return carry_out(Operation::multiply, slip.value, Figure(*ratio));
    }
    return std::nullopt;
  }

  const WorkingStep& step_;
  const Answer& answer_;
  std::vector<std::string> own_;
  std::vector<FoundSlip> slips_;
  std::optional<Figure> value_;
};

/// Marks the answers of one working, in the order of its steps, and keeps what later steps may go
/// on from.
class AnswerMarker {
 public:
  explicit AnswerMarker(OwnFigures& own) : own_(own) {}

  MarkedAnswer mark(const WorkingStep& step, const Answer& answer) {
    MarkedAnswer out{answer, Verdict::right, step.value, {}, {}, {}};
    Figure unrounded = step.value;
    if (answer.value == step.value) {
      own_.erase(step.name);
      return out;
    }
    if (answers_to(answer, step.value)) {
      out.verdict = Verdict::right_as_rounded;
    } else if (const auto own = carried_on(step, answer)) {
      out.verdict = Verdict::right_from_own;
      out.own = own->from;
      unrounded = own->unrounded;
    } else {
      out.verdict = Verdict::wrong;
      unrounded = find_slips(step, out);
    }
    // What was meant as per cent goes on as per cent.
    const bool meant_otherwise = out.went(Astray::no_percent);
    own_[step.name] = {meant_otherwise ? unrounded : answer.value, unrounded, {step.name}};
    return out;
  }

  /// A step that was not answered hands on what the student's own figures make of it.
  void pass_by(const WorkingStep& step) {
    const OwnTerms written = terms_of(step, &OwnFigure::written);
    const auto value = worked(step.operation, written.terms);
    const auto unrounded = worked(step.operation, terms_of(step, &OwnFigure::unrounded).terms);
    if (written.from.empty() || !value || !unrounded) return;
    own_[step.name] = {*value, *unrounded, written.from};
  }

 private:
  OwnTerms terms_of(const WorkingStep& step, Figure OwnFigure::*kind) const {
    OwnTerms out{step.terms, {}};
    for (Term& term : out.terms) {
      const auto own = own_.find(term.name);
      if (own == own_.end()) continue;
      term.value = own->second.*kind;
      for (const std::string& name : own->second.from) {
        const bool known = std::find(out.from.begin(), out.from.end(), name) != out.from.end();
        if (!known) out.from.push_back(name);
      }
    }
    return out;
  }

  /// The step worked from the student's own earlier answers: as written, or as the calculator has
  /// them.
  std::optional<OwnFigure> carried_on(const WorkingStep& step, const Answer& answer) const {
    for (const auto kind : {&OwnFigure::written, &OwnFigure::unrounded}) {
      const OwnTerms own = terms_of(step, kind);
      const auto value = worked(step.operation, own.terms);
      if (own.from.empty() || !value || !answers_to(answer, *value)) continue;
      return OwnFigure{answer.value, *value, own.from};
    }
    return std::nullopt;
  }

  /// On the right figures first; where nothing gives the answer, on the student's own.
  Figure find_slips(const WorkingStep& step, MarkedAnswer& out) const {
    SlipFinder finder(step, out.answer);
    finder.try_on({step.terms, {}});
    finder.try_known(own_);
    for (const auto kind : {&OwnFigure::written, &OwnFigure::unrounded}) {
      const OwnTerms own = terms_of(step, kind);
      if (finder.found_none() && !own.from.empty()) finder.try_on(own);
    }
    const Figure unrounded = finder.unrounded();
    out.slips = finder.take();
    if (out.slips.empty()) find_parts_off(step, out);
    return unrounded;
  }

  /// A weight that is what is left of a whole: what the answer and the other parts come to.
  static void find_parts_off(const WorkingStep& step, MarkedAnswer& out) {
    const auto* answer = std::get_if<Mass>(&out.answer.value);
    if (answer == nullptr || step.operation != Operation::subtract) return;
    const Mass& right = std::get<Mass>(step.value);
    const bool more = *answer > right;
    out.slips.push_back({more ? Astray::parts_too_much : Astray::parts_too_little, {}, {}});
    out.difference = more ? *answer - right : right - *answer;
  }

  OwnFigures& own_;
};

}  // namespace detail

PLATEWRIGHT_BODY std::vector<MarkedAnswer> check_answers(const Working& working,
                                                         const std::vector<Answer>& answers,
                                                         OwnFigures& own) {
  detail::AnswerMarker marker(own);
  std::vector<MarkedAnswer> out;
  for (const WorkingStep& step : working) {
    const std::size_t before = out.size();
    for (const Answer& answer : answers) {
      if (answer.step == step.name) out.push_back(marker.mark(step, answer));
    }
    if (out.size() == before) marker.pass_by(step);
  }
  return out;
}

PLATEWRIGHT_BODY std::vector<MarkedAnswer> check_answers(const Working& working,
                                                         const std::vector<Answer>& answers) {
  OwnFigures own;
  return check_answers(working, answers, own);
}

}  // namespace platewright
