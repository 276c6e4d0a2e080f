// SPDX-License-Identifier: MIT
#include "card/sheets/kept_food.hpp"

#include "card/sheets/step_boxes.hpp"
#include "platewright/card/figures.hpp"
#include "platewright/costing/day_text.hpp"

namespace platewright {
namespace {

std::string marks_text(const StepControl& control) {
  const StepFigures figures = card::step_figures();
  std::string out = control.where ? where_words(*control.where) : std::string();
  for (const ReachedTemperature& mark : control.reaches) {
    out += (out.empty() ? "" : ", ") + figures.temperature(mark.at, Rounding::down);
    if (mark.in) out += " in " + figures.time(*mark.in, Rounding::up);
  }
  return out.empty() ? "by the limits on its card" : out;
}

std::string cooled_text(const KeptFood& food) {
  return food.cooled ? marks_text(*food.cooled) : "NOT SAID";
}

}  // namespace

std::string card::kept_words(const StepControl& control) {
  std::string out = control.where ? where_words(*control.where) : std::string();
  if (control.at) {
    out += out.empty() ? "at " : " at ";
    out += card::step_figures().temperature(*control.at, Rounding::down);
  }
  return out.empty() ? "cold" : out;
}

Table kept_table(const std::vector<KeptFood>& kept) {
  Table table{"made_ahead",
              "Made ahead",
              {naming_column("recipe", "Label"), words_column("cooled", "Cooled"),
               words_column("kept", "Kept"), words_column("made", "Made"),
               words_column("use_by", "Use by")},
              {},
              {},
              {}};
  for (const KeptFood& food : kept) {
    std::string by = food.use_by ? day_text(*food.use_by) : std::string();
    if (!food.in_time()) by += ": TOO EARLY for " + day_text(food.used);
    table.add({words(food.recipe), words(cooled_text(food)), words(card::kept_words(food.kept)),
               words(day_text(food.made)), words(by)});
  }
  std::string source;
  for (const KeptFood& food : kept) {
    if (food.rule) source = " (" + source_words(food.rule->source, food.rule->row) + ")";
  }
  table.notes = {
      "Made: the soonest day by this plan; write the true one on the label. Use by counts "
      "that day as the first" +
      source + "; local codes come first."};
  return table;
}

Box waiting_box(const std::vector<WaitingFood>& waiting) {
  Box box{"waiting", "KEEPING NOT SAID", {}};
  for (const WaitingFood& food : waiting) {
    box.lines.push_back(food.recipe + ": cooked, and waits up to " +
                        duration_text(food.longest.in(units::minute), Rounding::up) +
                        " for the last that uses it. No step says how it is kept.");
  }
  const SafetyLimit& limit = waiting.front().limit;
  box.lines.push_back("Food that is neither hot nor cold stands " +
                      duration_text(limit.within->in(units::minute), Rounding::down) +
                      " at most, by a written plan (" + source_words(limit.source, limit.row) +
                      "). Say the steps that cool and keep it; local codes come first.");
  return box;
}

}  // namespace platewright
