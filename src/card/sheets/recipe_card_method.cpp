#include "card/sheets/recipe_card_method.hpp"

#include "platewright/card/number_text.hpp"

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
std::string span_text(const Rational& least, const Rational& most) {
  const std::string from = duration_text(least, Rounding::up);
  const std::string to = duration_text(most, Rounding::down);
  return from == to || from == duration_text(most, Rounding::up) ? from : from + " to " + to;
}

/// The step without what it uses.
Step words_of(const MethodStep& step) {
  Step out{step.text, {}, {}};
  if (step.takes) {
    out.takes =
        words(span_text(step.takes->least.in(units::minute), step.takes->most.in(units::minute)));
  }
  return out;
}

}  // namespace

Steps method(const ScaledRecipe& scaled, const CardViews& views) {
  Steps out{"method", "Method", {}};
  if (views.beside) out.beside = system_name(views.beside->system());
  for (const MethodStep& step : scaled.recipe->steps) {
    Step written = words_of(step);
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
    Step written = words_of(step);
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
