#pragma once
// "Did you mean": the known names nearest to a name that is not known.

#include <algorithm>
#include <array>
#include <cctype>
#include <cstddef>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

#include "platewright/problem/text.hpp"

namespace platewright {

/// Number of single-letter insertions, deletions, replacements and neighbour swaps that turn `left`
/// into `right` (optimal string alignment distance), upper and lower case alike. Long names are
/// compared on their first 64 letters, so the time is bounded.
inline std::size_t spelling_distance(std::string_view left, std::string_view right) {
  left = left.substr(0, 64);
  right = right.substr(0, 64);
  const auto letter = [](char c) { return std::tolower(static_cast<unsigned char>(c)); };
  std::array<std::size_t, 65> before_last{};
  std::array<std::size_t, 65> last{};
  std::array<std::size_t, 65> current{};
  for (std::size_t j = 0; j <= right.size(); ++j) last[j] = j;
  for (std::size_t i = 1; i <= left.size(); ++i) {
    current[0] = i;
    for (std::size_t j = 1; j <= right.size(); ++j) {
      const std::size_t change = letter(left[i - 1]) == letter(right[j - 1]) ? 0 : 1;
      current[j] = std::min({last[j] + 1, current[j - 1] + 1, last[j - 1] + change});
      if (i > 1 && j > 1 && letter(left[i - 1]) == letter(right[j - 2]) &&
          letter(left[i - 2]) == letter(right[j - 1])) {
        current[j] = std::min(current[j], before_last[j - 2] + 1);
      }
    }
    std::swap(before_last, last);
    std::swap(last, current);
  }
  return last[right.size()];
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

/// Up to `most` of `known`, nearest first: names that begin alike or hold the word count as near,
/// others when at most a third of their letters (one of three) differ. Of more than ten thousand
/// names the first ten thousand are looked at.
inline std::vector<std::string> nearest_names(std::string_view wanted,
                                              const std::vector<std::string>& known,
                                              std::size_t most = 3) {
  constexpr std::size_t most_looked_at = 10000;
  std::vector<std::tuple<std::size_t, int, std::string>> ranked;
  for (std::size_t i = 0; i < std::min(known.size(), most_looked_at); ++i) {
    const std::string& name = known[i];
    const bool holds = wanted.size() >= 3 && name.find(wanted) != std::string::npos;
    const bool held = name.size() >= 3 && wanted.find(name) != std::string_view::npos;
    const std::size_t shorter = std::min<std::size_t>(64, std::min(wanted.size(), name.size()));
    const std::size_t longer = std::min<std::size_t>(64, std::max(wanted.size(), name.size()));
    const std::size_t allowed = longer < 3 ? 0 : std::max<std::size_t>(1, longer / 3);
    // So many letters are missing at least.
    if (!holds && !held && longer - shorter > allowed) continue;
    std::size_t distance = spelling_distance(wanted, name);
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
