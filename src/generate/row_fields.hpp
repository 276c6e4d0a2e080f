// SPDX-License-Identifier: MIT
#pragma once
// What the emitters of all tables share.

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "generate/source.hpp"
#include "generate/table_code.hpp"
#include "yaml/fields.hpp"

namespace platewright::generate {

/// Runs `row` for each row of the list under `key` in every file that has it. `identity` is the key
/// of the row's name, which the row's place in a message carries.
void each_row(const std::vector<TableFile>& files, std::string_view key, std::string_view identity,
              ProblemList& problems, const std::function<void(yaml::Fields&)>& row);

/// The text of an optional field as a literal, `""` where it is not there.
std::string literal_of(yaml::Fields& fields, std::string_view key);

/// A share or number of an optional field, `{0, 0}` where it is not there.
std::string share_or_none(yaml::Fields& fields, std::string_view key);

/// The source of a row; a row without one is reported.
std::string source_of(yaml::Fields& fields);

/// Degrees Celsius of an optional temperature, `not_printed` where it is not there.
std::string celsius_of(yaml::Fields& fields, std::string_view key);

/// Seconds of `3 min`, `15 s`, `2 h`, `7 days`.
std::string seconds_in(const std::string& text);
/// The same of an optional field, `not_printed` where it is not there.
std::string seconds_of(yaml::Fields& fields, std::string_view key);

/// The beginning and the end of a generated source file that defines `accessor`.
std::string array_text(std::string_view type, std::string_view accessor,
                       const std::vector<std::string>& rows);
std::string source_file(const std::string& body);

}  // namespace platewright::generate
