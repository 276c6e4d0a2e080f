// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/zoned_time.hpp.

#include <utility>

#include "platewright/event/zoned_time.hpp"

namespace platewright {

PLATEWRIGHT_BODY ZonedTime::ZonedTime(const LocalTime& local, ZoneRules zone,
                                      const std::optional<std::chrono::minutes>& offset)
    : local_(local), zone_(std::move(zone)), instant_(the_instant(local, zone_, offset)) {}

PLATEWRIGHT_BODY std::string ZonedTime::clock_at(const Instant& instant,
                                                 const std::chrono::minutes& offset) {
  return clock_text(LocalTime((instant + offset).time_since_epoch()));
}

PLATEWRIGHT_BODY Instant ZonedTime::the_instant(const LocalTime& local, const ZoneRules& zone,
                                                const std::optional<std::chrono::minutes>& offset) {
  const std::vector<Instant> instants = zone.instants(local);
  const std::string text = date_text(local) + " " + clock_text(local);
  if (instants.empty()) {
    const Instant turned = zone.change_around(local).from;
    const auto before = zone.offset_at(turned - std::chrono::minutes(1)).offset;
    throw Failure(problems::time_left_out(text, zone.name(), clock_at(turned, before),
                                          clock_at(turned, zone.offset_at(turned).offset)));
  }
  const auto offset_of = [&](const Instant& one) { return zone.offset_at(one).offset; };
  if (!offset) {
    if (instants.size() == 1) return instants.front();
    throw Failure(problems::time_twice(text, zone.name(), offset_text(offset_of(instants[0])),
                                       offset_text(offset_of(instants[1]))));
  }
  std::string right;
  for (const Instant& one : instants) {
    if (offset_of(one) == *offset) return one;
    right += (right.empty() ? "" : " or ") + offset_text(offset_of(one));
  }
  throw Failure(problems::time_offset_wrong(text, zone.name(), offset_text(*offset), right));
}

}  // namespace platewright
