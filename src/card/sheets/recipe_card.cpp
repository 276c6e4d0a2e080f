// SPDX-License-Identifier: MIT
#include "platewright/card/recipe_card.hpp"

#include <algorithm>

#include "card/sheets/part_table.hpp"
#include "card/sheets/recipe_card_method.hpp"
#include "card/sheets/recipe_card_parts.hpp"
#include "card/sheets/recipe_card_size.hpp"
#include "card/sheets/safety_boxes.hpp"
#include "card/sheets/shared.hpp"
#include "card/sheets/step_boxes.hpp"
#include "platewright/card/number_text.hpp"

namespace platewright {
namespace card {

/// Lines under the component that they belong to; `row_of` gives the cells of one.
template <class RowOf>
void add_lines(Table& table, const ScaledRecipe& scaled, RowOf&& row_of) {
  std::string part;
  for (const ScaledLine& line : scaled.lines) {
    if (line.line->part != part) table.open_group(line.line->part);
    part = line.line->part;
    table.add(row_of(line));
  }
}

/// Weight, amount and name alone, for print that is read from far off.
Table large_table(Sheet& sheet, const ScaledRecipe& scaled, const Book& book,
                  const CardViews& views) {
  Table table;
  table.key = "ingredients";
  table.title = "Ingredients";
  table.columns = {figures_column("weight", "Weight"), words_column("measure", "Measure"),
                   naming_column("ingredient", "Ingredient")};
  add_lines(table, scaled, [&](const ScaledLine& line) {
    return large_ingredient_row(sheet, scaled, line, book, views.main);
  });
  return table;
}

Table ingredients_table(Sheet& sheet, const ScaledRecipe& scaled, const Book& book,
                        const CardViews& views) {
  Table table;
  table.key = "ingredients";
  table.title = "Ingredients";
  table.columns = {figures_column("weight", "Weight")};
  if (views.beside) {
    const bool us = views.beside->system() == MeasuringSystem::us;
    table.columns.push_back(us ? figures_column("us", "US") : figures_column("metric", "Metric"));
  }
  table.columns.push_back(words_column("measure", "Measure"));
  table.columns.push_back(figures_column("as_purchased", "As bought"));
  table.columns.push_back(naming_column("ingredient", "Ingredient"));
  add_lines(table, scaled, [&](const ScaledLine& line) {
    return ingredient_row(sheet, scaled, line, book, views);
  });
  return table;
}

void add_oven(Sheet& sheet, const ScaledRecipe& scaled, const CardViews& views) {
  if (Facts oven = oven_facts(scaled, views.main); !oven.facts.empty()) {
    sheet.add(std::move(oven));
  }
}

void add_parts(Sheet& sheet, const ScaledRecipe& scaled, const Book& book, const CardViews& views) {
  for (const PartOf what : {PartOf::batches, PartOf::vessels}) {
    if (auto parts = part_table(scaled, what, book, views.main)) sheet.add(std::move(*parts));
  }
  cite_vessel(sheet, scaled);
}

/// What is read while the hands are busy comes first in large print: it stands on one page.
void add_large_amounts(Sheet& sheet, const ScaledRecipe& scaled, const Book& book,
                       const CardViews& views) {
  sheet.add(large_table(sheet, scaled, book, views));
  add_oven(sheet, scaled, views);
  sheet.add(allergen_box(*scaled.recipe, book));
  add_parts(sheet, scaled, book, views);
}

void add_amounts(Sheet& sheet, const ScaledRecipe& scaled, const Book& book,
                 const CardViews& views) {
  sheet.add(allergen_box(*scaled.recipe, book));
  sheet.add(ingredients_table(sheet, scaled, book, views));
  add_parts(sheet, scaled, book, views);
  if (auto weights = meat_weights(sheet, scaled, views.main)) sheet.add(std::move(*weights));
  add_oven(sheet, scaled, views);
}

/// The blocks of one card, in the order that a cook reads them.
void add_card(Sheet& sheet, const ScaledRecipe& scaled, const Book& book,
              const CardOptions& options) {
  const CardViews views(options, book);
  Facts size = size_facts(scaled, views.main);
  if (options.cost) add_cost(size, scaled, book);
  sheet.add(std::move(size));
  if (auto overflow = overflow_box(scaled, book, views.main)) sheet.add(std::move(*overflow));
  (options.large ? add_large_amounts : add_amounts)(sheet, scaled, book, views);
  for (Box& box : safety_boxes(sheet, scaled, book)) sheet.add(std::move(box));
  if (auto box = unsafe_steps_box(unsafe_steps_of(scaled, book))) sheet.add(*std::move(box));
  if (!scaled.recipe->steps.empty()) sheet.add(method(scaled, views));
  if (auto limits = step_limits_table(scaled, book)) sheet.add(*std::move(limits));
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

/// A part for every recipe that is made, each before those that use it.
void add_cards(Sheet& sheet, const Production& production, const Book& book,
               const CardOptions& options) {
  for (const SubRecipePlan& plan : production.sub_recipes) {
    sheet.add(Part{key_of_name(plan.scaled.recipe->name), plan.scaled.recipe->name});
    add_card(sheet, plan.scaled, book, options);
  }
  for (const DishPlan& plan : production.dishes) {
    sheet.add(Part{key_of_name(plan.scaled.recipe->name), plan.scaled.recipe->name});
    add_card(sheet, plan.scaled, book, options);
  }
}

}  // namespace card

Sheet recipe_card(const ScaledRecipe& scaled, const Book& book, const CardOptions& options) {
  Sheet sheet(SheetKind::card);
  sheet.title = scaled.recipe->name;
  sheet.date = options.date;
  card::add_card(sheet, scaled, book, options);
  return sheet;
}

Sheet production_cards(const Production& production, const Book& book, const CardOptions& options) {
  Sheet sheet(SheetKind::cards);
  sheet.date = options.date;
  if (!production.dishes.empty()) sheet.title = production.dishes.front().scaled.recipe->name;
  card::add_cards(sheet, production, book, options);
  return sheet;
}

Sheet event_cards(const Event& event, const Production& production, const Book& book,
                  const CardOptions& options) {
  Sheet sheet(SheetKind::cards);
  sheet.title = event.name;
  if (event.at) {
    sheet.date = date_text(event.at->local());
    sheet.subtitles.push_back(card::served_text(event));
  }
  sheet.subtitles.push_back(as_exact(guest_count(event)) + " guests, " + percent_text(event.over) +
                            " over");
  card::add_cards(sheet, production, book, options);
  return sheet;
}

}  // namespace platewright
