// SPDX-License-Identifier: MIT
#pragma once
// Which headers a header reads, and which of them are worth precompiling.

#include <algorithm>
#include <cstddef>
#include <filesystem>
#include <map>
#include <optional>
#include <set>
#include <stdexcept>
#include <string>
#include <vector>

#include "support/folder.hpp"

namespace platewright::test {

/// The headers below some folders, by the names by which they are included.
class HeaderGraph {
 public:
  explicit HeaderGraph(const std::vector<std::filesystem::path>& folders) {
    for (const std::filesystem::path& folder : folders) {
      for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        if (entry.path().extension() != ".hpp") continue;
        names_.push_back(std::filesystem::relative(entry.path(), folder).string());
        files_[names_.back()] = entry.path();
      }
    }
    std::sort(names_.begin(), names_.end());
    for (const std::string& name : names_) read(name);
  }

  const std::vector<std::string>& names() const { return names_; }

  const std::filesystem::path& file(const std::string& name) const { return files_.at(name); }

  /// All that it reads of these headers, itself among it.
  const std::set<std::string>& reads(const std::string& name) const { return reads_.at(name); }

  /// How much text the compiler has to understand for it.
  std::size_t weight(const std::string& name) const { return weights_.at(name); }

  /// The heaviest of `some` that `name` reads besides itself.
  std::optional<std::string> heaviest(const std::vector<std::string>& some,
                                      const std::string& name) const {
    std::optional<std::string> found;
    for (const std::string& other : some) {
      if (other == name || reads(name).count(other) == 0) continue;
      if (!found || weight(other) > weight(*found)) found = other;
    }
    return found;
  }

  /// Headers that save most if they are precompiled for those that read them: each header is helped
  /// by the heaviest that it reads. A precompiled one costs twice its weight, since it is written.
  std::vector<std::string> worth_precompiling(std::size_t most) const {
    std::vector<std::string> chosen;
    std::map<std::string, std::size_t> helped;
    while (chosen.size() < most) {
      std::string best;
      std::size_t best_saving = 0;
      for (const std::string& candidate : names_) {
        const std::size_t saving = saved(candidate, helped);
        if (saving > 2 * weight(candidate) + best_saving) {
          best = candidate;
          best_saving = saving - 2 * weight(candidate);
        }
      }
      if (best_saving == 0) break;
      chosen.push_back(best);
      for (const std::string& name : names_) {
        if (name != best && reads(name).count(best) != 0) {
          helped[name] = std::max(helped[name], weight(best));
        }
      }
    }
    return chosen;
  }

 private:
  const std::set<std::string>& read(const std::string& name) {
    const auto known = reads_.find(name);
    if (known != reads_.end()) return known->second;
    std::set<std::string> all{name};
    const std::string text = read_file(files_.at(name));
    std::size_t own = text.size();
    bool bodies = false;
    for (const std::string& line : lines_of(text)) {
      std::string rest;
      // What it reads only where all is in the headers, its own bodies, reads it in turn.
      if (line == "#ifdef PLATEWRIGHT_HEADER_ONLY") bodies = true;
      if (line == "#endif") bodies = false;
      if (bodies) continue;
      if (takes(line, "#include <boost/multiprecision", rest)) own += boost_weight;
      if (!takes(line, "#include \"", rest)) continue;
      const std::string other = rest.substr(0, rest.find('"'));
      if (files_.count(other) == 0) throw std::runtime_error("no header " + other);
      const std::set<std::string>& others = read(other);
      all.insert(others.begin(), others.end());
    }
    own_[name] = own;
    std::size_t weight = 0;
    for (const std::string& one : all) weight += own_.at(one);
    weights_[name] = weight;
    return reads_[name] = std::move(all);
  }

  std::size_t saved(const std::string& candidate,
                    const std::map<std::string, std::size_t>& helped) const {
    std::size_t saving = 0;
    for (const std::string& name : names_) {
      if (name == candidate || reads(name).count(candidate) == 0) continue;
      const auto already = helped.find(name);
      const std::size_t before = already == helped.end() ? 0 : already->second;
      if (weight(candidate) > before) saving += weight(candidate) - before;
    }
    return saving;
  }

  /// Boost's numbers take about as long as so much of our own.
  static constexpr std::size_t boost_weight = 150000;

  std::vector<std::string> names_;
  std::map<std::string, std::filesystem::path> files_;
  std::map<std::string, std::set<std::string>> reads_;
  std::map<std::string, std::size_t> own_;
  std::map<std::string, std::size_t> weights_;
};

}  // namespace platewright::test
