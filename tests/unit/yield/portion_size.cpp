// SPDX-License-Identifier: MIT
#include "platewright/yield/portion_size.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

PortionSize read(const char* text) {
  return read_portion_size(text, UnitTable(), MeasuringSystem::us);
}

Ladder half() {
  return Ladder({{Stage::purchased, Stage::served, fraction(1, 2), {}, "", {}, {}, false}});
}

}  // namespace

TEST_CASE("a portion is read by weight, by the slice and by the rib") {
  CHECK(portion_at_plate(read("6 oz"), half(), std::nullopt) == ounces(6));
  CHECK(portion_at_plate(read("2 slices of 3 oz"), half(), std::nullopt) == ounces(6));
  const PortionSize thick = read("2 slices of 3/4 in, 3 oz each");
  CHECK(portion_at_plate(thick, half(), std::nullopt) == ounces(6));
  CHECK(std::get<SlicePortion>(thick).thickness == Length::of(fraction(3, 4), units::inch));
  CHECK(portion_at_plate(read("1 slice of 90 g"), half(), std::nullopt) == grams(90));
  // A piece of 14 lb gives 7 lb at the plate: a rib of seven is a pound of it.
  CHECK(portion_at_plate(read("1 rib of 7"), half(), pounds(14)) == pounds(1));
  CHECK(portion_at_plate(read("2 ribs of 7"), half(), pounds(14)) == pounds(2));
}

TEST_CASE("a slice twice as thick weighs twice as much") {
  const SlicePortion weighed{2, ounces(3), Length::of(fraction(3, 4), units::inch)};
  CHECK(slice_at(Length::of(fraction(3, 2), units::inch), weighed) == ounces(6));
  CHECK(problem_of([] { slice_at(Length{}, {1, ounces(3), {}}); }).id == "number-not-positive");
}

TEST_CASE("portions without sense are refused") {
  const auto id = [](const char* text, std::optional<Mass> piece = std::nullopt) {
    return problem_of([&] { portion_at_plate(read(text), half(), piece); }).id;
  };
  CHECK(id("0 oz") == "number-not-positive");
  CHECK(id("0 slices of 3 oz") == "number-not-positive");
  CHECK(id("1 rib of 7") == "ribs-without-piece");
  CHECK(id("8 ribs of 7", pounds(14)) == "share-out-of-range");
  CHECK(id("1 rib of 0", pounds(14)) == "number-not-positive");
  CHECK(id("2 slices of 3 oz, 3 oz each") == "portion-size-malformed");
  CHECK(id("2 cups") == "wrong-dimension");
}
