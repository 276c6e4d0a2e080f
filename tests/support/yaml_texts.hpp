// SPDX-License-Identifier: MIT
#pragma once
// Texts of YAML as books have them, and worse.

#include <rapidcheck.h>

#include <string>

namespace platewright::test {

inline std::string any_scalar() {
  return *rc::gen::element<std::string>(
      "1 1/2 lb", "12 oz, chopped", "0.12", "08:00", "8.95  # by the case", "(not much)",
      "\"a, b\"", "'it is: so'", "\"2 #10 cans\"", "cr\xC3\xA8me", "cre\xCC\x80me", "a#b", "no",
      ".5", "null", "it's", "x 2 #10 cans", "a: b", "\"\\u00e9\"", "'it''s'", "~", "- 5", "?",
      "http://a.b/c");
}

inline std::string any_flow(int depth) {
  const int kind = *rc::gen::inRange(0, depth == 0 ? 1 : 4);
  if (kind <= 1) return any_scalar();
  std::string out;
  const int count = *rc::gen::inRange(0, 4);
  for (int i = 0; i < count; ++i) {
    if (i > 0) out += *rc::gen::element<std::string>(", ", ",", " , ");
    if (kind == 3) out += "k" + std::to_string(*rc::gen::inRange(0, 20)) + ": ";
    out += any_flow(depth - 1);
  }
  return kind == 2 ? "[" + out + "]" : "{" + out + "}";
}

/// A block that begins where the line stands, `indent` further in than the file.
inline std::string any_block(int indent, int depth) {
  const bool list = *rc::gen::arbitrary<bool>();
  const std::string in(static_cast<std::size_t>(indent), ' ');
  std::string out;
  const int count = *rc::gen::inRange(1, 5);
  for (int i = 0; i < count; ++i) {
    if (i > 0) out += in;
    const int kind = *rc::gen::inRange(0, depth == 0 ? 2 : 4);
    const int further = indent + *rc::gen::inRange(1, 4);
    const std::string below(static_cast<std::size_t>(further), ' ');
    out += list ? std::string("- ")
                : *rc::gen::element<std::string>("key ", "k") + std::to_string(i) + ":";
    if (kind < 2) {
      out += " " + (kind == 0 ? any_scalar() : any_flow(2)) + "\n";
    } else if (list) {
      out += any_block(indent + 2, depth - 1);
    } else {
      out += *rc::gen::element<std::string>("\n", "  # so\n", "\n\n  # a remark\n") + below +
             any_block(further, depth - 1);
    }
  }
  return out;
}

/// With up to three slips.
inline std::string any_yaml_text() {
  std::string text = any_block(0, 3);
  const int slips = *rc::gen::inRange(0, 4);
  for (int i = 0; i < slips; ++i) {
    const auto at = *rc::gen::inRange<std::size_t>(0, text.size() + 1);
    text.insert(at, *rc::gen::element<std::string>(
                        " ", "  ", "\n", "\n  ", ": ", "- ", " # ", "\"", "'", "[", "]", "{", "}",
                        ", ", "\\", "|", ">", "&a ", "*a", "!t ", "?", ":", "#", "---\n", "...\n",
                        "%", "@", "`", "\t", "\xC2\xA0", "\xC2\x85", "null", "~"));
  }
  return text;
}

}  // namespace platewright::test
