// SPDX-License-Identifier: MIT
#include "card/sheets/client_notices.hpp"

#include <algorithm>

#include "card/sheets/safety_boxes.hpp"
#include "platewright/card/number_text.hpp"

namespace platewright::card {
namespace {

bool has_temperatures(const DishNotice& notice) {
  return !notice.undercooked.empty() || !notice.not_known.empty();
}

/// The reminder of FDA Food Code 2022, 3-603.11(C).
const char* const reminder =
    "Raw or undercooked meat, poultry, fish, shellfish or eggs can make people ill, most of all "
    "children, older people, pregnant women and those with a weak immune system (FDA Food Code "
    "2022, 3-603.11; local codes come first).";

std::string undercooked_text(const UndercookedFood& food) {
  const MinimumTemperature& minimum = *food.check.cook_to;
  const std::string out = listed(food.ingredients) + " cooked to " +
                          fahrenheit_text(food.check.pull, Rounding::down) + " inside, below the " +
                          fahrenheit_text(minimum.at, Rounding::up) + " of the " +
                          minimum.authority;
  return food.check.advisory == Advisory::cook_on
             ? out + ". NOT SAFE TO SERVE SO: it has to be cooked on to that temperature."
             : out + ". It may be served undercooked.";
}

std::string not_known_text(const UnknownMinimum& food) {
  return "cooked to " + fahrenheit_text(food.pull, Rounding::down) +
         " inside. NOT KNOWN whether that is enough for " + listed(food.ingredients) +
         "; ask the caterer.";
}

/// Each food below its minimum, or of which that is not known.
std::vector<std::string> temperatures(const DishNotice& notice) {
  std::vector<std::string> out;
  for (const UndercookedFood& food : notice.undercooked) out.push_back(undercooked_text(food));
  for (const UnknownMinimum& food : notice.not_known) out.push_back(not_known_text(food));
  return out;
}

/// Whether guests may choose food of it that is undercooked.
bool may_be_chosen(const DishNotice& notice) {
  return std::any_of(
      notice.undercooked.begin(), notice.undercooked.end(),
      [](const UndercookedFood& food) { return food.check.advisory != Advisory::cook_on; });
}

}  // namespace

std::string dish_text(const std::string& dish, const std::vector<DishNotice>& notices) {
  const auto notice = std::find_if(notices.begin(), notices.end(),
                                   [&](const DishNotice& one) { return one.dish == dish; });
  return notice != notices.end() && has_temperatures(*notice) ? dish + " *" : dish;
}

Table allergen_table(const std::vector<DishNotice>& notices) {
  Table table{"allergens",
              "Allergens",
              {words_column("allergen", "Allergen"), words_column("ingredients", "In"),
               data_column("dish")},
              {},
              {},
              {}};
  for (const DishNotice& notice : notices) {
    table.open_group(notice.dish);
    const auto add = [&](const std::string& allergen, const std::vector<std::string>& names) {
      table.add({words(allergen), words(listed(names)), words(notice.dish)});
    };
    const DeclaredAllergens& told = notice.declared;
    for (const DeclaredAllergen& one : told.contains) add(allergen_name(one), one.ingredients);
    for (const DeclaredAllergen& one : told.may_contain) {
      add("may contain " + allergen_name(one), one.ingredients);
    }
    if (!told.not_stated.empty()) add("NOT KNOWN for", told.not_stated);
    if (told.contains.empty() && told.may_contain.empty() && told.not_stated.empty()) {
      add(none_declared(notice.allergens), {});
    }
  }
  const bool warned = std::any_of(notices.begin(), notices.end(), [](const DishNotice& notice) {
    return !notice.declared.may_contain.empty();
  });
  table.notes = {"As the caterer's book states them; " + std::string(warned ? "other " : "") +
                 "traces are not covered. Tell the caterer of every allergy before the event."};
  return table;
}

std::vector<std::string> disclosures(const DishNotice& notice) {
  std::vector<std::string> out = temperatures(notice);
  if (may_be_chosen(notice)) out.emplace_back(reminder);
  return out;
}

Box undercooked_box(const std::vector<DishNotice>& notices) {
  Box box{"undercooked", "UNDERCOOKED FOOD", {}};
  for (const DishNotice& notice : notices) {
    for (const std::string& text : temperatures(notice)) {
      box.lines.push_back("* " + notice.dish + ": " + text);
    }
  }
  if (std::any_of(notices.begin(), notices.end(), may_be_chosen)) {
    box.lines.push_back("* " + std::string(reminder));
  }
  return box;
}

}  // namespace platewright::card
