// SPDX-License-Identifier: MIT
#pragma once
// A moment as the clock of its place shows it.

#include <compare>
#include <optional>
#include <utility>

#include "platewright/event/zone_rules.hpp"
#include "platewright/problem/catalogue/clock.hpp"

namespace platewright {

/// A time on a wall clock, the clock, and the instant that it is: always all three.
class ZonedTime {
 public:
  /// Of a place whose zone is not known: as if no clock were ever turned.
  ZonedTime(const LocalTime& local)  // NOLINT(google-explicit-constructor): nothing is lost
      : local_(local), instant_(local.time_since_epoch()) {}

  /// Throws Failure for a time that the clock leaves out, for one that it shows twice where no
  /// offset says which, and for an offset that the place does not have then.
  ZonedTime(const LocalTime& local, ZoneRules zone,
            const std::optional<std::chrono::minutes>& offset = std::nullopt)
      : local_(local), zone_(std::move(zone)), instant_(the_instant(local, zone_, offset)) {}

  const LocalTime& local() const { return local_; }
  const Instant& instant() const { return instant_; }
  const ZoneRules& zone() const { return zone_; }

  friend bool operator==(const ZonedTime& left, const ZonedTime& right) {
    return left.instant_ == right.instant_;
  }
  /// The earlier moment is less, wherever it is.
  friend auto operator<=>(const ZonedTime& left, const ZonedTime& right) {
    return left.instant_ <=> right.instant_;
  }

 private:
  static std::string clock_at(const Instant& instant, const std::chrono::minutes& offset) {
    return clock_text(LocalTime((instant + offset).time_since_epoch()));
  }

  static Instant the_instant(const LocalTime& local, const ZoneRules& zone,
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

  LocalTime local_;
  ZoneRules zone_;
  Instant instant_;
};

}  // namespace platewright
