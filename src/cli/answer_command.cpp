// SPDX-License-Identifier: MIT
// answer: jobs from standard input, one a line, and the answer to each.

#include <fcntl.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <optional>

#include "cli/kept_books.hpp"
#include "cli/output.hpp"
#include "cli/run_line.hpp"
#include "cli/write_file.hpp"
#include "platewright/card/job_line.hpp"
#include "platewright/problem/catalogue/files.hpp"
#include "platewright/problem/catalogue/jobs.hpp"

namespace platewright::cli {
namespace {

constexpr std::size_t longest_job = std::size_t{1} << 20U;

struct JobText {
  std::string text;
  bool too_long = false;
};

/// Takes standard input over: to a job that asks for `-` it is an empty file, since a job that read
/// it would eat those behind it. Each line is given as soon as it is there.
class JobTexts {
 public:
  JobTexts() : file_(::dup(STDIN_FILENO)) {
    const int nothing = ::open("/dev/null", O_RDONLY | O_CLOEXEC);
    if (file_ < 0 || nothing < 0 || ::dup2(nothing, STDIN_FILENO) < 0) {
      throw Failure(problems::file_not_readable("-"));
    }
    ::close(nothing);
  }
  JobTexts(const JobTexts&) = delete;
  JobTexts& operator=(const JobTexts&) = delete;
  ~JobTexts() { ::close(file_); }

  /// Nothing behind the last line, which may have no end. Throws Failure where reading fails.
  std::optional<JobText> next() {
    JobText out;
    bool any = false;
    while (true) {
      if (at_ == filled_ && !fill()) {
        return any ? std::optional(std::move(out)) : std::nullopt;
      }
      any = true;
      const char c = bytes_[at_++];
      if (c == '\n') return out;
      if (out.text.size() == longest_job) out.too_long = true;
      if (!out.too_long) out.text += c;
    }
  }

 private:
  bool fill() {
    ssize_t count = 0;
    do {
      count = ::read(file_, bytes_.data(), bytes_.size());
    } while (count < 0 && errno == EINTR);
    if (count < 0) throw Failure(problems::file_not_readable("-"));
    at_ = 0;
    filled_ = static_cast<std::size_t>(count);
    return count > 0;
  }

  int file_;
  std::array<char, 65536> bytes_{};
  std::size_t at_ = 0;
  std::size_t filled_ = 0;
};

/// A sheet stays one where nobody asks for another format or for a file.
void give_to(JobAnswer& answer, const Result& result, const CommonOptions& common) {
  const bool as_sheet = common.format_given ? common.format == "json" : common.section.empty();
  if (!common.output.empty()) {
    put(text_of(result, common), common);
  } else if (result.sheet && result.plain.empty() && as_sheet) {
    answer.sheet = result.sheet;
    answer.section = common.section;
  } else {
    answer.text = text_of(result, common);
  }
}

void run_job(const Job& job, JobAnswer& answer) {
  std::vector<const char*> words{"platewright"};
  for (const std::string& word : job.words) words.push_back(word.c_str());
  const CommandLine line = read_command_line(static_cast<int>(words.size()), words.data());
  answer.exit_code = line.exit_code;
  if (!line.command) {
    answer.text = line.message;
    return;
  }
  answer.exit_code = run_line(*line.command, line.common, answer.problems,
                              [&](const Result& result) { give_to(answer, result, line.common); });
}

JobAnswer answer_to(const JobText& line, std::size_t number) {
  JobAnswer out;
  out.line = number;
  try {
    if (line.too_long) throw Failure(problems::job_too_long(longest_job));
    const Job job = read_job(line.text);
    out.id = job.id;
    run_job(job, out);
  } catch (const Failure& failure) {
    out.exit_code = wrong_command_line;
    out.problems.add(failure.problem());
  }
  return out;
}

}  // namespace

Result run(const AnswerArguments&, const CommonOptions&, ProblemList&) {
  if (KeptBooks::here() != nullptr) throw Failure(problems::job_of_jobs());
  const KeptBooks kept;
  JobTexts lines;
  std::size_t number = 0;
  while (const auto line = lines.next()) {
    write_standard_output(write_answer(answer_to(*line, ++number)));
  }
  return {};
}

}  // namespace platewright::cli
