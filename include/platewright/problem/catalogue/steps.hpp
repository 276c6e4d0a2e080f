// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with a step that says what kind it is.

#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem step_key_without_kind(std::string_view key);

Problem step_key_not_taken(std::string_view kind, std::string_view key);

Problem reached_malformed(std::string_view text);

/// `words` are what the recipe counts: its pieces, batches, vessels, portions.
Problem step_growth_malformed(std::string_view text, const std::vector<std::string>& words);

Problem step_place_unsafe(std::string found, std::string wanted, std::string remedy);

Problem step_temperature_unsafe(std::string found, std::string wanted, std::string remedy);

Problem step_takes_too_long(std::string found, std::string wanted, std::string remedy);

Problem step_too_short(std::string found, std::string wanted, std::string remedy);

Problem marinade_not_boiled(std::string found, std::string wanted, std::string remedy);

Problem kept_too_long(std::string_view recipe, std::string_view made, std::string_view used,
                      std::string_view use_by, std::string_view source);

Problem keeping_not_said(std::string_view recipe, std::string_view longest, std::string_view most,
                         std::string_view source);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/steps.hpp"
#endif
