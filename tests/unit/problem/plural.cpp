// SPDX-License-Identifier: MIT
// One piece and several.

#include "platewright/problem/plural.hpp"

#include "support/catch.hpp"

using namespace platewright;

TEST_CASE("what cooks count has its plural") {
  CHECK(several("leg") == "legs");
  CHECK(several("batch") == "batches");
  CHECK(several("box") == "boxes");
  CHECK(several("dish") == "dishes");
  CHECK(several("salmon fish") == "salmon fish");
  CHECK(several("goose") == "geese");
  CHECK(several("patty") == "patties");
  CHECK(several("turkey") == "turkeys");
  CHECK(several("potato") == "potatoes");
  CHECK(several("meat loaf") == "meat loaves");
}

TEST_CASE("a plural gives its one back, and a word that is none stays") {
  for (const char* one : {"leg", "batch", "box", "dish", "goose", "loaf", "half", "turkey", "ham",
                          "breast", "roast", "glass", "patty", "potato", "tray"}) {
    INFO(one);
    CHECK(one_of(several(one)) == one);
    CHECK(one_of(one) == one);
  }
  CHECK(one_of("bass") == "bass");
  CHECK(one_of("s") == "s");
  CHECK(one_of("").empty());
}
