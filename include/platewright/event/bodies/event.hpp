// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/event.hpp.

#include <chrono>

#include "platewright/event/event.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::optional<LocalDay> day_of(const Event& event) {
  if (!event.at) return std::nullopt;
  return std::chrono::floor<std::chrono::days>(event.at->local());
}

PLATEWRIGHT_BODY Rational guest_count(const Event& event) {
  Rational out;
  for (const GuestKind& kind : event.guests) out += kind.count;
  return out;
}

PLATEWRIGHT_BODY Rational portion_count(const Event& event) {
  Rational out;
  for (const GuestKind& kind : event.guests) out += kind.count * kind.portion_share;
  return out;
}

PLATEWRIGHT_BODY Rational portion_count(const Event& event, const MenuLine& line) {
  if (line.guests.empty()) return portion_count(event);
  Rational out;
  for (const GuestKind& kind : event.guests) {
    if (kind.name == line.guests) out += kind.count * kind.portion_share;
  }
  return out;
}

}  // namespace platewright
