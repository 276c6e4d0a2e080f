// SPDX-License-Identifier: MIT
#pragma once
// What kinds of sheet there are.

#include <string_view>
#include <vector>

namespace platewright {

enum class SheetKind {
  card,
  cards,
  batches,
  yield,
  worksheet,
  class_marks,
  trials,
  measure,
  tables,
  cost,
  plate_costs,
  event_cost,
  why,
  quote,
  client_quote,
  invoice,
  guest_table,
  movers,
  budget,
  margin_risk,
  order,
  delivery_notes,
  timeline,
  day,
  labels,
  buffet_cards,
  check,
  roast,
  lethality,
};

/// `card`, `event_cost`: in snake_case, part of the interface.
inline std::string_view name_of(SheetKind kind) {
  switch (kind) {
    case SheetKind::card:
      return "card";
    case SheetKind::cards:
      return "cards";
    case SheetKind::batches:
      return "batches";
    case SheetKind::yield:
      return "yield";
    case SheetKind::worksheet:
      return "worksheet";
    case SheetKind::class_marks:
      return "class_marks";
    case SheetKind::trials:
      return "trials";
    case SheetKind::measure:
      return "measure";
    case SheetKind::tables:
      return "tables";
    case SheetKind::cost:
      return "cost";
    case SheetKind::plate_costs:
      return "plate_costs";
    case SheetKind::event_cost:
      return "event_cost";
    case SheetKind::why:
      return "why";
    case SheetKind::quote:
      return "quote";
    case SheetKind::client_quote:
      return "client_quote";
    case SheetKind::invoice:
      return "invoice";
    case SheetKind::guest_table:
      return "guest_table";
    case SheetKind::movers:
      return "movers";
    case SheetKind::budget:
      return "budget";
    case SheetKind::margin_risk:
      return "margin_risk";
    case SheetKind::order:
      return "order";
    case SheetKind::delivery_notes:
      return "delivery_notes";
    case SheetKind::timeline:
      return "timeline";
    case SheetKind::day:
      return "day";
    case SheetKind::labels:
      return "labels";
    case SheetKind::buffet_cards:
      return "buffet_cards";
    case SheetKind::check:
      return "check";
    case SheetKind::roast:
      return "roast";
    case SheetKind::lethality:
      return "lethality";
  }
  return {};
}

/// Every kind, in the order above.
inline std::vector<SheetKind> all_sheet_kinds() {
  std::vector<SheetKind> out;
  for (int i = 0; !name_of(static_cast<SheetKind>(i)).empty(); ++i) {
    out.push_back(static_cast<SheetKind>(i));
  }
  return out;
}

}  // namespace platewright
