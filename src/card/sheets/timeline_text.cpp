// SPDX-License-Identifier: MIT
#include "card/sheets/timeline_text.hpp"

#include "platewright/card/figures.hpp"

namespace platewright {
namespace {

/// The goods by name where they are few.
std::string delivery_text(const TimelineEntry& entry) {
  std::string out = entry.supplier.empty() ? "Goods in" : "Goods in from " + entry.supplier;
  if (entry.goods.size() > 3) return out + ": " + std::to_string(entry.goods.size()) + " kinds";
  for (std::size_t i = 0; i < entry.goods.size(); ++i)
    out += (i == 0 ? ": " : "; ") + entry.goods[i];
  return out;
}

}  // namespace

std::string kind_text(TimelineKind kind) {
  switch (kind) {
    case TimelineKind::order:
      return "order";
    case TimelineKind::delivery:
      return "delivery";
    case TimelineKind::method_step:
      return "step";
    case TimelineKind::oven_step:
      return "oven";
    case TimelineKind::pull:
      return "pull";
    case TimelineKind::serve:
      return "serve";
  }
  return {};
}

std::string begin_text(const TimelineEntry& entry) {
  switch (entry.kind) {
    case TimelineKind::order:
      return "Last day to order from " + entry.supplier;
    case TimelineKind::delivery:
      return delivery_text(entry);
    case TimelineKind::method_step:
      return entry.text;
    case TimelineKind::oven_step: {
      std::string text = "Oven " + fahrenheit_text(entry.oven->oven, Rounding::half_up);
      if (entry.oven->time)
        text += ", about " + duration_text(entry.oven->time->in(units::minute), Rounding::half_up);
      if (entry.oven->until)
        text += ", until " + fahrenheit_text(*entry.oven->until, Rounding::up) + " inside";
      return text;
    }
    case TimelineKind::pull:
      return entry.inside ? "Out of the oven at " + fahrenheit_text(*entry.inside, Rounding::up) +
                                " inside; rest"
                          : "Out of the oven";
    case TimelineKind::serve:
      return "SERVE";
  }
  return {};
}

}  // namespace platewright
