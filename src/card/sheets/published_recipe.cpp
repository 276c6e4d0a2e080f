// SPDX-License-Identifier: MIT
#include "platewright/card/published_recipe.hpp"

#include <algorithm>

#include "card/sheets/recipe_card_method.hpp"
#include "card/sheets/recipe_card_parts.hpp"
#include "card/sheets/recipe_card_size.hpp"
#include "card/sheets/safety_boxes.hpp"
#include "card/sheets/step_boxes.hpp"

namespace platewright {
namespace card {
namespace {

/// Without the errors of what was rounded, which stand in brackets: they are for who measures, and
/// no amount that a reader takes.
std::string without_errors(std::string text) {
  for (std::size_t at = text.find(" ("); at != std::string::npos; at = text.find(" (", at)) {
    text.erase(at, text.find(')', at) - at + 1);
  }
  return text;
}

/// The weight of a cut in pieces: `67 lb 8 oz`, `9 legs` behind the name.
std::string pieces_of_cut(const ScaledRecipe& scaled, const ScaledLine& line, const Book& book,
                          const KitchenView& view) {
  const std::string taken = amount_to_take(scaled, line, book, view).text;
  return taken == view.measure(first_amount(line)).text ? "" : "as " + taken;
}

std::string ingredient_text(const ScaledRecipe& scaled, const ScaledLine& line, const Book& book,
                            const KitchenView& view) {
  const RecipeLine& written = *line.line;
  std::string out = written.name;
  const auto add = [&out](const std::string& words) {
    if (!words.empty()) out += ", " + words;
  };
  add(written.preparation);
  if (line.amount.to_taste()) return out + " to taste";
  add(pieces_of_cut(scaled, line, book, view));
  if (written.scale == ScalingRule::held_back) {
    add("at first; then to taste, up to " + without_errors(view.measure(line.amount).text) +
        " in all");
  }
  if (written.stage) add("as " + std::string(name_of(*written.stage)));
  return without_errors(view.measure(first_amount(line)).text) + " " + out;
}

/// `Oven: first 450 °F (232 °C) for 25 min; then 325 °F (163 °C) until 130 °F inside; rest 20 min`.
std::string oven_text(const ScaledRecipe& scaled, const KitchenView& view) {
  std::string out;
  for (const Fact& fact : oven_facts(scaled, view).facts) {
    std::string label = fact.label;
    if (!label.empty() && label[0] >= 'A' && label[0] <= 'Z') {
      label[0] = static_cast<char>(label[0] - 'A' + 'a');
    }
    out += (out.empty() ? "Oven: " : "; ") + label + " " + fact.value.text;
  }
  return out;
}

std::vector<std::string> step_texts(const ScaledRecipe& scaled, const CardViews& views) {
  std::vector<std::string> out;
  std::string oven = oven_text(scaled, views.main);
  const std::vector<MethodStep>& written = scaled.recipe->steps;
  const bool placed =
      std::any_of(written.begin(), written.end(), [](const MethodStep& s) { return s.oven; });
  const auto add_oven = [&] {
    if (!oven.empty()) out.push_back(std::move(oven));
    oven.clear();
  };
  const Steps steps = method(scaled, views);
  for (std::size_t i = 0; i < steps.steps.size(); ++i) {
    const Step& step = steps.steps[i];
    out.push_back(step.takes.text.empty() ? step.text : step.text + " (" + step.takes.text + ")");
    if (written[i].oven) add_oven();
  }
  if (!placed) add_oven();
  return out;
}

void add_box(std::vector<std::string>& out, const Box& box) {
  out.push_back(box.title);
  out.insert(out.end(), box.lines.begin(), box.lines.end());
}

std::vector<std::string> caution_texts(const ScaledRecipe& scaled, const Book& book) {
  std::vector<std::string> out;
  add_box(out, allergen_box(*scaled.recipe, book));
  Sheet cited(SheetKind::card);  // the boxes name their sources in words, too
  for (const Box& box : safety_boxes(cited, scaled, book)) add_box(out, box);
  if (const auto box = unsafe_steps_box(unsafe_steps_of(scaled, book))) add_box(out, *box);
  if (const auto limits = step_limits_table(scaled, book)) {
    for (const RowGroup& group : limits->groups) {
      for (const Row& row : group.rows) {
        out.push_back("Step " + row[0].text + ", " + row[1].text + ": " + row[2].text);
      }
    }
    out.insert(out.end(), limits->notes.begin(), limits->notes.end());
  }
  out.insert(out.end(), scaled.recipe->notes.begin(), scaled.recipe->notes.end());
  return out;
}

}  // namespace
}  // namespace card

PublishedRecipe published_recipe(const ScaledRecipe& scaled, const Book& book,
                                 const CardOptions& options) {
  const card::CardViews views(options, book);
  PublishedRecipe out;
  out.name = scaled.recipe->name;
  out.makes = card::without_errors(card::makes_cell(scaled, views.main).text);
  for (const ScaledLine& line : scaled.lines) {
    out.ingredients.push_back(card::ingredient_text(scaled, line, book, views.main));
  }
  out.steps = card::step_texts(scaled, views);
  out.cautions = card::caution_texts(scaled, book);
  return out;
}

}  // namespace platewright
