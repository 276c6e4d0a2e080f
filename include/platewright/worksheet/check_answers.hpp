#pragma once
// A student's answers beside a worked sheet: right, right as far as they are written out, or wrong
// and at which step they went astray.

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "platewright/number/round.hpp"
#include "platewright/worksheet/working.hpp"

namespace platewright {

/// One answer as it was written.
struct Answer {
  /// The step that it answers.
  std::string step;
  std::string written;
  Figure value;
  /// One unit of the last place that was written (0.01 for `11.13`); none where the answer has to
  /// be exact (a whole number, a fraction, pounds and ounces).
  std::optional<Figure> last_place;
};

enum class Verdict { right, right_as_rounded, wrong };

/// How an answer went astray.
enum class Astray {
  nowhere,           ///< it is right
  truncated,         ///< cut off where it is to be rounded
  no_percent,        ///< per cent without the sign
  carried_on,        ///< right from an earlier answer, named by `what`, that is wrong or rounded
  left_out,          ///< the term named by `what` is missing
  added,             ///< added where it is to be subtracted
  subtracted,        ///< subtracted where it is to be added
  upside_down,       ///< divided the wrong way round
  known_slip,        ///< `what` says which
  parts_too_much,    ///< with this answer the parts weigh `difference` more than the whole
  parts_too_little,  ///< with this answer `difference` of the whole is not accounted for
  not_known,         ///< none of these gives the answer
};

/// An answer, marked.
struct MarkedAnswer {
  Answer answer;
  Verdict verdict = Verdict::right;
  Figure right;
  Astray astray = Astray::nowhere;
  std::string what;
  std::optional<Figure> difference;
};

namespace detail {

/// True where `value`, rounded to the last place of the answer by the rule named, is the answer.
inline bool answers_to(const Answer& answer, const Figure& value, Rounding rounding) {
  if (answer.value == value) return true;
  if (!answer.last_place) return false;
  const auto exact = ratio_of(value, *answer.last_place);
  const auto written = ratio_of(answer.value, *answer.last_place);
  return exact && written && round_to(*exact, 1, rounding) == *written;
}

inline bool answers_to(const Answer& answer, const std::optional<Figure>& value) {
  return value && answers_to(answer, *value, Rounding::half_up);
}

/// Marks the answers of one working, in the order of its steps.
class AnswerMarker {
 public:
  explicit AnswerMarker(const std::vector<Answer>& answers) : answers_(answers) {}

  MarkedAnswer mark(const WorkingStep& step, const Answer& answer) const {
    MarkedAnswer out{answer, Verdict::right, step.value, Astray::nowhere, {}, {}};
    if (answer.value == step.value) return out;
    if (answers_to(answer, step.value, Rounding::half_up)) {
      out.verdict = Verdict::right_as_rounded;
      return out;
    }
    out.verdict = Verdict::wrong;
    find_slip(step, out);
    return out;
  }

 private:
  const Answer* answer_to(const std::string& name) const {
    const auto found = std::find_if(answers_.begin(), answers_.end(),
                                    [&](const Answer& answer) { return answer.step == name; });
    return found == answers_.end() ? nullptr : &*found;
  }

  /// Tries the slips from the plainest to the least likely; the first that gives the answer is it.
  void find_slip(const WorkingStep& step, MarkedAnswer& out) const {
    if (answers_to(out.answer, step.value, Rounding::down)) {
      out.astray = Astray::truncated;
    } else if (no_percent(step, out.answer)) {
      out.astray = Astray::no_percent;
    } else if (!carried_on(step, out) && !known(step, out) && !left_out(step, out) &&
               !other_operation(step, out) && !parts_off(step, out)) {
      out.astray = Astray::not_known;
    }
  }

  static bool no_percent(const WorkingStep& step, const Answer& answer) {
    const auto* share = std::get_if<Rational>(&answer.value);
    if (share == nullptr || step.form == FigureForm::factor) return false;
    Answer hundredth = answer;
    hundredth.value = *share / 100;
    if (answer.last_place) hundredth.last_place = std::get<Rational>(*answer.last_place) / 100;
    return answers_to(hundredth, step.value);
  }

