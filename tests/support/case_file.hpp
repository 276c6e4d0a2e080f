// SPDX-License-Identifier: MIT
#pragma once
// A golden case: files, commands, and what each command must print, complain and write.

#include <filesystem>
#include <string>
#include <vector>

namespace platewright::test {

/// One command of a case, which may end in `< NAME` for what it reads, with what is expected of it.
/// Texts are whole lines, each with its end.
struct Step {
  std::string command;
  int exit = 0;
  std::string prints;
  std::string complains;
  std::vector<std::string> writes;
};

struct CaseInput {
  std::string name;
  std::string text;
};

/// A case file:
///
///     about: what it shows
///     file larder.yaml:
///     currency: USD
///     end of file
///     run: platewright check larder.yaml
///     exit: 1
///     prints:
///     ...
///     end
///     complains:
///     ...
///     end
///     writes: NAME
///
/// Files and runs as often as needed; what a run has no line for must be 0 or nothing. Lines that
/// begin with `#` are remarks. A block `file NAME escaped:` knows `\xNN`, `\n`, `\r`, `\t` and
/// `\\`, joins its lines without line ends, and repeats text with a line `repeat 1000: TEXT`.
struct CaseFile {
  std::string about;
  std::vector<CaseInput> inputs;
  std::vector<Step> steps;
  /// The lines as they stand, up to the first `run:` line: what renewing keeps.
  std::string head;
};

/// Throws std::runtime_error, with the line's number, where the case file itself is wrong.
CaseFile read_case(const std::filesystem::path& file);

/// The case with what `steps` now hold.
std::string write_case(const CaseFile& test_case);

}  // namespace platewright::test
