#pragma once
// What can be wrong with a file before anything in it is understood.

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>

#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

inline Problem file_not_there(std::string_view file) {
  return make_problem("file-not-there", "no file " + in_quotes(file, 200),
                      "a file that can be read",
                      "check the name; files named in a book are looked for beside it");
}

inline Problem file_not_readable(std::string_view file) {
  return make_problem("file-not-readable", in_quotes(file, 200) + " can't be read",
                      "a plain file that this user may read",
                      "check what it is, and its permissions");
}

inline Problem file_not_writable(std::string_view file) {
  return make_problem("file-not-writable", in_quotes(file, 200) + " can't be written",
                      "a place where this user may write",
                      "choose another file; nothing was written");
}

inline Problem output_over_input(std::string_view output, std::string_view input) {
  return make_problem("output-over-input",
                      in_quotes(output, 200) + ", which is " + in_quotes(input, 200) +
                          ", a file that this command reads",
                      "another file for what is written",
                      "choose another name; nothing was written");
}

inline Problem file_too_large(std::string_view what, std::size_t most) {
  return make_problem("file-too-large", std::string(what), "at most " + std::to_string(most),
                      "split the file: one recipe a file is a good habit");
}

inline Problem file_not_utf8(std::size_t byte) {
  return make_problem("file-not-utf8", "byte " + std::to_string(byte) + " is not UTF-8 text",
                      "a text file in UTF-8", "save the file as UTF-8 in your editor");
}

inline Problem file_has_control_character(std::size_t byte) {
  return make_problem("file-control-character",
                      "a control character at byte " + std::to_string(byte), "printable text",
                      "delete the character; it may have come with a copy from elsewhere");
}

/// Where the slip is known, `expected` and `remedy` say what to type.
inline Problem not_yaml(
    std::string found, std::string expected = "YAML as in the examples",
    std::string remedy = "check indentation, colons and quotation marks at this place") {
  return make_problem("not-yaml", std::move(found), std::move(expected), std::move(remedy));
}

inline Problem quote_left_open(std::string_view swallowed, std::string remedy) {
  return make_problem("quote-left-open",
                      "a quotation mark that is not closed on its line, so that what follows is "
                      "taken into the value, up to " +
                          in_quotes(swallowed),
                      "the closing quotation mark behind the value", std::move(remedy));
}

inline Problem yaml_remark(std::string_view value, std::string_view remark) {
  return make_problem("yaml-remark",
                      in_quotes(remark) + " behind " + in_quotes(value) +
                          ", which a # behind a space makes a remark that nobody reads",
                      "the whole value between quotation marks, as in \"2 #10 cans\"",
                      "put the value between quotation marks; if it is a remark, write a space "
                      "behind the #");
}

inline Problem yaml_empty() {
  return make_problem("yaml-empty", "nothing in the file",
                      "a recipe, a larder, an event, or tables of your own",
                      "start from one of the examples");
}

inline Problem yaml_alias() {
  return make_problem(
      "yaml-alias", "an anchor (&) or an alias (*)", "every value written out",
      "write the value again where it is meant; if the text begins with & or *, put "
      "it in quotation marks");
}

inline Problem yaml_tag(std::string_view tag) {
  return make_problem("yaml-tag", "the tag " + in_quotes(tag), "plain values without tags",
                      "take the tag out; if the text begins with !, put it in quotation marks");
}

inline Problem yaml_too_deep(std::size_t most) {
  return make_problem("yaml-too-deep", "values nested more than " + std::to_string(most) + " deep",
                      "at most " + std::to_string(most) + " levels", "flatten the list or map");
}

inline Problem yaml_second_document() {
  return make_problem("yaml-second-document", "more text after the end of the first document",
                      "one document a file", "put what follows in a file of its own");
}

inline Problem key_not_text() {
  return make_problem("key-not-text", "a key that is not one plain text",
                      "a short name before the colon", "check the indentation and the colons");
}

inline Problem key_twice(std::string_view key, int first_line) {
  return make_problem(
      "key-twice", in_quotes(key) + " again, first written on line " + std::to_string(first_line),
      "each key once", "take one of the two out, or rename it");
}

}  // namespace platewright::problems
