// SPDX-License-Identifier: MIT
#include "card/sheets/eating_table.hpp"

#include "card/sheets/safety_boxes.hpp"
#include "platewright/card/cell.hpp"

namespace platewright::card {
namespace {

std::string answer_text(const EatingAnswer& answer) {
  switch (answer.eats) {
    case Eats::can:
      return "can eat";
    case Eats::cannot:
      return "CANNOT: " + listed(answer.because);
    case Eats::may_contain:
      return "MAY CONTAIN " + listed(answer.because);
    case Eats::not_known:
      return "NOT KNOWN: " + listed(answer.because);
  }
  return {};
}

}  // namespace

std::optional<Table> eating_table(const Event& event, const std::vector<DishNotice>& notices) {
  if (!has_diets(event)) return std::nullopt;
  Table table{"who_can_eat", "Who can eat what", {naming_column("dish", "Dish")}, {}, {}, {}};
  std::vector<const GuestKind*> kinds;
  for (const GuestKind& kind : event.guests) {
    if (kind.without.empty()) continue;
    kinds.push_back(&kind);
    table.columns.push_back(words_column("guests_" + std::to_string(kinds.size()), kind.name));
  }
  for (const DishNotice& notice : notices) {
    Row row{words(notice.dish)};
    for (const GuestKind* kind : kinds) {
      row.push_back(words(answer_text(eats(*kind, notice.allergens))));
    }
    table.add(std::move(row));
  }
  for (const GuestKind* kind : kinds) {
    table.notes.push_back(kind->name + ": without " + listed(kind->without) + ".");
  }
  table.notes.emplace_back(
      "By the book's own statements. What is cooked beside it, and what is not stated, is never "
      "free of anything: ask the guests, read every label.");
  return table;
}

}  // namespace platewright::card
