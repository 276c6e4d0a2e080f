// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/files.hpp.

#include "platewright/problem/catalogue/files.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem file_not_there(std::string_view file, std::string_view meant) {
  return make_problem(
      "file-not-there", "no file " + in_quotes(file, 200), "a file that can be read",
      meant.empty() ? "check the name; files named in a book are looked for beside it"
                    : "write the whole name of the file that is there, " + in_quotes(meant));
}

PLATEWRIGHT_BODY Problem file_not_readable(std::string_view file) {
  return make_problem("file-not-readable", in_quotes(file, 200) + " can't be read",
                      "a plain file that this user may read",
                      "check what it is, and its permissions; what another program writes goes to "
                      "standard input, which is named -");
}

PLATEWRIGHT_BODY Problem file_not_writable(std::string_view file, std::string_view why) {
  return make_problem("file-not-writable",
                      in_quotes(file, 200) + " can't be written: " + std::string(why),
                      "a place where this user may write", "choose another file");
}

PLATEWRIGHT_BODY Problem output_folder_not_there(std::string_view file) {
  return make_problem("output-folder-not-there", "no folder to put " + in_quotes(file, 200) + " in",
                      "a folder that is there",
                      "make the folder or correct its name; nothing was written");
}

PLATEWRIGHT_BODY Problem output_is_folder(std::string_view file) {
  return make_problem("output-is-folder", in_quotes(file, 200) + ", which is a folder",
                      "the name of a file",
                      "add the file's name behind the folder's; nothing was written");
}

PLATEWRIGHT_BODY Problem folder_not_free(std::string_view folder, std::string_view holds) {
  return make_problem(
      "folder-not-free",
      in_quotes(folder, 200) + (holds.empty() ? std::string(", which is a file")
                                              : ", which holds " + in_quotes(holds, 200)),
      "a folder that is new or empty", "name another folder; nothing was written");
}

PLATEWRIGHT_BODY Problem output_name_too_long(std::string_view file) {
  return make_problem("output-name-too-long", "the name " + in_quotes(file, 200) + " is too long",
                      "a name that the disk takes, mostly of at most 255 bytes",
                      "choose a shorter name; nothing was written");
}

PLATEWRIGHT_BODY Problem output_no_room(std::string_view file) {
  return make_problem("output-no-room", "no room for " + in_quotes(file, 200),
                      "a disk with room, within this user's share of it",
                      "make room or choose another disk; a file that stood there is as it was");
}

PLATEWRIGHT_BODY Problem output_above_limit(std::string_view file) {
  return make_problem("output-above-limit",
                      in_quotes(file, 200) + " would be larger than this user's files may be",
                      "a file within the limit (`ulimit -f`)",
                      "raise the limit; a file that stood there is as it was");
}

PLATEWRIGHT_BODY Problem output_not_kept(std::string_view file) {
  return make_problem(
      "output-not-kept",
      in_quotes(file, 200) + " was written, but its disk does not say that it is kept",
      "a disk that keeps what is written", "look at the file, and at the disk: it reports errors");
}

PLATEWRIGHT_BODY Problem output_over_input(std::string_view output, std::string_view input) {
  return make_problem("output-over-input",
                      in_quotes(output, 200) + ", which is " + in_quotes(input, 200) +
                          ", a file that this command reads",
                      "another file for what is written",
                      "choose another name; nothing was written");
}

PLATEWRIGHT_BODY Problem format_not_taken(std::string_view format) {
  return make_problem("format-not-taken",
                      "the format " + in_quotes(format) + " for what has one form only",
                      "no format, and a file whose name does not end in that of another",
                      "leave `--format` out, or choose another ending for `--output`");
}

PLATEWRIGHT_BODY Problem format_of_another_command(std::string_view format,
                                                   std::string_view command) {
  return make_problem("format-of-another-command",
                      "the format " + in_quotes(format) + " for a sheet that has no such form",
                      "a format that the command's `--help` names",
                      "choose another ending for `--output`, or run `platewright " +
                          std::string(command) + "`, which writes this format");
}

PLATEWRIGHT_BODY Problem file_too_large(std::string_view what, std::size_t most) {
  return make_problem("file-too-large", std::string(what), "at most " + std::to_string(most),
                      "split the file: one recipe a file is a good habit");
}

PLATEWRIGHT_BODY Problem book_too_large(std::size_t most, std::string_view what) {
  return make_problem("book-too-large",
                      "more than " + std::to_string(most) + " " + std::string(what) +
                          " in all files that are read for this",
                      "at most " + std::to_string(most),
                      "name fewer files, or fewer under `with`; this one and what comes after it "
                      "was left out");
}

