// SPDX-License-Identifier: MIT
#pragma once
// How a document of JSON is written out, whatever is in it.

#include <nlohmann/json.hpp>
#include <string>

namespace platewright {

/// Keys stay in the order in which they were written.
using Json = nlohmann::ordered_json;

/// Two spaces for each depth and a line's end at the end. Bytes that are not UTF-8 are replaced,
/// signs that nobody sees are escapes.
std::string json_document(const Json& document);

/// The same on one line, as a stream of documents has it.
std::string json_line(const Json& document);

}  // namespace platewright
