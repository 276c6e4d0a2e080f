// SPDX-License-Identifier: MIT
// Which texts are read without the library, and which are left to it.

#include "yaml/plain_yaml.hpp"

#include "support/catch.hpp"

using namespace platewright;

namespace {

bool is_plain(const std::string& text) {
  return yaml::read_plain_yaml(text, {}).has_value();
}

}  // namespace

TEST_CASE("a recipe as most are written is read without the library") {
  const auto root = yaml::read_plain_yaml(
      "# of the autumn\n"
      "recipe: a soup\n"
      "with: [larder.yaml, \"the other.yaml\"]\n"
      "ingredients:\n"
      "- beef: 9 lb, cubed  # chuck\n"
      "  as: {cooked: no}\n"
      "\n"
      "- part: the rest\n"
      "  lines:\n"
      "    - \"salt, coarse\": 'to taste'\n",
      {});
  REQUIRE(root.has_value());
  REQUIRE(root->entries.size() == 3);
  CHECK(root->line == 2);
  const yaml::Node& with = root->entries[1].second;
  REQUIRE(with.items.size() == 2);
  CHECK(with.items[1].text == "the other.yaml");
  CHECK(with.items[1].quoted);
  CHECK(with.items[1].column == 21);
  const yaml::Node& lines = root->entries[2].second;
  REQUIRE(lines.items.size() == 2);
  CHECK(lines.items[0].entries[0].second.text == "9 lb, cubed");
  CHECK(lines.items[0].entries[1].second.entries[0].first.text == "cooked");
  CHECK(lines.items[1].entries[1].second.items[0].entries[0].first.text == "salt, coarse");
}

TEST_CASE("what is not plain is left to the library") {
  CHECK(is_plain("a: b\n"));
  for (const char* text : {"",
                           "# nothing\n",
                           "a\n",
                           "a:\n",
                           "a: b\n c\n",
                           "a: b: c\n",
                           "a: |\n  b\n",
                           "a: &x b\n",
                           "a: *x\n",
                           "a: !t b\n",
                           "a: ~\n",
                           "a: null\n",
                           "a: \"b\\n\"\n",
                           "a: 'b''c'\n",
                           "a: 'b\n",
                           "a: [b\n",
                           "a: [b,]\n",
                           "a: [b: c]\n",
                           "a: {b}\n",
                           "a: {b:c}\n",
                           "a: b\na: c\n",
                           "a: {b: c, b: d}\n",
                           "a: 2 #10 cans\n",
                           "a:\tb\n",
                           "a: b\r\n",
                           "---\na: b\n",
                           "a: b\n...\n",
                           "a: b\n---\na: c\n",
                           "? a\n: b\n",
                           "- a\nb: c\n",
                           "a: b\n- c\n",
                           "-\n",
                           "  a: b\nc: d\n",
                           "!: b\n",
                           "a: \xE2\x80\x8B"
                           "b\n"}) {
    INFO(text);
    CHECK_FALSE(is_plain(text));
  }
}

TEST_CASE("what is past a bound, or near one, is left to the library") {
  const auto within = [](const std::string& text, const yaml::Bounds& bounds) {
    return yaml::read_plain_yaml(text, bounds).has_value();
  };
  yaml::Bounds bounds;
  bounds.nodes = 4;
  CHECK(within("a: [b]\n", bounds));
  CHECK_FALSE(within("a: [b, c]\n", bounds));
  bounds = {};
  bounds.items = 2;
  CHECK(within("a:\n- b\n- c\n", bounds));
  CHECK_FALSE(within("a:\n- b\n- c\n- d\n", bounds));
  CHECK_FALSE(within("a: [b, c, d]\n", bounds));
  bounds = {};
  bounds.scalar_bytes = 3;
  CHECK(within("a: bcd\n", bounds));
  CHECK_FALSE(within("a: bcde\n", bounds));
  bounds = {};
  bounds.depth = 5;
  CHECK(within("a: [[b]]\n", bounds));
  CHECK_FALSE(within("a: [[[[b]]]]\n", bounds));
  bounds = {};
  bounds.bytes_between = 400;
  CHECK(within("a: b\n# " + std::string(50, 'x') + "\nc: d\n", bounds));
  CHECK_FALSE(within("a: b\n# " + std::string(200, 'x') + "\nc: d\n", bounds));
  CHECK_FALSE(within("a: b\n# " + std::string(200, 'x') + "\n", bounds));
}
