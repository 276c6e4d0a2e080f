// SPDX-License-Identifier: MIT
#include "platewright/files/read_core_log.hpp"

#include "support/catch.hpp"
#include "support/folder.hpp"
#include "support/roast_terms.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

std::optional<CoreCurve> log_of(const std::string& text, ProblemList& problems) {
  const TemporaryFolder folder;
  const auto file = folder.path() / "log.csv";
  write_file(file, text);
  return read_core_log(file.string(), problems);
}

/// `id line` of every problem.
std::vector<std::string> problems_in(const std::string& text) {
  ProblemList problems;
  const auto curve = log_of(text, problems);
  std::vector<std::string> out;
  for (const Problem& problem : problems.all()) {
    out.push_back(problem.id + " " + std::to_string(problem.place.line));
  }
  CHECK(curve.has_value() == out.empty());
  return out;
}

using Texts = std::vector<std::string>;

}  // namespace

TEST_CASE("a log in either scale and any unit of time") {
  ProblemList problems;
  const auto minutes_log = log_of("minutes,F\r\n0,40\r\n9.5,41.5\r\n", problems);
  REQUIRE(minutes_log);
  CHECK(minutes_log->readings()[1].at == minutes(fraction(19, 2)));
  CHECK(minutes_log->readings()[1].core == fahrenheit(fraction(83, 2)));
  const auto seconds_log = log_of("Seconds,C\n0,4\n600,5\n", problems);
  REQUIRE(seconds_log);
  CHECK(seconds_log->readings()[1].at == minutes(10));
  CHECK(seconds_log->readings()[1].core == Temperature::celsius(5));
  CHECK(log_of("hours,F\n1,40\n1.1,41\n", problems));
}

TEST_CASE("every slip of a log is found at its line") {
  CHECK(problems_in("time,probe 1\n0,40\n5,41\n") == Texts{"core-log-header 1"});
  CHECK(problems_in("minutes,K\n0,280\n5,281\n") == Texts{"core-log-header 1"});
  CHECK(problems_in("minutes,F,F\n0,40,40\n5,41,41\n") == Texts{"core-log-header 1"});
  CHECK(problems_in("minutes,F\n0,40\n") == Texts{"core-log-short 1"});
  CHECK(problems_in("minutes,F\n0,40\n5,41\n5,42\n4,43\n") ==
        Texts{"core-log-order 4", "core-log-order 5"});
  CHECK(problems_in("minutes,F\n0,40\n5,41\n25,90\n") == Texts{"core-log-gap 4"});
  CHECK(problems_in("minutes,F\n0,40\n5,hot\n10,41\n") == Texts{"number-missing 3"});
  CHECK(problems_in("minutes,F\n0,40\n5,325\n") == Texts{"inside-temperature 3"});
  CHECK(problems_in("minutes,F\n0,40\n-5,41\n") == Texts{"number-signed 3"});
}

TEST_CASE("no line of a log is left out") {
  CHECK(problems_in("minutes,F\n0,131\n5\n10,131\n") == Texts{"csv-field-count 3"});
}
