#include "platewright/card/recipe_card.hpp"

#include <algorithm>

#include "card/sheets/recipe_card_parts.hpp"
#include "platewright/card/number_text.hpp"

namespace platewright {
namespace card {

std::string piece_word(const TestedPieces& tested, const Rational& count) {
  return count == 1 ? tested.piece : tested.piece + "s";
}

std::string factor_text(const Rational& factor) { return as_short_decimal(factor, 4); }

Facts size_facts(const ScaledRecipe& scaled, const KitchenView& view) {
  const Recipe& recipe = *scaled.recipe;
  const ScalePlan& plan = scaled.plan;
  Facts facts{"size", "", {}, ColumnKind::words};
  if (plan.portions) {
    std::string text = as_short_decimal(*plan.portions, 1, Rounding::down) + " portions";
    if (recipe.makes.portion) text += " of " + view.measure(*recipe.makes.portion).text;
    facts.add("portions", "Makes",
              figure_as(text, *plan.portions, as_short_decimal(*plan.portions, 3), "portions"));
  } else if (recipe.makes.amount) {
    facts.add("makes", "Makes", view.measure(platewright::scaled(*recipe.makes.amount, plan.factor)));
  }
  if (plan.pieces) {
    std::string text = as_mixed(half_up(*plan.pieces, fraction(1, 100))) + " " +
                       piece_word(*recipe.tested, *plan.pieces) + " of " +
                       view.weight(*plan.piece_weight).text;
    if (plan.rounded_up) text += " (whole pieces)";
    facts.add("pieces", "Roast", figure_as(text, *plan.pieces, as_short_decimal(*plan.pieces, 3),
                                            recipe.tested->piece));
  }
  std::string factor = "\u00D7 " + factor_text(plan.factor);
  if (plan.asked != plan.factor) factor += "  (asked for: \u00D7 " + factor_text(plan.asked) + ")";
  facts.add("factor", "Factor", figure_as(factor, plan.factor, factor_text(plan.factor), ""));
  return facts;
}

Table ingredients_table(const ScaledRecipe& scaled, const Book& book, const CardViews& views) {
  Table table;
  table.key = "ingredients";
  table.title = "Ingredients";
  table.columns = {figures_column("weight", "Weight")};
  if (views.metric) table.columns.push_back(figures_column("metric", "Metric"));
  table.columns.push_back(words_column("measure", "Measure"));
  table.columns.push_back(figures_column("as_purchased", "As bought"));
  table.columns.push_back(words_column("ingredient", "Ingredient"));
  std::string part;
  for (const ScaledLine& line : scaled.lines) {
    if (line.line->part != part) table.open_group(line.line->part);
    part = line.line->part;
    table.add(ingredient_row(scaled, line, book, views));
  }
  return table;
}

/// Both scales, the one of the book's measures first.
std::string degrees(const Temperature& temperature, const KitchenView& view) {
  return view.system() == MeasuringSystem::us ? fahrenheit_text(temperature)
                                              : celsius_text(temperature);
}

Facts oven_facts(const Recipe& recipe, const KitchenView& view) {
  Facts out{"oven", "Oven", {}, ColumnKind::words};
  for (const OvenStep& step : recipe.oven) {
    std::string line = degrees(step.oven, view);
    if (step.time) {
      line += step.until ? " for about " : " for ";
      line += duration_text(step.time->in(units::minute));
    }
    if (step.until) line += ", until " + degrees(*step.until, view) + " inside";
    out.add("step_" + std::to_string(out.facts.size() + 1), out.facts.empty() ? "First" : "Then",
            words(line));
  }
  if (recipe.rest) {
    out.add("rest", "Rest", words(duration_text(recipe.rest->in(units::minute))));
  }
  return out;
}

Steps method(const ScaledRecipe& scaled, const CardViews& views) {
  Steps out{"method", "Method", {}};
  for (const MethodStep& step : scaled.recipe->steps) {
    Step written{step.text, {}, {}};
    if (step.takes) {
      const std::string least = duration_text(step.takes->least.in(units::minute));
      const std::string most = duration_text(step.takes->most.in(units::minute));
      written.takes = words(least == most ? least : least + " to " + most);
    }
    for (const std::string& name : step.uses) {
      for (const ScaledLine& line : scaled.lines) {
        if (line.line->name == name) written.lines.push_back(step_line(line, views));
      }
    }
    out.steps.push_back(std::move(written));
  }
  return out;
}

/// The blocks of one card, in the order that a cook reads them.
void add_card(Sheet& sheet, const ScaledRecipe& scaled, const Book& book,
              const CardOptions& options) {
  const CardViews views(options, book);
  sheet.add(size_facts(scaled, views.main));
  sheet.add(allergen_box(*scaled.recipe, book));
  sheet.add(ingredients_table(scaled, book, views));
  if (auto weights = meat_weights(scaled, book, views.main)) sheet.add(std::move(*weights));
  if (Facts oven = oven_facts(*scaled.recipe, views.main); !oven.facts.empty()) {
    sheet.add(std::move(oven));
  }
  for (Box& box : safety_boxes(sheet, *scaled.recipe, book)) sheet.add(std::move(box));
  if (!scaled.recipe->steps.empty()) sheet.add(method(scaled, views));
  if (!scaled.recipe->notes.empty()) {
    sheet.add(Paragraphs{"notes", "Notes", scaled.recipe->notes});
  }
}

/// `lamb_leg_with_a_rub`: letters and digits of the name; others become one underscore.
std::string key_of_name(const std::string& name) {
  std::string out;
  for (const char c : name) {
    const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    const bool capital = c >= 'A' && c <= 'Z';
    if (plain || capital) {
      out += capital ? static_cast<char>(c - 'A' + 'a') : c;
    } else if (!out.empty() && out.back() != '_') {
      out += '_';
    }
  }
  while (!out.empty() && out.back() == '_') out.pop_back();
  return out.empty() ? "recipe" : out;
}

}  // namespace card

Sheet recipe_card(const ScaledRecipe& scaled, const Book& book, const CardOptions& options) {
  Sheet sheet;
  sheet.kind = "card";
  sheet.title = scaled.recipe->name;
  card::add_card(sheet, scaled, book, options);
  return sheet;
}

Sheet event_cards(const Event& event, const Production& production, const Book& book,
                  const CardOptions& options) {
  Sheet sheet;
  sheet.kind = "cards";
  sheet.title = event.name;
  if (event.at) {
    sheet.date = date_text(*event.at);
    sheet.subtitles.push_back("served " + weekday_text(*event.at) + " " + date_text(*event.at) + " at " +
                              clock_text(*event.at) + (event.zone.empty() ? "" : " " + event.zone));
  }
  sheet.subtitles.push_back(guest_count(event).str() + " guests, " +
                            percent_text(event.over) + " over");
  for (const SubRecipePlan& plan : production.sub_recipes) {
    sheet.add(Part{card::key_of_name(plan.scaled.recipe->name), plan.scaled.recipe->name});
    card::add_card(sheet, plan.scaled, book, options);
  }
  for (const DishPlan& plan : production.dishes) {
    sheet.add(Part{card::key_of_name(plan.scaled.recipe->name), plan.scaled.recipe->name});
    card::add_card(sheet, plan.scaled, book, options);
  }
  return sheet;
}

}  // namespace platewright
