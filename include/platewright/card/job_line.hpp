// SPDX-License-Identifier: MIT
#pragma once
// Jobs and answers as programs exchange them: a line of JSON each.

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/card/sheet.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright {

/// What is to be done, in the words of a command line without the program's name.
struct Job {
  std::vector<std::string> words;
  std::string id;  ///< as JSON; empty where the line has none
};

/// Reads `["cost", "lamb-leg.yaml", "--pieces", "4"]` or, with a name that the answer repeats,
/// `{"id": "a17", "words": ["cost", "lamb-leg.yaml"]}`. An id is a text or a whole number. Throws
/// Failure for anything else.
Job read_job(std::string_view line);

/// What a job came to: a sheet, or a text, or neither where there are errors.
struct JobAnswer {
  std::size_t line = 0;  ///< of the job, counted from 1
  std::string id = {};   ///< of the job, as JSON
  int exit_code = 0;     ///< what the command would have ended with
  std::optional<Sheet> sheet = {};
  std::string section = {};  ///< of the sheet this array alone
  std::string text = {};
  ProblemList problems = ProblemList();
};

/// One line, its end with it. Problems have the keys of the sheet of `check`.
std::string write_answer(const JobAnswer& answer);

}  // namespace platewright
