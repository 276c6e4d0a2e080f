// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/jobs.hpp.

#include <string>

#include "platewright/problem/catalogue/jobs.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem job_unread(std::string_view line) {
  return make_problem(
      "job-unread", "the line " + in_quotes(line, 60),
      "a list of words, as in `[\"cost\", \"lamb-leg.yaml\", \"--pieces\", \"4\"]`, or "
      "`{\"id\": \"a17\", \"words\": [...]}`",
      "write each word of the command line in double quotes, numbers too");
}

PLATEWRIGHT_BODY Problem job_too_long(std::size_t most) {
  return make_problem("job-too-long", "a line of more than " + std::to_string(most) + " bytes",
                      "one job a line, each no longer than that",
                      "end every job with a line's end");
}

PLATEWRIGHT_BODY Problem job_of_jobs() {
  return make_problem("job-of-jobs", "a job that answers jobs itself", "any other command",
                      "write its lines in place of it");
}

}  // namespace platewright::problems
