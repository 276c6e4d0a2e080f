// SPDX-License-Identifier: MIT
#pragma once
// A text into a file, whole or not at all.

#include <string>
#include <string_view>

namespace platewright::cli {

/// Writes `text` to the file, which is afterwards either as it was or holds the whole text,
/// whatever goes wrong between: the text is written to a file of its own beside it, which takes its
/// place once the disk has it. A link is followed, and stays; the mode of a file that is there is
/// kept, a new one has what the umask leaves. A device or a pipe is written to as it is. Throws
/// Failure.
void write_file(const std::string& file, std::string_view text);

/// Writes `text` to standard output. Throws Failure.
void write_standard_output(std::string_view text);

}  // namespace platewright::cli
