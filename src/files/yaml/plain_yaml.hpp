// SPDX-License-Identifier: MIT
#pragma once
// The plain part of YAML, in which most books are written, read without a library.

#include <optional>
#include <string_view>

#include "yaml/read_yaml.hpp"

namespace platewright::yaml {

/// The nodes that `read_yaml` makes of `text`, which is UTF-8 without control characters, in a
/// twentieth of the time; nothing where anything in it is out of the ordinary, be it a slip, past a
/// bound or YAML that few write: tabs, carriage returns, values over several lines or without a
/// text, escapes, anchors, tags, documents. What is meant then, or wrong, the library says.
std::optional<Node> read_plain_yaml(std::string_view text, const Bounds& bounds);

}  // namespace platewright::yaml
