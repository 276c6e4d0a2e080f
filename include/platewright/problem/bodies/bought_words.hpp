// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/bought_words.hpp.

#include <string>
#include <vector>

#include "platewright/problem/bought_words.hpp"

namespace platewright {

PLATEWRIGHT_BODY void check_bought(std::string_view bought) {
  std::vector<std::string> known;
  for (const BoughtWord& row : bought_words) {
    if (row.word == bought) return;
    known.emplace_back(row.word);
  }
  throw Failure(problems::word_unknown("way of being bought", bought, known));
}

}  // namespace platewright
