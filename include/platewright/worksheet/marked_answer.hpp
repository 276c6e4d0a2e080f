// SPDX-License-Identifier: MIT
#pragma once
// A student's answer to a step, and what a marker finds of it.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/worksheet/figure.hpp"

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

enum class Verdict {
  right,
  right_as_rounded,
  right_from_own,  ///< the step is right, worked from an earlier answer that is not
  wrong,
};

/// How an answer went astray.
enum class Astray {
  truncated,         ///< cut off where it is to be rounded
  rounded_up,        ///< rounded up where the nearest is asked for
  no_percent,        ///< per cent without the sign
  left_out,          ///< a term is missing; `what` says which
  added,             ///< added where it is to be subtracted
  subtracted,        ///< subtracted where it is to be added
  upside_down,       ///< divided the wrong way round
  known_slip,        ///< `what` says which
  parts_too_much,    ///< with this answer the parts weigh `difference` more than the whole
  parts_too_little,  ///< with this answer `difference` of the whole is not accounted for
};

/// A slip that gives exactly the answer, to the places written.
struct FoundSlip {
  Astray astray = Astray::known_slip;
  std::string what;
  /// The student's own earlier answers that the slip was made on; none where those are right.
  std::vector<std::string> own;
};

/// An answer, marked.
struct MarkedAnswer {
  Answer answer;
  Verdict verdict = Verdict::right;
  Figure right;
  /// Of a wrong answer all that give it, the plainest first; none where no slip is known that does.
  std::vector<FoundSlip> slips;
  /// Of an answer that is right from earlier ones the names of these.
  std::vector<std::string> own;
  std::optional<Figure> difference;

  /// True where one of the slips is of this kind.
  bool went(Astray astray) const;
};

/// A figure of the student's own that later steps may go on from.
struct OwnFigure {
  Figure written;
  /// What it was rounded from, as far as that is known: whoever keeps it in a calculator goes on
  /// from it.
  Figure unrounded;
  /// The answers that it comes from.
  std::vector<std::string> from;
};

/// By the name of the step or term.
using OwnFigures = std::map<std::string, OwnFigure>;

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/marked_answer.hpp"
#endif
