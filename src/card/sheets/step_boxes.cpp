// SPDX-License-Identifier: MIT
#include "card/sheets/step_boxes.hpp"

#include <algorithm>

#include "platewright/card/figures.hpp"

namespace platewright::card {
namespace {

std::string step_time_text(const Duration& time, Rounding rounding) {
  return duration_text(time.in(units::minute), rounding);
}

std::string kind_and_place(const StepControl& control) {
  const std::string kind(name_of(control.kind));
  return control.where ? kind + " " + where_words(*control.where) : kind;
}

std::string limit_text(const StepRule& rule) {
  std::string out = limit_words(rule, step_figures()) + " (" + source_words(rule.source, rule.row);
  const bool noted = rule.demand != StepDemand::told && rule.demand != StepDemand::dated;
  if (noted && !rule.note.empty()) out += "; " + rule.note;
  return out + ")";
}

void add_limits(const MethodStep& step, std::size_t number, const StepLimits& limits,
                Table& table) {
  const auto add = [&](const std::string& limit) {
    table.add({words(std::to_string(number)), words(kind_and_place(*step.control)), words(limit)});
  };
  if (limits.thawing) {
    const ThawingRate& rate = limits.thawing->rate;
    add(thawing_words(*limits.thawing, step_figures()) + " (" +
        source_words(rate.source, rate.row) + ")");
  }
  for (const StepRule& rule : limits.rules) {
    if (rule.demand != StepDemand::never) add(limit_text(rule));
  }
}

}  // namespace

StepFigures step_figures() {
  return {fahrenheit_text, step_time_text};
}

std::optional<Table> step_limits_table(const ScaledRecipe& scaled, const Book& book) {
  Table table{"limits",
              "Limits of the steps",
              {figures_column("step", "Step"), words_column("kind", "Kind"),
               words_column("limit", "Limit")},
              {},
              {},
              {"Local codes and your inspector come first."}};
  const Recipe& recipe = *scaled.recipe;
  for (std::size_t i = 0; i < recipe.steps.size(); ++i) {
    const StepLimits limits = limits_of(recipe.steps[i], recipe, book.recipes, book.tables.safety,
                                        scaled.plan.piece_weight);
    add_limits(recipe.steps[i], i + 1, limits, table);
  }
  if (table.groups.empty()) return std::nullopt;
  return table;
}

std::vector<UnsafeStep> unsafe_steps_of(const ScaledRecipe& scaled, const Book& book) {
  std::vector<UnsafeStep> out;
  for (StepNotice& notice :
       step_notices(*scaled.recipe, book.recipes, book.tables.safety, scaled.plan.piece_weight)) {
    out.push_back({scaled.recipe->name, std::move(notice)});
  }
  return out;
}

std::optional<Box> unsafe_steps_box(const std::vector<UnsafeStep>& steps) {
  Box box{"steps", "STEPS NOT SAFE AS WRITTEN", {}};
  for (const UnsafeStep& step : steps) {
    const StepNotice& notice = step.notice;
    std::string line = step.recipe + ", " + step_name(notice) + ": " +
                       found_words(notice, step_figures()) +
                       ". Wanted: " + wanted_words(notice, step_figures()) + ".";
    const bool said = std::find(box.lines.begin(), box.lines.end(), line) != box.lines.end();
    if (!said) box.lines.push_back(std::move(line));
  }
  if (box.lines.empty()) return std::nullopt;
  box.lines.emplace_back("Local codes and your inspector come first.");
  return box;
}

}  // namespace platewright::card
