// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/zone_rules.hpp.

#include <algorithm>
#include <iterator>
#include <utility>

#include "platewright/event/zone_rules.hpp"

namespace platewright {

PLATEWRIGHT_BODY ZoneRules::ZoneRules(std::string name, ZoneOffset first,
                                      std::vector<ZoneOffset> later) {
  std::vector<ZoneOffset> all{std::move(first)};
  std::move(later.begin(), later.end(), std::back_inserter(all));
  std::stable_sort(all.begin(), all.end(), [](const ZoneOffset& left, const ZoneOffset& right) {
    return left.from < right.from;
  });
  known_ = std::make_shared<const Known>(Known{std::move(name), std::move(all)});
}

PLATEWRIGHT_BODY ZoneOffset ZoneRules::offset_at(const Instant& instant) const {
  if (!named()) return {Instant(), std::chrono::minutes(0), {}};
  const auto next = std::upper_bound(
      known_->offsets.begin() + 1, known_->offsets.end(), instant,
      [](const Instant& left, const ZoneOffset& right) { return left < right.from; });
  return *std::prev(next);
}

PLATEWRIGHT_BODY LocalTime ZoneRules::local(const Instant& instant) const {
  return LocalTime((instant + offset_at(instant).offset).time_since_epoch());
}

PLATEWRIGHT_BODY std::vector<Instant> ZoneRules::instants(const LocalTime& local) const {
  // No offset is as much as a day.
  const Instant about(local.time_since_epoch());
  std::vector<Instant> out;
  for (const ZoneOffset& one : between(about - std::chrono::days(1), about + std::chrono::days(1)))
    if (const Instant instant = about - one.offset; this->local(instant) == local)
      if (std::find(out.begin(), out.end(), instant) == out.end()) out.push_back(instant);
  std::sort(out.begin(), out.end());
  return out;
}

PLATEWRIGHT_BODY Instant ZoneRules::day_begins(const std::chrono::local_days& day) const {
  const auto midnights = instants(LocalTime(day));
  if (!midnights.empty()) return midnights.front();
  return change_around(LocalTime(day)).from;
}

PLATEWRIGHT_BODY ZoneOffset ZoneRules::change_around(const LocalTime& local) const {
  const Instant about(local.time_since_epoch());
  const auto offsets = between(about - std::chrono::days(1), about + std::chrono::days(1));
  for (std::size_t i = 1; i < offsets.size(); ++i) {
    const auto [low, high] = std::minmax(offsets[i - 1].offset, offsets[i].offset);
    if (offsets[i].from + low <= about && about < offsets[i].from + high) return offsets[i];
  }
  return offsets.back();
}

PLATEWRIGHT_BODY std::vector<ZoneOffset> ZoneRules::changes(const Instant& begin,
                                                            const Instant& end) const {
  std::vector<ZoneOffset> out = between(begin, end);
  out.erase(out.begin());
  return out;
}

PLATEWRIGHT_BODY std::vector<ZoneOffset> ZoneRules::between(const Instant& begin,
                                                            const Instant& end) const {
  std::vector<ZoneOffset> out{offset_at(begin)};
  if (!named()) return out;
  for (auto one = known_->offsets.begin() + 1; one != known_->offsets.end(); ++one) {
    if (begin < one->from && one->from <= end) out.push_back(*one);
  }
  return out;
}

PLATEWRIGHT_BODY std::string offset_text(const std::chrono::minutes& offset) {
  const long minutes = std::abs(static_cast<long>(offset.count()));
  return (offset.count() < 0 ? "-" : "+") + two_digits(minutes / 60) + ":" +
         two_digits(minutes % 60);
}

PLATEWRIGHT_BODY std::string instant_text(const Instant& instant, const ZoneRules& zone) {
  const LocalTime local = zone.local(instant);
  return date_text(local) + "T" + clock_text(local) +
         (zone.named() ? offset_text(zone.offset_at(instant).offset) : "");
}

}  // namespace platewright
