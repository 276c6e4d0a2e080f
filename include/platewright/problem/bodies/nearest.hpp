// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/nearest.hpp.

#include <algorithm>
#include <cstdint>
#include <tuple>
#include <utility>

#include "platewright/problem/nearest.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY FirstLetters::FirstLetters(std::string_view text)
    : size(std::min(text.size(), most)) {
  for (std::size_t i = 0; i < size; ++i) {
    const char c = text[i];
    letters[i] = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  }
}

/// One row of the table of distances between beginnings.
using DistanceRow = std::array<std::uint8_t, FirstLetters::most + 1>;

PLATEWRIGHT_BODY std::uint8_t least_of(int first, int second, int third) {
  return static_cast<std::uint8_t>(std::min({first, second, third}));
}

PLATEWRIGHT_BODY std::size_t distance_between(const FirstLetters& from, const FirstLetters& to,
                                              std::size_t most) {
  const auto above = static_cast<std::uint8_t>(std::min(most, FirstLetters::most) + 1);
  if (std::max(from.size, to.size) - std::min(from.size, to.size) > most) return above;
  DistanceRow before_last{};
  DistanceRow last{};
  DistanceRow current{};
  for (std::size_t j = 0; j <= to.size; ++j) last[j] = static_cast<std::uint8_t>(j);
  std::uint8_t least_of_last = 0;
  for (std::size_t i = 1; i <= from.size; ++i) {
    // A column further from the diagonal takes more insertions than may be.
    const std::size_t first = i > most ? i - most : 1;
    const std::size_t end = std::min(to.size, i + most);
    if (i + most <= to.size) last[i + most] = above;
    current[first - 1] = first == 1 ? static_cast<std::uint8_t>(i) : above;
    std::uint8_t least = current[first - 1];
    for (std::size_t j = first; j <= end; ++j) {
      const int change = from.letters[i - 1] == to.letters[j - 1] ? 0 : 1;
      current[j] = least_of(last[j] + 1, current[j - 1] + 1, last[j - 1] + change);
      if (i > 1 && j > 1 && from.letters[i - 1] == to.letters[j - 2] &&
          from.letters[i - 2] == to.letters[j - 1]) {
        current[j] = least_of(current[j], before_last[j - 2] + 1, above);
      }
      least = std::min(least, current[j]);
    }
    // A swap looks two rows back.
    if (least > most && least_of_last > most) return above;
    least_of_last = least;
    std::swap(before_last, last);
    std::swap(last, current);
  }
  return std::min(last[to.size], above);
}

/// 0 for a word of the same letters that begins alike (a slip of two fingers), 1 for one that does
/// either, 2 for every other.
PLATEWRIGHT_BODY int unlikeness(std::string_view left, std::string_view right) {
  std::string sorted_left(left);
  std::string sorted_right(right);
  std::sort(sorted_left.begin(), sorted_left.end());
  std::sort(sorted_right.begin(), sorted_right.end());
  const bool begin_alike = left.substr(0, 1) == right.substr(0, 1);
  return (sorted_left == sorted_right ? 0 : 1) + (begin_alike ? 0 : 1);
}

}  // namespace detail

PLATEWRIGHT_BODY std::vector<std::string> nearest_names(std::string_view wanted,
                                                        const std::vector<std::string>& known,
                                                        std::size_t most) {
  if (OnlyCounted::now()) return {};
  std::vector<std::tuple<std::size_t, int, std::string>> ranked;
  const detail::FirstLetters letters(wanted);
  for (std::size_t i = 0; i < std::min(known.size(), most_names_looked_at); ++i) {
    const std::string& name = known[i];
    const bool holds = wanted.size() >= 3 && name.find(wanted) != std::string::npos;
    const bool held = name.size() >= 3 && wanted.find(name) != std::string_view::npos;
    const std::size_t shorter = std::min<std::size_t>(64, std::min(wanted.size(), name.size()));
    const std::size_t longer = std::min<std::size_t>(64, std::max(wanted.size(), name.size()));
    const std::size_t allowed = longer < 3 ? 0 : std::max<std::size_t>(1, longer / 3);
    // So many letters are missing at least.
    if (!holds && !held && longer - shorter > allowed) continue;
    std::size_t distance = detail::distance_between(letters, detail::FirstLetters(name), allowed);
    if (holds || held) distance = std::min(distance, allowed);
    if (distance > allowed) continue;
    ranked.emplace_back(distance, detail::unlikeness(wanted, name), name);
  }
  std::stable_sort(ranked.begin(), ranked.end());
  std::vector<std::string> out;
  for (auto& [distance, unlikeness, name] : ranked) {
    if (out.size() == most) break;
    if (std::find(out.begin(), out.end(), name) == out.end()) out.push_back(std::move(name));
  }
  return out;
}

PLATEWRIGHT_BODY std::string did_you_mean(std::string_view wanted,
                                          const std::vector<std::string>& known) {
  std::string out;
  for (const std::string& name : nearest_names(wanted, known)) {
    out += out.empty() ? "did you mean " : ", ";
    out += in_quotes(name);
  }
  if (!out.empty()) out += "?";
  return out;
}

}  // namespace platewright
