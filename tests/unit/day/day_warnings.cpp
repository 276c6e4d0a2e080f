// SPDX-License-Identifier: MIT
// What a day that is short of people is told to do.

#include "platewright/day/day_warnings.hpp"

#include "support/catch.hpp"

using namespace platewright;

namespace {

HandsShort short_of(const std::string& role) {
  HandsShort out;
  out.role = role;
  out.wanted = 1;
  return out;
}

const std::vector<Person> two_roles{{"head cook", 1, 1}, {"cook", 1, 2}, {"cook", 2, 2}};

}  // namespace

TEST_CASE("a role that nobody has is told with those that there are", "[day]") {
  const std::string words = way_out(short_of("coook"), two_roles);
  CHECK(words.find("did you mean \"cook\"") != std::string::npos);
  CHECK(words.find("nobody in this kitchen has that role") != std::string::npos);
  CHECK(words.find("\"head cook\"") != std::string::npos);
}

TEST_CASE("where the role is there, or any would do, more people would help", "[day]") {
  CHECK(way_out(short_of("cook"), two_roles).find("more people at that hour") == 0);
  CHECK(way_out(short_of(""), two_roles).find("more people at that hour") == 0);
}
