// SPDX-License-Identifier: MIT
// "Did you mean".

#include "platewright/problem/nearest.hpp"

#include <algorithm>

#include "support/catch.hpp"

using namespace platewright;

using Names = std::vector<std::string>;

TEST_CASE("the distance counts slips of the fingers") {
  CHECK(spelling_distance("cup", "cup") == 0);
  CHECK(spelling_distance("cup", "CUP") == 0);
  CHECK(spelling_distance("cup", "cups") == 1);
  CHECK(spelling_distance("lamb", "lab") == 1);
  CHECK(spelling_distance("rosemary", "rosmeary") == 1);
  CHECK(spelling_distance("", "abc") == 3);
  CHECK(spelling_distance("kitten", "sitting") == 3);
}

TEST_CASE("long names cost no more than 64 letters") {
  CHECK(spelling_distance(std::string(100000, 'a'), std::string(100000, 'b')) == 64);
}

TEST_CASE("a distance that may not be too long is the same distance") {
  const Names words{"",         "a",        "ab",       "ba",     "abc",    "acb",
                    "bca",      "goods 12", "godos 21", "good",   "Goods",  "sdoog",
                    "rosemary", "rosmeary", "osremayr", "garlic", "cilrag", "aaaaaaaa"};
  for (const std::string& left : words) {
    for (const std::string& right : words) {
      const std::size_t distance = spelling_distance(left, right);
      CHECK(distance == spelling_distance(right, left));
      for (std::size_t most = 0; most < 9; ++most) {
        INFO(left << ", " << right << ", " << most);
        CHECK(spelling_distance(left, right, most) == std::min(distance, most + 1));
      }
    }
  }
}

TEST_CASE("the nearest names come first") {
  CHECK(nearest_names("galric", {"carrot", "garlic", "ginger"}) == Names{"garlic"});
  CHECK(nearest_names("cups", {"cap", "cup", "quart"}) == Names{"cup"});
  // Of names as near as each other the one that two fingers turned round.
  CHECK(nearest_names("tps", {"pts", "tbs", "tsp"}) == Names{"tsp", "pts", "tbs"});
}

TEST_CASE("a name that holds the word is near") {
  CHECK(nearest_names("lamb", {"beef", "lamb leg, bone-in, roasted"}) ==
        Names{"lamb leg, bone-in, roasted"});
  CHECK(nearest_names("ripe tomato", {"tomato"}) == Names{"tomato"});
}

TEST_CASE("at most as many as asked for, each once, and none where none is near") {
  CHECK(nearest_names("aaa", {"aab", "aac", "aad", "aae"}).size() == 3);
  CHECK(nearest_names("aaa", {"aab", "aac", "aad", "aae"}, 2).size() == 2);
  CHECK(nearest_names("cup", {"cup", "cup"}).size() == 1);
  CHECK(nearest_names("zucchini", {"beef", "salt"}).empty());
  CHECK(nearest_names("anything", {}).empty());
}

TEST_CASE("nothing is looked for where problems are only counted") {
  const Names known{"garlic"};
  {
    const OnlyCounted counted(true);
    CHECK(OnlyCounted::now());
    {
      const OnlyCounted not_taken_back(false);
      CHECK(nearest_names("galric", known).empty());
    }
    CHECK(did_you_mean("galric", known).empty());
  }
  CHECK_FALSE(OnlyCounted::now());
  CHECK(nearest_names("galric", known) == known);
}

TEST_CASE("the question names them, or nothing") {
  CHECK(did_you_mean("galric", {"garlic"}) == "did you mean \"garlic\"?");
  CHECK(did_you_mean("tsq", {"tsp", "tbs"}) == "did you mean \"tsp\"?");
  CHECK(did_you_mean("zucchini", {"beef"}).empty());
}
