// SPDX-License-Identifier: MIT
#include "card/sheets/client_notices.hpp"
#include "card/sheets/quote_parts.hpp"
#include "card/sheets/safety_boxes.hpp"
#include "platewright/card/label_sheets.hpp"

namespace platewright {
namespace {

std::string names_of(const std::vector<DeclaredAllergen>& allergens) {
  std::vector<std::string> out;
  for (const DeclaredAllergen& one : allergens) out.push_back(card::allergen_name(one));
  return card::listed(out);
}

Box dish_box(const DishNotice& notice) {
  Box box{"dish", notice.dish, {}};
  const DeclaredAllergens& told = notice.declared;
  if (!told.contains.empty()) box.lines.push_back("CONTAINS " + names_of(told.contains) + ".");
  if (!told.may_contain.empty()) {
    box.lines.push_back("MAY CONTAIN " + names_of(told.may_contain) + ".");
  }
  if (!told.not_stated.empty()) {
    box.lines.push_back("NOT KNOWN for " + card::listed(told.not_stated) +
                        ". Do not eat it if an allergen is a danger to you; ask us.");
  }
  if (box.lines.empty()) {
    box.lines.push_back("ALLERGENS: " + card::none_declared(notice.allergens) + ".");
  }
  for (std::string& line : card::disclosures(notice)) box.lines.push_back(std::move(line));
  return box;
}

}  // namespace

Sheet buffet_sheet(const Event& event, const std::vector<DishNotice>& notices) {
  Sheet sheet(SheetKind::buffet_cards);
  sheet.title = "For the buffet: " + event.name;
  card::begin_event_sheet(event, sheet);
  for (const DishNotice& notice : notices) sheet.add(dish_box(notice));
  sheet.add(Paragraphs{"note",
                       "",
                       {"As the caterer's book states them; traces that it does not name are not "
                        "covered, and spoons wander between dishes. Local codes come first."}});
  return sheet;
}

}  // namespace platewright
