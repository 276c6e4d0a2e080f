// SPDX-License-Identifier: MIT
#pragma once
// How far a place's wall clock is from UTC, and when it is turned.

#include <chrono>
#include <memory>
#include <string>
#include <vector>

#include "platewright/event/local_time.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// A minute of the one time line in which cooking, holding and cooling are counted, whatever a
/// clock is turned to in between. UTC; where no zone is known, the wall clock as if it were never
/// turned.
using Instant = std::chrono::sys_time<std::chrono::minutes>;

/// From an instant on, the wall clock shows UTC and this.
struct ZoneOffset {
  Instant from;
  std::chrono::minutes offset;
  std::string abbreviation;  ///< `CDT`
};

/// The clock of a place, as a plain value: whoever reads a database of zones makes it. Empty rules
/// are those of a place whose zone no one named.
class ZoneRules {
 public:
  ZoneRules() = default;
  /// `first` counts for all time before the next change, too. Offsets in any order.
  ZoneRules(std::string name, ZoneOffset first, std::vector<ZoneOffset> later = {});

  bool named() const { return known_ != nullptr; }
  /// `America/Chicago`; empty where no zone is named.
  std::string name() const { return named() ? known_->name : std::string(); }

  ZoneOffset offset_at(const Instant& instant) const;

  /// What the clock on the wall shows.
  LocalTime local(const Instant& instant) const;

  /// When the clock shows this, the first time first: never in an hour that is left out, twice in
  /// one that comes again.
  std::vector<Instant> instants(const LocalTime& local) const;

  /// When a day begins: at its first minute where there is no midnight.
  Instant day_begins(const std::chrono::local_days& day) const;

  /// The change in whose gap or overlap this time stands; only for one that does.
  ZoneOffset change_around(const LocalTime& local) const;

  /// The changes after `begin` and until `end`.
  std::vector<ZoneOffset> changes(const Instant& begin, const Instant& end) const;

 private:
  struct Known {
    std::string name;
    std::vector<ZoneOffset> offsets;  ///< by `from`; at least one
  };

  /// The offset at `begin`, and all that come until `end`.
  std::vector<ZoneOffset> between(const Instant& begin, const Instant& end) const;

  std::shared_ptr<const Known> known_;  ///< shared by all copies of an event
};

/// `-05:00` (ISO 8601).
std::string offset_text(const std::chrono::minutes& offset);

/// `2027-10-09T18:30-05:00`; without an offset where no zone is named (ISO 8601).
std::string instant_text(const Instant& instant, const ZoneRules& zone);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/zone_rules.hpp"
#endif
