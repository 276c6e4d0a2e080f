// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with a line that names a job.

#include <cstddef>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem job_unread(std::string_view line);

Problem job_too_long(std::size_t most);

Problem job_of_jobs();

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/jobs.hpp"
#endif
