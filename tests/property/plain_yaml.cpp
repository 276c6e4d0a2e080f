// SPDX-License-Identifier: MIT
// What is read without the library is what the library reads.

#include "yaml/plain_yaml.hpp"

#include <rapidcheck.h>

#include "support/catch.hpp"
#include "support/same_nodes.hpp"
#include "support/yaml_texts.hpp"
#include "yaml/library_yaml.hpp"

using namespace platewright;
using namespace platewright::test;

TEST_CASE("a text that is plain gives the library's nodes, and none of its problems") {
  CHECK(rc::check([] {
    const std::string text = any_yaml_text();
    const auto plain = yaml::read_plain_yaml(text, {});
    RC_CLASSIFY(plain.has_value(), "plain");
    if (!plain) return;
    ProblemList problems;
    const auto by_library = yaml::read_library_yaml(text, "book.yaml", problems, {});
    RC_LOG() << text;
    RC_ASSERT(problems.all().empty());
    RC_ASSERT(by_library.has_value());
    RC_ASSERT(same_nodes(*plain, *by_library));
  }));
}