  /// The step worked from the student's own earlier answers.
  bool carried_on(const WorkingStep& step, MarkedAnswer& out) const {
    std::vector<Term> terms = step.terms;
    std::string names;
    for (Term& term : terms) {
      const Answer* earlier = answer_to(term.name);
      if (earlier == nullptr || earlier->value == term.value) continue;
      term.value = earlier->value;
      names += (names.empty() ? "" : ", ") + term.name;
    }
    if (names.empty() || !answers_to(out.answer, worked(step.operation, terms))) return false;
    out.astray = Astray::carried_on;
    out.what = names;
    return true;
  }

  bool known(const WorkingStep& step, MarkedAnswer& out) const {
    for (const KnownSlip& slip : step.slips) {
      const bool plain = answers_to(out.answer, slip.value, Rounding::half_up);
      if (!plain && !answers_to(out.answer, from_own_figure(step, slip))) continue;
      out.astray = Astray::known_slip;
      out.what = slip.what + (plain ? "" : ", worked on from your own " + slip.follows);
      return true;
    }
    return false;
  }

  /// What a slip comes to from the student's own answer to the term that it follows.
  std::optional<Figure> from_own_figure(const WorkingStep& step, const KnownSlip& slip) const {
    const Answer* own = answer_to(slip.follows);
    if (own == nullptr) return std::nullopt;
    for (const Term& term : step.terms) {
      if (term.name != slip.follows) continue;
      const auto ratio = ratio_of(own->value, term.value);
      if (!ratio) return std::nullopt;
      return carry_out(Operation::multiply, slip.value, Figure(*ratio));
    }
    return std::nullopt;
  }

  static bool left_out(const WorkingStep& step, MarkedAnswer& out) {
    if (step.operation == Operation::divide || step.operation == Operation::multiply) return false;
    for (std::size_t i = 0; i < step.terms.size() && step.terms.size() > 1; ++i) {
      if (i == 0 && step.operation == Operation::subtract) continue;
      std::vector<Term> terms = step.terms;
      terms.erase(terms.begin() + static_cast<std::ptrdiff_t>(i));
      if (!answers_to(out.answer, worked(step.operation, terms))) continue;
      out.astray = Astray::left_out;
      out.what = step.terms[i].name;
      return true;
    }
    return false;
  }

  static bool other_operation(const WorkingStep& step, MarkedAnswer& out) {
    std::vector<Term> terms = step.terms;
    Operation operation = Operation::add;
    Astray astray = Astray::added;
    if (step.operation == Operation::add) {
      operation = Operation::subtract;
      astray = Astray::subtracted;
    } else if (step.operation == Operation::divide) {
      operation = Operation::divide;
      astray = Astray::upside_down;
      std::reverse(terms.begin(), terms.end());
    } else if (step.operation == Operation::multiply) {
      return false;
    }
    if (terms.size() < 2 || !answers_to(out.answer, worked(operation, terms))) return false;
    out.astray = astray;
    return true;
  }

  /// A weight that is what is left of a whole: what the answer and the other parts come to.
  static bool parts_off(const WorkingStep& step, MarkedAnswer& out) {
    const auto* answer = std::get_if<Mass>(&out.answer.value);
    if (answer == nullptr || step.operation != Operation::subtract) return false;
    const Mass& right = std::get<Mass>(step.value);
    out.astray = *answer > right ? Astray::parts_too_much : Astray::parts_too_little;
    out.difference = *answer > right ? *answer - right : right - *answer;
    return true;
  }

  const std::vector<Answer>& answers_;
};

}  // namespace detail

/// The answers marked, in the order of the working's steps. An answer to a step that is not there
/// is left out: whoever reads the answers reports it.
inline std::vector<MarkedAnswer> check_answers(const Working& working,
                                               const std::vector<Answer>& answers) {
  const detail::AnswerMarker marker(answers);
  std::vector<MarkedAnswer> out;
  for (const WorkingStep& step : working) {
    for (const Answer& answer : answers) {
      if (answer.step == step.name) out.push_back(marker.mark(step, answer));
    }
  }
  return out;
}

}  // namespace platewright
