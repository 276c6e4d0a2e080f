// SPDX-License-Identifier: MIT
#include "card/sheets/kept_food.hpp"
#include "card/sheets/quote_parts.hpp"
#include "card/sheets/safety_boxes.hpp"
#include "platewright/card/label_sheets.hpp"
#include "platewright/costing/day_text.hpp"
#include "platewright/recipe/step_words.hpp"

namespace platewright {
namespace {

const char* const written_by_hand = "______________";

std::string container_text(const FoodLabel& label) {
  if (!label.containers) return "Container ____ of ____";
  return "Container ____ of " + as_short_decimal(*label.containers, 0) + " (" + label.container +
         ")";
}

/// What is written in, and in brackets what the plan says.
std::string day_line(const std::string& what, const std::string& planned) {
  return what + " " + written_by_hand + (planned.empty() ? "" : " (" + planned + ")");
}

std::string use_by_text(const FoodLabel& label) {
  if (!label.kept || !label.kept->use_by) return day_line("Use by", "");
  return day_line("Use by", "if made that day: " + day_text(*label.kept->use_by));
}

Box label_box(const Event& event, const FoodLabel& label) {
  Box box{"label", label.food, {}};
  const std::string served = card::served_text(event);
  box.lines = {event.name + (served.empty() ? "" : ", " + served), container_text(label),
               day_line("Made on", label.kept ? "by the plan: " + day_text(label.kept->made) : ""),
               use_by_text(label)};
  if (label.kept && !label.kept->in_time()) {
    box.lines.push_back("TOO EARLY for " + day_text(label.kept->used) + ": make it later.");
  }
  box.lines.push_back(label.kept ? "Keep it " + card::kept_words(label.kept->kept) + "."
                                 : "Keep it ______________ (no step says how).");
  box.lines.emplace_back("ALLERGENS");
  for (std::string& line : card::allergen_lines(label.allergens, label.declared)) {
    box.lines.push_back(std::move(line));
  }
  return box;
}

std::string source_of_days(const std::vector<FoodLabel>& labels) {
  for (const FoodLabel& label : labels) {
    if (label.kept && label.kept->rule) {
      return " (" + source_words(label.kept->rule->source, label.kept->rule->row) + ")";
    }
  }
  return "";
}

}  // namespace

Sheet label_sheet(const Event& event, const std::vector<FoodLabel>& labels) {
  Sheet sheet(SheetKind::labels);
  sheet.title = "Labels: " + event.name;
  card::begin_event_sheet(event, sheet);
  for (const FoodLabel& label : labels) sheet.add(label_box(event, label));
  sheet.add(Paragraphs{
      "note",
      "",
      {"Use by counts the day it is made as the first" + source_of_days(labels) +
           ". Cold food is kept at 41 \u00B0F (5 \u00B0C) or below, hot food at 135 \u00B0F (57 "
           "\u00B0C) or above (FDA Food Code 2022, 3-501.16); local codes come first.",
       "Allergens as the book states them; check every label of what was bought. Traces that the "
       "book does not name are not covered."}});
  return sheet;
}

}  // namespace platewright
