// SPDX-License-Identifier: MIT
#pragma once
// A step held against the rules of its kind.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/recipe/recipe_safety.hpp"
#include "platewright/recipe/step_limits.hpp"

namespace platewright {

/// What is wrong with a step.
enum class StepFault {
  place,        ///< it stands where it may not
  temperature,  ///< it stands at, or comes to, another temperature
  time,         ///< it takes longer
  too_short,    ///< pieces of this weight are not thawed by then
  marinade,     ///< what raw food has lain in is used again and was not boiled
};

struct StepNotice {
  StepFault fault = StepFault::place;
  std::size_t number = 0;  ///< of the step, from 1
  StepKind kind = StepKind::serve;
  StepRule rule;                            ///< that is not kept
  std::optional<StepPlace> where = {};      ///< as the step has it
  std::optional<Temperature> at = {};       ///< as the step has it
  std::optional<Duration> time = {};        ///< as the step has it
  std::optional<StepThawing> thawing = {};  ///< of what is too short
  std::string marinade = {};                ///< the recipe that is used again
  Place place = {};
};

namespace detail {

class StepFaults {
 public:
  StepFaults(const MethodStep& step, std::size_t number, std::vector<StepNotice>& out)
      : step_(step), control_(*step.control), number_(number), out_(out) {}

  /// At a place of which the table says nothing, where it names those for this kind.
  void check_place(const std::vector<StepRule>& rules);

  void check(const StepRule& rule, const std::vector<StepRule>& rules);

  /// Its shortest time against the shortest that the authority prints for such a piece.
  void check_thawing(const StepThawing& thawing);

 private:
  StepNotice& add(StepFault fault, const StepRule& rule);

  void check_length(const StepRule& rule);

  /// Whether no rule asks for more on the way that the food goes: 41 F after 70 F.
  static bool is_last(const StepRule& rule, const std::vector<StepRule>& rules);

  /// The temperatures that the step names, in time. Where it names none it is done at its end; of
  /// an earlier mark that it does not name nothing is known, and its rule is printed alone.
  void check_reached(const StepRule& rule, bool last_mark);

  /// Whether food that was cold by then is warm at the end.
  bool is_left_again(const BoundTemperature& limit) const;

  std::optional<Duration> time_of(const ReachedTemperature& mark) const;

  const MethodStep& step_;
  const StepControl& control_;
  std::size_t number_;
  std::vector<StepNotice>& out_;
};

/// A recipe (a marinade, a brine) that the step puts raw food into, and that a later step uses
/// before one has boiled it. Of bare ingredients no one can tell which part was kept back.
void check_marinade(const Recipe& recipe, std::size_t at, const StepRule& rule,
                    const RecipeBook& book, std::vector<StepNotice>& out);

}  // namespace detail

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/detail/step_faults.hpp"
#endif
