// SPDX-License-Identifier: MIT
#include "card/sheets/safety_boxes.hpp"

#include "platewright/card/number_text.hpp"
#include "platewright/recipe/declared_allergens.hpp"
#include "platewright/recipe/recipe_safety.hpp"
#include "platewright/safety/pull_temperature.hpp"
#include "platewright/safety/roast_oven.hpp"

namespace platewright::card {
namespace {

constexpr const char* local_codes =
    "Cook to temperature, not to time. Local codes and your inspector come first.";

std::string signed_step(const TemperatureStep& step) {
  return as_short_decimal(step.in(units::fahrenheit_step), 1) + " \u00B0F";
}

std::string hold_text(const RoastHold& hold) {
  return duration_text(hold.hold.in(units::minute), Rounding::up) + " at " +
         fahrenheit_text(hold.at, Rounding::up) + " or more (" + hold.authority + ", " + hold.row +
         ")";
}

std::string held_temperature_text(const MinimumTemperature& minimum) {
  std::string out = fahrenheit_text(minimum.at, Rounding::up);
  if (minimum.rest && *minimum.rest > Duration()) {
    out += ", then rest " + duration_text(minimum.rest->in(units::minute), Rounding::up);
  }
  if (minimum.hold && *minimum.hold > Duration()) {
    out += " for " + duration_text(minimum.hold->in(units::minute), Rounding::up);
  }
  return out;
}

std::string minimum_text(const MinimumTemperature& minimum) {
  const std::string out = minimum.authority + " (" + std::string(name_of(minimum.audience)) +
                          "): " + held_temperature_text(minimum);
  return minimum.row.empty() ? out : out + " [" + minimum.row + "]";
}

std::string pull_text(const Temperature& pull) {
  return "Pull at " + fahrenheit_text(pull, Rounding::up) + " inside, in the thickest part.";
}

std::string cook_on_text(const MinimumTemperature& minimum) {
  std::string out =
      "BELOW THE MINIMUM: a notice to guests does not make this food safe. Cook on to " +
      held_temperature_text(minimum) + " (" + minimum.authority;
  if (!minimum.row.empty()) out += ", " + minimum.row;
  if (!minimum.note.empty()) out += "; " + minimum.note;
  return out + ").";
}

std::string met(const char* oven, bool meets) {
  return std::string(oven) + (meets ? " met" : " NOT MET");
}

/// The oven half of the rule whose holding time stands before it.
std::string roast_oven_text(const RoastOvenCheck& check) {
  std::string out =
      std::string("That hold is for a roast ") +
      (check.under_ten_pounds ? "under 10 lb" : "of 10 lb or more") + " from an oven at " +
      fahrenheit_text(check.still.temperature->at, Rounding::up) + " or more if still and dry, " +
      fahrenheit_text(check.convection.temperature->at, Rounding::up) + " or more if convection, " +
      fahrenheit_text(check.humid.temperature->at, Rounding::down) + " or less if humid (" +
      check.still.source + ", " + check.still.row + "). ";
  return out + "By this recipe's settings: " + met("still", check.still_meets) + ", " +
         met("convection", check.convection_meets) + ", " + met("humid", check.humid_meets) + ".";
}

/// What one roast weighs as it is cooked here; nothing where the recipe names no pieces.
std::optional<Mass> roast_weight(const ScaledRecipe& scaled) {
  if (scaled.plan.piece_weight) return scaled.plan.piece_weight;
  return scaled.recipe->tested ? std::optional<Mass>(scaled.recipe->tested->weight) : std::nullopt;
}

void add_advisory(const PullCheck& check, const ScaledRecipe& scaled, const SafetyTable& table,
                  Box& box) {
  switch (check.advisory) {
    case Advisory::no_minimum:
    case Advisory::not_needed:
      break;
    case Advisory::unless_held:
      box.lines.push_back(
          "BELOW THE MINIMUM: hold the roast for " + hold_text(*check.hold) +
          ", or tell guests in writing that it is undercooked (Food Code 3-603.11).");
      if (const auto oven =
              check_roast_oven(oven_temperatures(*scaled.recipe), roast_weight(scaled), table)) {
        box.lines.push_back(roast_oven_text(*oven));
      }
      break;
    case Advisory::needed:
      box.lines.push_back(
          "BELOW THE MINIMUM: tell guests in writing that it is undercooked and that raw or "
          "undercooked meat raises the risk of illness (Food Code 3-603.11).");
      break;
    case Advisory::cook_on:
      box.lines.push_back(cook_on_text(*check.cook_to));
      break;
  }
}

Box not_known_box(const std::vector<std::string>& ingredients, const Temperature& pull) {
  return {"temperature_not_known",
          "TEMPERATURE: NOT KNOWN for these ingredients",
          {pull_text(pull), "NOT KNOWN what kind of food this is: " + listed(ingredients) + ".",
           "Meat, poultry, fish and eggs each have a minimum; the book names none here. Find it "
           "before cooking, and say in the larder what each ingredient is.",
           local_codes}};
}

}  // namespace

std::string listed(const std::vector<std::string>& names) {
  std::string out;
  for (const std::string& name : names) out += (out.empty() ? "" : ", ") + name;
  return out;
}

std::string allergen_name(const DeclaredAllergen& allergen) {
  if (allergen.kind_of.empty()) return allergen.key;
  return allergen.key + " (" + listed(allergen.kind_of) + ")";
}

std::string none_declared(const RecipeAllergens& all) {
  const bool none = all.found.empty() && all.may_contain.empty();
  return std::string(none ? "None" : "None of the list of the law chosen") +
         ", by the book's statement for every ingredient";
}

std::vector<std::string> allergen_lines(const RecipeAllergens& all,
                                        const DeclaredAllergens& known) {
  std::vector<std::string> out;
  for (const DeclaredAllergen& line : known.contains) {
    out.push_back(allergen_name(line) + ": " + listed(line.ingredients));
  }
  for (const DeclaredAllergen& line : known.may_contain) {
    out.push_back("may contain " + allergen_name(line) + ": " + listed(line.ingredients));
  }
  if (!known.not_stated.empty()) {
    out.push_back("NOT KNOWN for: " + listed(known.not_stated) + ". Ask before serving.");
  }
  if (out.empty()) out.push_back(none_declared(all));
  return out;
}

Box allergen_box(const Recipe& recipe, const Book& book) {
  const AllergenTable& table = book.tables.allergens;
  const RecipeAllergens all = allergens_of(recipe, book.recipes, table);
  const DeclaredAllergens allergens = declared(all, table);
  Box box{"allergens", "ALLERGENS", allergen_lines(all, allergens)};
  if (table.law() != AllergenLaw::both) {
    box.lines.push_back("By the list of the law chosen: " + std::string(name_of(table.law())) +
                        ".");
  }
  const bool warned = !allergens.may_contain.empty();
  box.lines.push_back("From the book's own statements; check every label. " +
                      std::string(warned ? "Other traces" : "Traces") + " are not covered.");
  return box;
}

std::vector<Box> safety_boxes(Sheet& sheet, const ScaledRecipe& scaled, const Book& book) {
  std::vector<Box> out;
  const Recipe& recipe = *scaled.recipe;
  const SafetyTable& table = book.tables.safety;
  const auto pull = pull_temperature(recipe);
  const RecipeSafety safety = safety_of(recipe, book.recipes);
  if (pull && safety.not_known()) return {not_known_box(safety.not_stated, *pull)};
  for (const FoodOfKind& food : safety.kinds) {
    const auto minimums = table.minimums_for(food.kind);
    if (minimums.empty()) continue;
    Box box{"temperature_" + std::to_string(out.size() + 1), "TEMPERATURE: " + food.kind.key(), {}};
    if (pull) {
      const PullCheck check = check_pull_temperature(food.kind, *pull, recipe.rest, table);
      box.lines.push_back(pull_text(*pull));
      for (const MinimumCheck& minimum : check.checks) {
        box.lines.push_back(
            minimum_text(minimum.minimum) +
            (minimum.reached ? ": reached" : ": short by " + signed_step(minimum.short_by)));
      }
      add_advisory(check, scaled, table, box);
    } else {
      for (const MinimumTemperature& minimum : minimums) box.lines.push_back(minimum_text(minimum));
    }
    box.lines.emplace_back(local_codes);
    for (const MinimumTemperature& minimum : minimums) cite(sheet, minimum.source);
    out.push_back(std::move(box));
  }
  return out;
}

}  // namespace platewright::card
