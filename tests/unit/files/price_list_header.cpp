// SPDX-License-Identifier: MIT
// How suppliers' lists write their numbers.

#include "files/price_list_header.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::reading;
using namespace platewright::test;

TEST_CASE("a price as the list writes it") {
  CHECK(plain_price("12.50", {}) == "12.50");
  CHECK(plain_price("$1,234.50", {'.', ',', "$"}) == "1234.50");
  CHECK(plain_price("1.234.567,5 \u20AC", {',', '.', "\u20AC"}) == "1234567.5");
  CHECK(plain_price("12,5", {',', '\0', ""}) == "12.5");
}

TEST_CASE("a comma or a sign that nobody explained is not guessed at") {
  const auto refused = [](const std::string& text, const NumberWriting& writing) {
    return problem_of([&] { plain_price(text, writing); }).id == "price-list-number";
  };
  CHECK(refused("12,50", {}));
  CHECK(refused("$12.50", {}));
  CHECK(refused("1.234", {',', '\0', ""}));
  CHECK(refused("12,50", {'.', ',', ""}));
  CHECK(refused("1,2345.00", {'.', ',', ""}));
  CHECK(refused("1.50.25", {}));
  CHECK(refused("on request", {}));
  CHECK(refused("$", {'.', '\0', "$"}));
}

TEST_CASE("decimals of a pack, and nothing else in it") {
  CHECK(plain_decimals("6 x 2,5 kg", {',', '\0', ""}) == "6 x 2.5 kg");
  CHECK(plain_decimals("2 lb, trimmed", {',', '\0', ""}) == "2 lb, trimmed");
  CHECK(plain_decimals("6 x 2.5 kg", {}) == "6 x 2.5 kg");
}
