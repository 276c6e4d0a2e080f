// SPDX-License-Identifier: MIT
#include "cli/kept_books.hpp"

#include <algorithm>

namespace platewright::cli {
namespace {

/// The largest book takes some hundreds of megabytes.
constexpr std::size_t most_kept = 4;

KeptBooks* kept_here = nullptr;

}  // namespace

KeptBooks::KeptBooks() {
  kept_here = this;
}

KeptBooks::~KeptBooks() {
  kept_here = nullptr;
}

KeptBooks* KeptBooks::here() {
  return kept_here;
}

OpenedBook KeptBooks::of(const std::vector<std::string>& files, ProblemList& problems) {
  const auto known = std::find_if(kept_.begin(), kept_.end(),
                                  [&](const Kept& kept) { return kept.files == files; });
  if (known != kept_.end()) {
    kept_.splice(kept_.begin(), kept_, known);
  } else {
    Kept read{files, nullptr, ProblemList()};
    read.book = read_for_jobs(files, read.problems);
    kept_.push_front(std::move(read));
    if (kept_.size() > most_kept) kept_.pop_back();
  }
  problems.add_all(kept_.front().problems);
  return kept_.front().book;
}

}  // namespace platewright::cli
