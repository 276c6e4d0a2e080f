// SPDX-License-Identifier: MIT
#pragma once
// How a document of JSON is written out, whatever is in it.

#include <nlohmann/json.hpp>
#include <string>

namespace platewright {

/// Two spaces for each depth and a line's end at the end. Bytes that are not UTF-8 are replaced,
/// signs that nobody sees are escapes.
std::string json_document(const nlohmann::ordered_json& document);

/// The same on one line, as a stream of documents has it.
std::string json_line(const nlohmann::ordered_json& document);

}  // namespace platewright
