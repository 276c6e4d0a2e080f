// SPDX-License-Identifier: MIT
#pragma once
// Rules of steps and what goes against them, in the same words wherever they are printed.

#include <string>
#include <vector>

#include "platewright/number/write.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/recipe/step_notices.hpp"

namespace platewright {

/// How a sheet or a message writes the figures of a rule, each rounded as is named.
struct StepFigures {
  std::string (*temperature)(const Temperature&, Rounding) = nullptr;
  std::string (*time)(const Duration&, Rounding) = nullptr;
};

/// `FDA Food Code 2022, 3-501.13`.
inline std::string source_words(const std::string& source, const std::string& row) {
  return row.empty() ? source : source + ", " + row;
}

/// What the rule asks, without whose it is: `70 F or below within 2 h`.
std::string limit_words(const StepRule& rule, const StepFigures& figures);

/// `12 lb (5.5 kg): 2 d 10 h to 3 d; 24 h for each 4 to 5 lb`.
std::string thawing_words(const StepThawing& thawing, const StepFigures& figures);

/// `step 2 (chill)`.
std::string step_name(const StepNotice& notice);

/// What the step does, behind its name.
std::string found_words(const StepNotice& notice, const StepFigures& figures);

/// What the rule wants, and whose it is.
std::string wanted_words(const StepNotice& notice, const StepFigures& figures);

/// What may be done. Cooling: FDA Food Code 2022, 3-501.15(A).
std::string remedy_words(const StepNotice& notice);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/step_words.hpp"
#endif