PLATEWRIGHT_BODY Problem file_not_utf8(std::size_t byte, std::string_view likely) {
  const std::string encoding(likely);
  return make_problem("file-not-utf8",
                      "byte " + std::to_string(byte) + " is not UTF-8 text" +
                          (encoding.empty() ? "" : "; this looks like " + encoding),
                      "a text file in UTF-8",
                      encoding.empty()
                          ? "save the file as UTF-8 in your editor"
                          : "save it as UTF-8 (in a spreadsheet: as \"CSV UTF-8\"), or turn it "
                            "with `iconv -f " +
                                encoding + " -t UTF-8 OLD > NEW`");
}

PLATEWRIGHT_BODY Problem file_has_control_character(std::size_t byte) {
  return make_problem("file-control-character",
                      "a control character at byte " + std::to_string(byte), "printable text",
                      "delete the character; it may have come with a copy from elsewhere");
}

PLATEWRIGHT_BODY Problem unseen_sign(char32_t code, std::size_t number, std::string_view text) {
  std::string hex;
  for (char32_t rest = code; rest != 0 || hex.size() < 4; rest /= 16) {
    hex.insert(0, 1, "0123456789ABCDEF"[rest % 16]);
  }
  return make_problem("unseen-sign",
                      "U+" + hex + ", which nobody sees, as sign " + std::to_string(number) +
                          " of " + in_quotes(text),
                      "text of signs that can be seen",
                      "type the text again; the sign came with a copy from elsewhere");
}

PLATEWRIGHT_BODY Problem marks_piled_up(int most, std::size_t number) {
  return make_problem("marks-piled-up",
                      "more than " + std::to_string(most) + " marks on one letter, up to sign " +
                          std::to_string(number),
                      "letters as some language writes them",
                      "type the text again; the marks came with a copy from elsewhere");
}

PLATEWRIGHT_BODY Problem name_says_nothing(std::string_view name) {
  return make_problem("name-says-nothing",
                      "the name " + in_quotes(name) + ", without a letter or a digit",
                      "a name that can be read out", "write the name of what is meant");
}

PLATEWRIGHT_BODY Problem quote_left_open(std::string_view swallowed, std::string remedy) {
  return make_problem("quote-left-open",
                      "a quotation mark that is not closed on its line, so that what follows is "
                      "taken into the value, up to " +
                          in_quotes(swallowed),
                      "the closing quotation mark behind the value", std::move(remedy));
}

PLATEWRIGHT_BODY Problem yaml_remark(std::string_view value, std::string_view remark) {
  return make_problem("yaml-remark",
                      in_quotes(remark) + " behind " + in_quotes(value) +
                          ", which a # behind a space makes a remark that nobody reads",
                      "the whole value between quotation marks, as in \"2 #10 cans\"",
                      "put the value between quotation marks; if it is a remark, write a space "
                      "behind the #");
}

PLATEWRIGHT_BODY Problem yaml_empty() {
  return make_problem("yaml-empty", "nothing in the file",
                      "a recipe, a larder, an event, or tables of your own",
                      "start from one of the examples");
}

PLATEWRIGHT_BODY Problem yaml_alias() {
  return make_problem(
      "yaml-alias", "an anchor (&) or an alias (*)", "every value written out",
      "write the value again where it is meant; if the text begins with & or *, put "
      "it in quotation marks");
}

PLATEWRIGHT_BODY Problem yaml_tag(std::string_view tag) {
  return make_problem("yaml-tag", "the tag " + in_quotes(tag), "plain values without tags",
                      "take the tag out; if the text begins with !, put it in quotation marks");
}

PLATEWRIGHT_BODY Problem yaml_too_deep(std::size_t most) {
  return make_problem("yaml-too-deep", "values nested more than " + std::to_string(most) + " deep",
                      "at most " + std::to_string(most) + " levels", "flatten the list or map");
}

PLATEWRIGHT_BODY Problem yaml_second_document() {
  return make_problem("yaml-second-document", "more text after the end of the first document",
                      "one document a file", "put what follows in a file of its own");
}

PLATEWRIGHT_BODY Problem key_not_text() {
  return make_problem("key-not-text", "a key that is not one plain text",
                      "a short name before the colon", "check the indentation and the colons");
}

PLATEWRIGHT_BODY Problem key_twice(std::string_view key, int first_line) {
  return make_problem(
      "key-twice", in_quotes(key) + " again, first written on line " + std::to_string(first_line),
      "each key once", "take one of the two out, or rename it");
}

}  // namespace platewright::problems
