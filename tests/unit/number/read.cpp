// SPDX-License-Identifier: MIT
// Numbers as people type them.

#include "platewright/number/read.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using platewright::test::problem_of;

namespace {

std::string id_of(std::string_view text) {
  return problem_of([&] { read_number(text); }).id;
}

}  // namespace

TEST_CASE("whole numbers and decimals are read exactly") {
  CHECK(read_number("3") == 3);
  CHECK(read_number("0") == 0);
  CHECK(read_number("0.75") == fraction(3, 4));
  CHECK(read_number("0.1") == fraction(1, 10));
  CHECK(read_number("1500") == 1500);
  CHECK(read_number("123456789012345678") == fraction(123456789012345678, 1));
}

// A number's own string constructor takes 010 for 8.
TEST_CASE("a leading zero means nothing") {
  CHECK(read_number("010") == 10);
  CHECK(read_number("007.50") == fraction(15, 2));
}

TEST_CASE("fractions and mixed numbers") {
  CHECK(read_number("1/3") == fraction(1, 3));
  CHECK(read_number("4/2") == 2);
  CHECK(read_number("1 1/2") == fraction(3, 2));
  CHECK(read_number("1-1/2") == fraction(3, 2));
  CHECK(read_number("2 3/4") == fraction(11, 4));
  CHECK(read_number("10/12") == fraction(5, 6));
}

TEST_CASE("signs for fractions") {
  CHECK(read_number("\u00BD") == fraction(1, 2));
  CHECK(read_number("1\u00BD") == fraction(3, 2));
  CHECK(read_number("1 \u2153") == fraction(4, 3));
  CHECK(read_number("2\u215E") == fraction(23, 8));
  CHECK(read_number("\u2152") == fraction(1, 10));
  CHECK(read_number("1\u20444") == fraction(1, 4));
  CHECK(read_number("3 1\u20444") == fraction(13, 4));
}

TEST_CASE("what is no number says so") {
  CHECK(id_of("") == "number-missing");
  CHECK(id_of("NaN") == "number-missing");
  CHECK(id_of("inf") == "number-missing");
  CHECK(id_of(".5") == "number-malformed");
  CHECK(id_of("a few") == "number-missing");
}

TEST_CASE("a comma is neither a point nor a grouping") {
  CHECK(id_of("1,5") == "number-comma");
  CHECK(id_of("1,500") == "number-comma");
  CHECK(id_of("1 1/2,5") == "number-comma");
}

TEST_CASE("a sign is refused") {
  CHECK(id_of("-3") == "number-signed");
  CHECK(id_of("+3") == "number-signed");
  CHECK(id_of("-.5") == "number-signed");
  CHECK(id_of("\u22123") == "number-signed");
}

TEST_CASE("exponents and other bases are refused") {
  CHECK(id_of("1e999") == "number-exponent");
  CHECK(id_of("1E3") == "number-exponent");
  CHECK(id_of("1.5e-3") == "number-exponent");
  CHECK(id_of("1e+3") == "number-exponent");
  CHECK(id_of("0x10") == "number-malformed");
}

TEST_CASE("a denominator of 0 is refused in every form") {
  CHECK(id_of("1/0") == "number-zero-denominator");
  CHECK(id_of("2 1/0") == "number-zero-denominator");
  CHECK(id_of("1/00") == "number-zero-denominator");
  CHECK(problem_of([] { read_share("1.5/0"); }).id == "number-zero-denominator");
}

TEST_CASE("malformed numbers say what is wrong with them") {
  const auto found = [](std::string_view text) {
    return problem_of([&] { read_number(text); }).found;
  };
  CHECK(found("1.") == "\"1.\" (no digit after the point)");
  CHECK(found("1.5.2") == "\"1.5.2\" (two decimal points)");
  CHECK(found("1/2/3") == "\"1/2/3\" (two fraction bars)");
  CHECK(found("1/") == "\"1/\" (nothing below the fraction bar)");
  CHECK(found("1.5/2") == "\"1.5/2\" (a decimal inside a fraction)");
  CHECK(found("1 5/4") == "\"1 5/4\" (the fraction of a mixed number is not below 1)");
  CHECK(found("\u00BD\u00BD") == "\"\u00BD\u00BD\" (two fractions in a row)");
  CHECK(found("3 cups") == "\"3 cups\" (\" cups\" follows the number)");
}

TEST_CASE("more than 18 digits are refused") {
  CHECK(id_of("1234567890123456789") == "number-too-long");
  CHECK(id_of("0.1234567890123456789") == "number-too-long");
  CHECK(id_of("1/1234567890123456789") == "number-too-long");
  CHECK(id_of(std::string(100000, '9')) == "number-too-long");
}

TEST_CASE("a number at the front of a text takes no more than itself") {
  const auto length = [](std::string_view text) { return read_number_prefix(text).length; };
  CHECK(length("2 lb 3 oz") == 1);
  CHECK(length("2 1/4 cups") == 5);
  CHECK(length("2-3 tbsp") == 1);
  CHECK(length("2-3/4 cup") == 5);
  CHECK(length("6 2.5 kg") == 1);
  CHECK(length("3 eggs") == 1);
}

// `2-5/4` can only be a range: the fraction of a mixed number is below 1.
TEST_CASE("a hyphen before a fraction from 1 up is a range") {
  CHECK(read_number_prefix("2-5/4 cups").value == 2);
}

TEST_CASE("shares are numbers or per cent") {
  CHECK(read_share("12 %") == fraction(3, 25));
  CHECK(read_share("12%") == fraction(3, 25));
  CHECK(read_share("0.12") == fraction(3, 25));
  CHECK(read_share("3/25") == fraction(3, 25));
  CHECK(read_share("8.25 %") == fraction(33, 400));
  CHECK(read_share("12 per cent") == fraction(3, 25));
  CHECK(read_share("12 percent") == fraction(3, 25));
}

TEST_CASE("a share of two weights as they were weighed") {
  CHECK(read_share("205/453.59") == fraction(20500, 45359));
  CHECK(read_share("4.5/7.5") == fraction(3, 5));
}

TEST_CASE("only a per cent sign follows a share") {
  CHECK(problem_of([] { read_share("12 lb"); }).id == "number-malformed");
  CHECK(problem_of([] { read_share("%"); }).id == "number-missing");
  CHECK(problem_of([] { read_share("-5 %"); }).id == "number-signed");
}
