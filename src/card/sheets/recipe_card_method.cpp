// SPDX-License-Identifier: MIT
#include "card/sheets/recipe_card_method.hpp"

#include "platewright/card/number_text.hpp"
#include "platewright/problem/plural.hpp"
#include "platewright/recipe/step_time.hpp"

namespace platewright::card {
namespace {

std::string name_in_step(const RecipeLine& line) {
  return line.preparation.empty() ? line.name : line.name + ", " + line.preparation;
}

StepLine step_line(const ScaledLine& line, const CardViews& views) {
  return {views.main.measure(first_amount(line)), name_in_step(*line.line),
          views.beside ? amount_beside(line, *views.beside) : Cell{}};
}

/// From no less than the least to no more than the most; up alone where nothing that is printed
/// lies between them, as of 12 1/2 min.
std::string span_text(const TimeSpan& span) {
  const Rational least = span.least.in(units::minute);
  const Rational most = span.most.in(units::minute);
  const std::string from = duration_text(least, Rounding::up);
  const std::string to = duration_text(most, Rounding::down);
  return from == to || from == duration_text(most, Rounding::up) ? from : from + " to " + to;
}

/// ` per 4 legs by 2 people`; nothing where the time does not grow.
std::string growth_text(const MethodStep& step, const Recipe& recipe,
                        const std::optional<RecipeVessel>& vessel) {
  if (!step.grows) return {};
  const TimeGrowth& grows = *step.grows;
  std::string one = "batch";
  if (grows.by == GrowsBy::piece && recipe.tested) one = recipe.tested->piece;
  if (grows.by == GrowsBy::vessel && vessel) one = vessel->name;
  if (grows.by == GrowsBy::portion) one = "portion";
  std::string out = " per ";
  out += grows.each == 1 ? one : as_mixed(grows.each) + " " + several(one);
  if (grows.people != 1) out += " by " + as_mixed(grows.people) + " people";
  return out;
}

/// The step without what it uses, in the recipe's vessel or another.
Step words_of(const MethodStep& step, const Recipe& recipe,
              const std::optional<RecipeVessel>& vessel) {
  Step out{step.text, {}, {}};
  if (step.takes) out.takes = words(span_text(*step.takes) + growth_text(step, recipe, vessel));
  return out;
}

/// `5 min per leg: 50 min`; of a time that does not grow that it is the tested one.
Step words_of(const MethodStep& step, const ScaledRecipe& scaled) {
  Step out = words_of(step, *scaled.recipe, scaled.plan.vessel);
  if (step.grows) {
    out.takes.text += ": " + span_text(*time_of(step, scaled));
  } else if (step.takes && scaled.plan.factor != 1) {
    out.takes.text += ", as tested";
  }
  return out;
}

}  // namespace

Steps method(const ScaledRecipe& scaled, const CardViews& views) {
  Steps out{"method", "Method", {}};
  if (views.beside) out.beside = system_name(views.beside->system());
  for (const MethodStep& step : scaled.recipe->steps) {
    Step written = words_of(step, scaled);
    for (const std::string& name : step.uses) {
      for (const ScaledLine& line : scaled.lines) {
        if (line.line->name == name) written.lines.push_back(step_line(line, views));
      }
    }
    out.steps.push_back(std::move(written));
  }
  return out;
}

Steps method_of_any_size(const Recipe& recipe) {
  Steps out{"method", "Method", {}};
  for (const MethodStep& step : recipe.steps) {
    Step written = words_of(step, recipe, recipe.vessel);
    for (const std::string& name : step.uses) {
      for (const RecipeLine& line : recipe.lines) {
        if (line.name == name) written.lines.push_back({{}, name_in_step(line)});
      }
    }
    out.steps.push_back(std::move(written));
  }
  return out;
}

}  // namespace platewright::card
