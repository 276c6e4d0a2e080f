// SPDX-License-Identifier: MIT
#pragma once
// A moment as the clock of its place shows it.

#include <compare>
#include <optional>

#include "platewright/event/zone_rules.hpp"
#include "platewright/problem/body.hpp"
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
            const std::optional<std::chrono::minutes>& offset = std::nullopt);

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
  static std::string clock_at(const Instant& instant, const std::chrono::minutes& offset);

  static Instant the_instant(const LocalTime& local, const ZoneRules& zone,
                             const std::optional<std::chrono::minutes>& offset);

  LocalTime local_;
  ZoneRules zone_;
  Instant instant_;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/zoned_time.hpp"
#endif
