// SPDX-License-Identifier: MIT
// Typed quantities as amounts, in the unit that a cook would say them in.

#include "platewright/quantity/literals.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace platewright;
using namespace platewright::literals;
using namespace platewright::test;

namespace {

std::string said(const Amount& amount) {
  return amount_text(amount);
}

}  // namespace

TEST_CASE("a typed quantity becomes an amount in the unit that it is said in") {
  CHECK(said(10_oz) == "10 oz");
  CHECK(said(24_oz) == "1 1/2 lb");
  CHECK(said(25_lb) == "25 lb");
  CHECK(said(250_g) == "250 g");
  CHECK(said(1500_g) == "1 1/2 kg");
  CHECK(said(2_cup) == "2 cups");
  CHECK(said(4_qt) == "1 gal");
  CHECK(said(2_tbsp) == "2 tbsp");
  CHECK(said(90_min) == "1 1/2 h");
  CHECK(said(12_each) == "12 each");
}

TEST_CASE("the amount is the quantity to the last digit") {
  CHECK(to_mass(Mass(10.3_oz)) == 10.3_oz);
  CHECK(to_volume(Amount(7.5_mL + 1_tsp)) == 7.5_mL + 1_tsp);
  CHECK(Amount(1_lb) == amount("1 lb"));
}

TEST_CASE("a line and a range take typed quantities") {
  const LineAmount salt = 10_oz;
  CHECK(salt.low() == amount("10 oz"));
  CHECK_FALSE(salt.high());
  const LineAmount oil = LineAmount::range(2_tbsp, 3_tbsp);
  CHECK(oil.high() == amount("3 tbsp"));
  CHECK(line("salt", 10_oz).amount == WrittenAmount(amount("10 oz")));
}

TEST_CASE("a unit that was moved from is still that unit") {
  Amount first = amount("3 lb");
  const Amount second = std::move(first);
  CHECK(first.unit.name() == "pound");  // NOLINT(bugprone-use-after-move): what is tested
  CHECK(second.unit.name() == "pound");
}
