// SPDX-License-Identifier: MIT
#pragma once
// How far a place's wall clock is from UTC, and when it is turned.

#include <algorithm>
#include <chrono>
#include <iterator>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/local_time.hpp"

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
  ZoneRules(std::string name, ZoneOffset first, std::vector<ZoneOffset> later = {}) {
    std::vector<ZoneOffset> all{std::move(first)};
    std::move(later.begin(), later.end(), std::back_inserter(all));
    std::stable_sort(all.begin(), all.end(), [](const ZoneOffset& left, const ZoneOffset& right) {
      return left.from < right.from;
    });
    known_ = std::make_shared<const Known>(Known{std::move(name), std::move(all)});
  }

  bool named() const { return known_ != nullptr; }
  /// `America/Chicago`; empty where no zone is named.
  std::string name() const { return named() ? known_->name : std::string(); }

  ZoneOffset offset_at(const Instant& instant) const {
    if (!named()) return {Instant(), std::chrono::minutes(0), {}};
    const auto next = std::upper_bound(
        known_->offsets.begin() + 1, known_->offsets.end(), instant,
        [](const Instant& left, const ZoneOffset& right) { return left < right.from; });
    return *std::prev(next);
  }

  /// What the clock on the wall shows.
  LocalTime local(const Instant& instant) const {
    return LocalTime((instant + offset_at(instant).offset).time_since_epoch());
  }

  /// When the clock shows this, the first time first: never in an hour that is left out, twice in
  /// one that comes again.
  std::vector<Instant> instants(const LocalTime& local) const {
    // No offset is as much as a day.
    const Instant about(local.time_since_epoch());
    std::vector<Instant> out;
    for (const ZoneOffset& one :
         between(about - std::chrono::days(1), about + std::chrono::days(1)))
      if (const Instant instant = about - one.offset; this->local(instant) == local)
        if (std::find(out.begin(), out.end(), instant) == out.end()) out.push_back(instant);
    std::sort(out.begin(), out.end());
    return out;
  }

  /// When a day begins: at its first minute where there is no midnight.
  Instant day_begins(const std::chrono::local_days& day) const {
    const auto midnights = instants(LocalTime(day));
    if (!midnights.empty()) return midnights.front();
    return change_around(LocalTime(day)).from;
  }

  /// The change in whose gap or overlap this time stands; only for one that does.
  ZoneOffset change_around(const LocalTime& local) const {
    const Instant about(local.time_since_epoch());
    const auto offsets = between(about - std::chrono::days(1), about + std::chrono::days(1));
    for (std::size_t i = 1; i < offsets.size(); ++i) {
      const auto [low, high] = std::minmax(offsets[i - 1].offset, offsets[i].offset);
      if (offsets[i].from + low <= about && about < offsets[i].from + high) return offsets[i];
    }
    return offsets.back();
  }

  /// The changes after `begin` and until `end`.
  std::vector<ZoneOffset> changes(const Instant& begin, const Instant& end) const {
    std::vector<ZoneOffset> out = between(begin, end);
    out.erase(out.begin());
    return out;
  }

 private:
  struct Known {
    std::string name;
    std::vector<ZoneOffset> offsets;  ///< by `from`; at least one
  };

  /// The offset at `begin`, and all that come until `end`.
  std::vector<ZoneOffset> between(const Instant& begin, const Instant& end) const {
    std::vector<ZoneOffset> out{offset_at(begin)};
    if (!named()) return out;
    for (auto one = known_->offsets.begin() + 1; one != known_->offsets.end(); ++one) {
      if (begin < one->from && one->from <= end) out.push_back(*one);
    }
    return out;
  }

  std::shared_ptr<const Known> known_;  ///< shared by all copies of an event
};

/// `-05:00` (ISO 8601).
inline std::string offset_text(const std::chrono::minutes& offset) {
  const long minutes = std::abs(static_cast<long>(offset.count()));
  return (offset.count() < 0 ? "-" : "+") + two_digits(minutes / 60) + ":" +
         two_digits(minutes % 60);
}

/// `2027-10-09T18:30-05:00`; without an offset where no zone is named (ISO 8601).
inline std::string instant_text(const Instant& instant, const ZoneRules& zone) {
  const LocalTime local = zone.local(instant);
  return date_text(local) + "T" + clock_text(local) +
         (zone.named() ? offset_text(zone.offset_at(instant).offset) : "");
}

}  // namespace platewright
