// SPDX-License-Identifier: MIT
#include "files/worksheet_texts.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/tables.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;
using namespace platewright::reading;

namespace {

const TextUnits& as_typed() {
  static const TextUnits texts{unit_table(), MeasuringSystem::us};
  return texts;
}

Answer answer(Figure kind, const char* text, const char* step = "a step",
              WeighedIn weights = WeighedIn::pounds, FigureForm form = FigureForm::usual) {
  return read_answer({step, Operation::add, {}, std::move(kind), {}, form}, text, weights,
                     as_typed());
}

}  // namespace

TEST_CASE("a weight is priced by weight or as a whole") {
  const PricedWeight by_weight = read_priced_weight("12 lb 8 oz at 6.65 per lb", as_typed());
  CHECK(to_mass(by_weight.weight) == pounds(12, 8));
  CHECK(std::get<PricePerMass>(by_weight.price) == per_pound("6.65"));
  CHECK(std::get<Money>(read_priced_weight("12 lb for 79.80", as_typed()).price) == money("79.80"));
  CHECK(read_price_by_weight("1.45 per 100 g", as_typed()) == per_kilogram("14.50"));
  CHECK(read_price_by_weight("0", as_typed()) == PricePerMass{});
  CHECK(problem_of([] { read_priced_weight("12 lb", as_typed()); }).id ==
        "worksheet-price-missing");
  CHECK(problem_of([] { read_price_by_weight("6.65", as_typed()); }).id ==
        "worksheet-price-malformed");
  CHECK(problem_of([] { read_price_by_weight("6.65 per 0 g", as_typed()); }).id ==
        "number-not-positive");
}

TEST_CASE("parts are read by what they are") {
  CHECK(read_trim_part(PartKind::usable, "loin", "6 lb", as_typed()).weight == pounds(6));
  CHECK_FALSE(read_trim_part(PartKind::usable, "loin", "the rest", as_typed()).weight.has_value());
  const TrimPart flank =
      read_trim_part(PartKind::by_product, "flank", "1 lb 8 oz at 4.60 per lb", as_typed());
  CHECK(flank.value == per_pound("4.60"));
  CHECK(read_trim_part(PartKind::by_product, "stew", "2 lb for 9.00", as_typed()).value ==
        per_pound("4.50"));
}

TEST_CASE("an answer keeps the last place that was written") {
  CHECK(answer(Money{}, "66.80").last_place == Figure(money("0.01")));
  CHECK(answer(Money{}, ".7").value == Figure(money("0.70")));
  CHECK_FALSE(answer(Money{}, "84").last_place.has_value());
  CHECK(answer(PricePerMass{}, "11.13").value == Figure(per_pound("11.13")));
  CHECK(answer(PricePerMass{}, "11.13").last_place == Figure(per_pound("0.01")));
  CHECK(answer(PricePerMass{}, "24.5", "a step", WeighedIn::kilograms).value ==
        Figure(per_kilogram("24.5")));
  CHECK(answer(PricePerMass{}, "2.45 per 100 g").last_place == Figure(per_kilogram("0.1")));
}

TEST_CASE("shares in whole per cent are rounded figures, other whole numbers are exact") {
  CHECK(answer(Rational(), "64.51 %").last_place == Figure(fraction(1, 10'000)));
  CHECK(answer(Rational(), "60 %").last_place == Figure(fraction(1, 100)));
  CHECK(answer(Rational(), "0.65").last_place == Figure(fraction(1, 100)));
  CHECK_FALSE(answer(Rational(), "2").last_place.has_value());
  CHECK_FALSE(answer(Rational(), "5/8").last_place.has_value());
}

TEST_CASE("weights are exact unless they have decimals, and a portion cost factor has no unit") {
  CHECK_FALSE(answer(Mass{}, "4 lb 8 oz").last_place.has_value());
  CHECK(answer(Mass{}, "4 lb 8 oz").value == Figure(pounds(4, 8)));
  CHECK(answer(Mass{}, "8.63 kg").last_place == Figure(grams(10)));
  CHECK_FALSE(answer(Mass{}, "1 lb 8.5 oz").last_place.has_value());
  const Answer factor =
      answer(Mass{}, ".52", "portion cost factor", WeighedIn::pounds, FigureForm::factor);
  CHECK(factor.value == Figure(Mass::of(printed("0.52"), units::pound)));
  CHECK(factor.last_place == Figure(Mass::of(printed("0.01"), units::pound)));
}

TEST_CASE("a sheet is in kilograms where its first weight is metric") {
  CHECK(weighed_in(as_typed().amount("750 g")) == WeighedIn::kilograms);
  CHECK(weighed_in(as_typed().amount("12 lb")) == WeighedIn::pounds);
}
