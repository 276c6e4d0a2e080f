// SPDX-License-Identifier: MIT
#pragma once
// "Did you mean": the known names nearest to a name that is not known.

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

#include "platewright/problem/only_counted.hpp"
#include "platewright/problem/text.hpp"

namespace platewright {

namespace detail {

/// The first letters of a name, small, and how many there are.
struct FirstLetters {
  static constexpr std::size_t most = 64;

  explicit FirstLetters(std::string_view text) : size(std::min(text.size(), most)) {
    for (std::size_t i = 0; i < size; ++i) {
      const char c = text[i];
      letters[i] = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
  }

  std::array<char, most> letters{};
  std::size_t size;
};

/// One row of the table of distances between beginnings.
using DistanceRow = std::array<std::uint8_t, FirstLetters::most + 1>;

inline std::uint8_t least_of(int first, int second, int third) {
  return static_cast<std::uint8_t>(std::min({first, second, third}));
}

/// `spelling_distance`, of which only the columns are worked out that can come to `most`.
inline std::size_t distance_between(const FirstLetters& from, const FirstLetters& to,
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

}  // namespace detail

/// Number of single-letter insertions, deletions, replacements and neighbour swaps that turn `left`
/// into `right` (optimal string alignment distance), upper and lower case alike; `most + 1` for
/// every distance above `most`, which is found sooner. Long names are compared on their first 64
/// letters, so the time is bounded.
inline std::size_t spelling_distance(std::string_view left, std::string_view right,
                                     std::size_t most = detail::FirstLetters::most) {
  return detail::distance_between(detail::FirstLetters(left), detail::FirstLetters(right), most);
}

namespace detail {

/// 0 for a word of the same letters that begins alike (a slip of two fingers), 1 for one that does
/// either, 2 for every other.
inline int unlikeness(std::string_view left, std::string_view right) {
  std::string sorted_left(left);
  std::string sorted_right(right);
  std::sort(sorted_left.begin(), sorted_left.end());
  std::sort(sorted_right.begin(), sorted_right.end());
  const bool begin_alike = left.substr(0, 1) == right.substr(0, 1);
  return (sorted_left == sorted_right ? 0 : 1) + (begin_alike ? 0 : 1);
}

}  // namespace detail

/// Of so many names the nearest are looked for.
inline constexpr std::size_t most_names_looked_at = 10000;

/// Up to `most` of `known`, nearest first: names that begin alike or hold the word count as near,
/// others when at most a third of their letters (one of three) differ. Of more than ten thousand
/// names the first ten thousand are looked at, and none while problems are `OnlyCounted`.
inline std::vector<std::string> nearest_names(std::string_view wanted,
                                              const std::vector<std::string>& known,
                                              std::size_t most = 3) {
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

/// Adds the keys of a map to the names that may have been meant: none that no one would look at.
template <class Map>
void add_names_of(const Map& map, std::vector<std::string>& known) {
  if (OnlyCounted::now()) return;
  for (const auto& [name, value] : map) {
    if (known.size() == most_names_looked_at) return;
    known.push_back(name);
  }
}

/// `did you mean "a", "b"?`, or nothing where no known name is near.
inline std::string did_you_mean(std::string_view wanted, const std::vector<std::string>& known) {
  std::string out;
  for (const std::string& name : nearest_names(wanted, known)) {
    out += out.empty() ? "did you mean " : ", ";
    out += in_quotes(name);
  }
  if (!out.empty()) out += "?";
  return out;
}

}  // namespace platewright
