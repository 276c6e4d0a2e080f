// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with a file before anything in it is understood.

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

/// `meant` is a file that is there and has only another ending; empty where there is none.
Problem file_not_there(std::string_view file, std::string_view meant = {});

Problem file_not_readable(std::string_view file);

Problem file_not_writable(std::string_view file, std::string_view why);

Problem output_folder_not_there(std::string_view file);

Problem output_is_folder(std::string_view file);

/// `holds` is a file in it; empty where the folder itself is a file.
Problem folder_not_free(std::string_view folder, std::string_view holds);

Problem output_name_too_long(std::string_view file);

Problem output_no_room(std::string_view file);

Problem output_above_limit(std::string_view file);

Problem output_not_kept(std::string_view file);

Problem output_over_input(std::string_view output, std::string_view input);

Problem format_not_taken(std::string_view format);

Problem format_of_another_command(std::string_view format, std::string_view command);

Problem file_too_large(std::string_view what, std::size_t most);

/// Of all files of one run together.
Problem book_too_large(std::size_t most, std::string_view what);

Problem file_not_utf8(std::size_t byte, std::string_view likely);

Problem file_has_control_character(std::size_t byte);

/// `number` counts the signs of the text from 1.
Problem unseen_sign(char32_t code, std::size_t number, std::string_view text);

/// `number` counts the signs of the text from 1.
Problem marks_piled_up(int most, std::size_t number);

Problem name_says_nothing(std::string_view name);

/// Where the slip is known, `expected` and `remedy` say what to type.
inline Problem not_yaml(
    std::string found, std::string expected = "YAML as in the examples",
    std::string remedy = "check indentation, colons and quotation marks at this place") {
  return make_problem("not-yaml", std::move(found), std::move(expected), std::move(remedy));
}

Problem quote_left_open(std::string_view swallowed, std::string remedy);

Problem yaml_remark(std::string_view value, std::string_view remark);

Problem yaml_empty();

Problem yaml_alias();

Problem yaml_tag(std::string_view tag);

Problem yaml_too_deep(std::size_t most);

Problem yaml_second_document();

Problem key_not_text();

Problem key_twice(std::string_view key, int first_line);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/files.hpp"
#endif
