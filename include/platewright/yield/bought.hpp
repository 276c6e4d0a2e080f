// SPDX-License-Identifier: MIT
#pragma once
// How goods come, and what their weight holds beside what is eaten.

#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/bought_words.hpp"
#include "platewright/yield/loss.hpp"

namespace platewright {

/// The word for what is still held: the shell, where goods come in one.
inline std::string_view held_word(Loss held) {
  return held == Loss::skin ? "shell" : name_of(held);
}

/// What goods that are bought in this way hold beside what is eaten; nothing for other words.
std::vector<Loss> held_as_bought(std::string_view bought);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/bought.hpp"
#endif
