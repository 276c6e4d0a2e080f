// SPDX-License-Identifier: MIT
#pragma once
// A million plates of twelve lines, drawn by number: the same on every machine.

#include <cstddef>
#include <cstdint>
#include <random>
#include <vector>

#include "platewright/costing/plate_table.hpp"

namespace platewright::benchmarks {

/// The plates three times: as a table, and as the plain fractions that the table was made from,
/// with the plain prices beside them, for whoever works them out without it.
struct ManyPlates {
  static constexpr std::size_t plates = 1'000'000;
  static constexpr std::size_t lines = 12;
  /// Of a line a share and the place of its price, of a plate a denominator and where it ends.
  static constexpr std::size_t table_bytes = plates * (lines * 12 + 16);

  PlateTable table;
  std::vector<PriceShare> shares;  ///< of every line, plate after plate
  std::vector<Money> prices;       ///< of every pack, no two neighbours alike
};

/// Draws by remainder: standard distributions differ from library to library.
class Draws {
 public:
  std::int64_t from(std::int64_t least, std::int64_t most) {
    return least +
           static_cast<std::int64_t>(engine_() % static_cast<std::uint64_t>(most - least + 1));
  }

 private:
  std::mt19937_64 engine_{20'260'501};
};

/// Quarter ounces of a pack of whole pounds.
inline Rational weighed(Draws& draws) {
  constexpr std::int64_t packs[] = {1, 2, 5, 10, 25, 50};
  return fraction(draws.from(1, 64), 64 * packs[draws.from(0, 5)]);
}

inline Rational ounces_of_a_pound(Draws& draws) {
  return fraction(draws.from(1, 16), 16);
}

/// What is weighed and then trimmed, to a yield of whole percents.
inline Rational trimmed(Draws& draws) {
  return weighed(draws) / fraction(draws.from(50, 99), 100);
}

/// Quarter cups through a density to a hundredth of a gram for each 100 mL, trimmed. A cup is
/// 236.5882365 mL, a pound 453.59237 g: a dozen such lines have no denominator of 62 bits.
inline Rational measured(Draws& draws) {
  const Rational cup = fraction(2'365'882'365, 10'000'000);
  const Rational pound = fraction(45'359'237, 100'000);
  return fraction(draws.from(1, 16), 4) * cup * fraction(draws.from(2'001, 14'999), 10'000) /
         pound / fraction(draws.from(5'001, 9'999), 10'000);
}

/// Of a hundred thousand plates: 10 measured by the cup throughout, 60000 with four trimmed lines,
/// 39990 of goods that are only weighed, a quarter of these in ounces of a pound: one in 16 of
/// these is a true half cent.
inline Rational share_of_kind(std::int64_t kind, std::size_t line, Draws& draws) {
  if (kind <= 10) return measured(draws);
  if (kind <= 10'000) return ounces_of_a_pound(draws);
  return kind <= 70'000 && line < 4 ? trimmed(draws) : weighed(draws);
}

inline ManyPlates many_plates(std::size_t packs) {
  ManyPlates out;
  Draws draws;
  const auto last_pack = static_cast<std::int64_t>(packs) - 1;
  for (std::size_t i = 0; i < packs; ++i) {
    out.prices.push_back(Money::of(fraction(draws.from(25, 24'999), 100), units::currency_unit));
  }
  std::vector<PriceShare> plate(ManyPlates::lines);
  for (std::size_t i = 0; i < ManyPlates::plates; ++i) {
    const std::int64_t kind = draws.from(1, 100'000);
    for (std::size_t line = 0; line < plate.size(); ++line) {
      plate[line].price = static_cast<std::uint32_t>(draws.from(0, last_pack));
      plate[line].share = share_of_kind(kind, line, draws);
    }
    out.table.add(plate);
    out.shares.insert(out.shares.end(), plate.begin(), plate.end());
  }
  return out;
}

}  // namespace platewright::benchmarks
