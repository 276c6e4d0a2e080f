// SPDX-License-Identifier: MIT
#pragma once
// Worked examples of each command, for its help and its page of the manual.

#include <string_view>
#include <vector>

namespace platewright::cli {

/// A command as it is typed, and what it gives. Tests run it in a folder that holds the files of
/// the supper and of the worksheets that come with the program, and the log of a core; what the
/// example of `new` makes is there for those of other commands.
struct Example {
  const char* command;
  const char* gives;
};

/// At least two for each command.
std::vector<Example> examples_of(std::string_view command);

}  // namespace platewright::cli
