// SPDX-License-Identifier: MIT
// How sure a weight makes the kitchen, against a simulation that knows nothing of the method: days
// are drawn roast by roast and counted. Its generator and its seed are fixed, so that it comes out
// alike everywhere.

#include <cmath>
#include <random>

#include "platewright/number/nearest_double.hpp"
#include "platewright/yield/how_sure.hpp"
#include "support/catch.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// Normal draws by the polar method; the standard library's own differ from one maker to the next.
class Draws {
 public:
  double operator()(double mean, double deviation) {
    double x = 0;
    double y = 0;
    double square = 0;
    do {
      x = uniform();
      y = uniform();
      square = x * x + y * y;
    } while (square >= 1 || square == 0);
    return mean + deviation * x * std::sqrt(-2 * std::log(square) / square);
  }

 private:
  double uniform() { return 2 * (static_cast<double>(engine_()) / 4294967296.0) - 1; }

  std::mt19937 engine_{20'271'009};
};

constexpr int days = 40'000;

/// The share of days on which `pieces` roasts of about `piece` cover `served`: the piece's weight
/// and the yields of both rungs vary from roast to roast, the published averages from table to
/// table.
double covered(const Ladder& ladder, int pieces, double piece, double piece_deviation,
               double served) {
  Draws draw;
  int good = 0;
  for (int day = 0; day < days; ++day) {
    std::vector<double> averages;
    std::vector<double> deviations;
    for (const Rung& rung : ladder.rungs()) {
      const double deviation = nearest_double(*rung.spread.standard_deviation);
      const auto samples = static_cast<double>(*rung.spread.samples);
      averages.push_back(draw(nearest_double(rung.yield), deviation / std::sqrt(samples)));
      deviations.push_back(deviation);
    }
    double plate = 0;
    for (int i = 0; i < pieces; ++i) {
      double weight = draw(piece, piece_deviation);
      for (std::size_t rung = 0; rung < averages.size(); ++rung) {
        weight *= draw(averages[rung], deviations[rung]);
      }
      plate += weight;
    }
    if (plate >= served) ++good;
  }
  return static_cast<double>(good) / days;
}

Ladder roast() {
  return Ladder({{Stage::purchased,
                  Stage::cooked,
                  fraction(769, 1000),
                  {Loss::cooking},
                  "",
                  {35, fraction(28, 1000), {}, {}},
                  {},
                  false},
                 {Stage::cooked,
                  Stage::served,
                  fraction(84, 100),
                  {Loss::bone},
                  "",
                  {12, fraction(30, 1000), {}, {}},
                  {},
                  false}});
}

}  // namespace

TEST_CASE("the sure weight covers the guests as often as it says") {
  const WeightToBuy need = weight_to_buy(roast(), 20, grams(170));
  for (const Rational& probability : {fraction(80, 100), fraction(95, 100), fraction(99, 100)}) {
    const SureWeight sure = sure_weight(roast(), need, probability);
    REQUIRE(sure.can_tell());
    const double found = covered(roast(), 1, nearest_double(sure.purchased->in(units::gram)), 0,
                                 nearest_double(need.served.in(units::gram)));
    INFO(found);
    CHECK(std::abs(found - nearest_double(probability)) < 0.01);
  }
}

TEST_CASE("the sure pieces cover the guests at least as often, and one fewer does not") {
  const WeightToBuy need = weight_to_buy(roast(), 84, grams(170));
  const PieceSpread piece{grams(3400), grams(270)};
  const SurePieces sure = sure_pieces(roast(), need, piece, fraction(95, 100));
  REQUIRE(sure.can_tell());
  const int pieces = static_cast<int>(sure.sure->pieces);
  const double served = nearest_double(need.served.in(units::gram));
  CHECK(covered(roast(), pieces, 3400, 270, served) >= 0.945);
  CHECK(covered(roast(), pieces - 1, 3400, 270, served) < 0.95);
}

// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1, cumulative normal distribution:
// 0.84134 below 1.00, 0.97725 below 2.00, 0.99865 below 3.00.
TEST_CASE("probabilities of the printed normal table lead back to whole deviations") {
  const auto near = [](const Rational& left, const Rational& right) {
    return left - right < fraction(1, 500) && right - left < fraction(1, 500);
  };
  CHECK(near(detail::deviations_for(printed("0.84134")), 1));
  CHECK(near(detail::deviations_for(printed("0.97725")), 2));
  CHECK(near(detail::deviations_for(printed("0.99865")), 3));
}
