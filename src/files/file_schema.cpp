// SPDX-License-Identifier: MIT
#include "platewright/files/file_schema.hpp"

#include <string_view>

#include "files/keys/mappings_in.hpp"

namespace platewright {
namespace reading {
namespace {

// Parts of a schema as they stand inside braces. YAML makes a number or an answer of some values
// that are text to the reader.
constexpr std::string_view one_value = R"("type": ["string", "number", "boolean"])";
constexpr std::string_view yes_or_no = R"("enum": [true, false, "yes", "no", "true", "false"])";
constexpr std::string_view value_pairs =
    R"("type": ["object", "null"], )"
    R"("additionalProperties": {"type": ["string", "number", "boolean"]})";
constexpr std::string_view one_or_more =
    R"("type": ["string", "number", "boolean", "array", "null"], )"
    R"("items": {"type": ["string", "number", "boolean"]})";

std::string quoted_text(std::string_view text) {
  std::string out = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\') out += '\\';
    out += c;
  }
  return out + "\"";
}

std::string braced(std::string_view parts) {
  return "{" + std::string(parts) + "}";
}

std::string any_of(std::initializer_list<std::string> schemas) {
  std::string out = "\"anyOf\": [";
  for (const std::string& schema : schemas) out += (out.back() == '[' ? "" : ", ") + schema;
  return out + "]";
}

std::string schema_list(const std::string& item) {
  return "\"type\": [\"array\", \"null\"], \"items\": " + item;
}

std::string each_named(const std::string& each) {
  return "\"type\": \"object\", \"additionalProperties\": " + each;
}

/// A reference is a URI, where a space is written so (RFC 3986).
std::string reference_to(const Mapping& mapping) {
  std::string out = "\"$ref\": \"#/$defs/";
  for (const char c : mapping.name) out += c == ' ' ? std::string("%20") : std::string(1, c);
  return out + "\"";
}

/// The map or the maps behind a key.
std::string held_by(const Key& key) {
  if (key.holds == nullptr) return "{}";
  const std::string held = braced(reference_to(key.holds()));
  if (key.or_holds == nullptr) return held;
  return braced(any_of({held, braced(reference_to(key.or_holds()))}));
}

/// What may stand behind a key, without its braces.
std::string shape_of_key(const Key& key) {
  const std::string held = held_by(key);
  const std::string one = braced(one_value);
  switch (key.shape) {
    case KeyShape::text:
      return std::string(one_value);
    case KeyShape::answer:
      return std::string(yes_or_no);
    case KeyShape::texts:
      return std::string(one_or_more);
    case KeyShape::list:
      return schema_list(one);
    case KeyShape::pairs:
      return std::string(value_pairs);
    case KeyShape::pairs_or_text:
      return any_of({one, braced(value_pairs)});
    case KeyShape::map:
      return any_of({held});
    case KeyShape::maps:
      return schema_list(held);
    case KeyShape::maps_or_texts:
      return schema_list(braced(any_of({one, held})));
    case KeyShape::named_maps:
      return each_named(held);
    case KeyShape::named_or_text:
      return each_named(braced(any_of({one, held})));
    case KeyShape::named_or_maps:
      return each_named(braced(any_of({held, braced(schema_list(held))})));
    case KeyShape::named_texts:
      return each_named(braced(one_or_more));
    case KeyShape::pairs_in_list:
      return schema_list(braced(any_of({one, braced(value_pairs)})));
    case KeyShape::rows:
      return schema_list(braced(any_of({braced(one_or_more), held})));
    case KeyShape::anything:
      return {};
  }
  return {};
}

std::string key_schema(const Key& key) {
  std::string out =
      "        " + quoted_text(key.name) + ": {\"description\": " + quoted_text(key.meaning);
  if (const std::string shape = shape_of_key(key); !shape.empty()) out += ", " + shape;
  const bool shown = key.shape == KeyShape::text && !key.example.empty();
  if (shown) out += ", \"examples\": [" + quoted_text(key.example) + "]";
  return out + "}";
}

std::string map_schema(const Mapping& mapping) {
  std::string properties;
  std::string needed;
  for (const Key& key : mapping.keys) {
    properties += (properties.empty() ? "" : ",\n") + key_schema(key);
    if (key.need != KeyNeed::needed) continue;
    needed += (needed.empty() ? "" : ", ") + quoted_text(key.name);
  }
  // Names of the user's own have a value behind them.
  const std::string others = mapping.others.empty() ? "false" : braced(one_value);
  return "    " + quoted_text(mapping.name) +
         ": {\n      \"description\": " + quoted_text(mapping.what) +
         ",\n      \"type\": \"object\",\n      \"properties\": {\n" + properties +
         "\n      },\n      \"required\": [" + needed +
         "],\n      \"additionalProperties\": " + others + "\n    }";
}

}  // namespace
}  // namespace reading

std::string file_schema(FileKind kind) {
  const reading::Mapping& file = reading::keys_of(kind);
  std::string definitions;
  for (const reading::Mapping* mapping : reading::mappings_in(kind)) {
    definitions += (definitions.empty() ? "" : ",\n") + reading::map_schema(*mapping);
  }
  return "{\n  \"title\": " + reading::quoted_text("platewright: " + std::string(file.name)) +
         ",\n  " + reading::reference_to(file) + ",\n  \"$defs\": {\n" + definitions + "\n  }\n}\n";
}

}  // namespace platewright
