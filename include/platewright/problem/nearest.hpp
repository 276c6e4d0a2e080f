// SPDX-License-Identifier: MIT
#pragma once
// "Did you mean": the known names nearest to a name that is not known.

#include <array>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/only_counted.hpp"
#include "platewright/problem/text.hpp"

namespace platewright {

namespace detail {

/// The first letters of a name, small, and how many there are.
struct FirstLetters {
  static constexpr std::size_t most = 64;

  explicit FirstLetters(std::string_view text);

  std::array<char, most> letters{};
  std::size_t size;
};

/// `spelling_distance`, of which only the columns are worked out that can come to `most`.
std::size_t distance_between(const FirstLetters& from, const FirstLetters& to, std::size_t most);

}  // namespace detail

/// Number of single-letter insertions, deletions, replacements and neighbour swaps that turn `left`
/// into `right` (optimal string alignment distance), upper and lower case alike; `most + 1` for
/// every distance above `most`, which is found sooner. Long names are compared on their first 64
/// letters, so the time is bounded.
inline std::size_t spelling_distance(std::string_view left, std::string_view right,
                                     std::size_t most = detail::FirstLetters::most) {
  return detail::distance_between(detail::FirstLetters(left), detail::FirstLetters(right), most);
}

/// Of so many names the nearest are looked for.
inline constexpr std::size_t most_names_looked_at = 10000;

/// Up to `most` of `known`, nearest first: names that begin alike or hold the word count as near,
/// others when at most a third of their letters (one of three) differ. Of more than ten thousand
/// names the first ten thousand are looked at, and none while problems are `OnlyCounted`.
std::vector<std::string> nearest_names(std::string_view wanted,
                                       const std::vector<std::string>& known, std::size_t most = 3);

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
std::string did_you_mean(std::string_view wanted, const std::vector<std::string>& known);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/nearest.hpp"
#endif
