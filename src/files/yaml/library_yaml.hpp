// SPDX-License-Identifier: MIT
#pragma once
// All of YAML, by the library.

#include <optional>
#include <string>
#include <string_view>

#include "yaml/read_yaml.hpp"

namespace platewright::yaml {

/// `read_yaml` of a text that is within the bounds of a whole file and sound (`check_sound`).
std::optional<Node> read_library_yaml(std::string_view text, const std::string& file,
                                      ProblemList& problems, const Bounds& bounds);

}  // namespace platewright::yaml
