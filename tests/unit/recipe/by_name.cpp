// SPDX-License-Identifier: MIT
// Copies share what they hold, and are values all the same.

#include "platewright/recipe/by_name.hpp"

#include <stdexcept>
#include <vector>

#include "support/catch.hpp"

using namespace platewright;

namespace {

ByName<std::string> two_things() {
  ByName<std::string> out;
  out.emplace("b", "bread");
  out.emplace("a", "apple");
  return out;
}

}  // namespace

TEST_CASE("things are kept in the order of their names, the first of a name") {
  ByName<std::string> things = two_things();
  CHECK_FALSE(things.emplace("a", "another"));
  std::vector<std::string> all;
  for (const auto& [name, thing] : things) all.push_back(name + " " + thing);
  CHECK(all == std::vector<std::string>{"a apple", "b bread"});
  CHECK(things.find("b")->second == "bread");
  CHECK(things.find("c") == things.end());
  CHECK(things.count("a") == 1);
  CHECK(things.size() == 2);
  CHECK_THROWS_AS(things.at("c"), std::out_of_range);
}

TEST_CASE("what is changed in one copy is changed in no other") {
  ByName<std::string> things = two_things();
  const ByName<std::string> before = things;
  CHECK(&before.at("a") == &things.at("a"));
  things.change("a", [](std::string& thing) { thing += " pie"; });
  things.insert_or_assign("b", "bun");
  CHECK(things.at("a") == "apple pie");
  CHECK(before.at("a") == "apple");
  CHECK(before.at("b") == "bread");
  CHECK(things.erase("a") == 1);
  CHECK(before.count("a") == 1);
}

TEST_CASE("what is read stays while another name is changed, and the other copies are gone") {
  ByName<std::string> things = two_things();
  const std::string& apple = things.at("a");
  {
    const ByName<std::string> copy = things;
    things.change("b", [](std::string& thing) { thing = "bun"; });
    things.emplace("c", "carrot");
  }
  CHECK(apple == "apple");
}

TEST_CASE("a change that fails changes nothing") {
  ByName<std::string> things = two_things();
  const auto fail = [](std::string& thing) {
    thing = "half";
    throw std::runtime_error("no");
  };
  CHECK_THROWS_AS(things.change("a", fail), std::runtime_error);
  CHECK(things.at("a") == "apple");
  CHECK_THROWS_AS(things.change("c", fail), std::out_of_range);
}
