// SPDX-License-Identifier: MIT
#pragma once
// What a cook asks about a roast: the piece, the oven, when it is taken out, how long it rests.

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/heat/meat_properties.hpp"
#include "platewright/heat/roast_shape.hpp"
#include "platewright/number/write.hpp"
#include "platewright/problem/catalogue/heat.hpp"
#include "platewright/problem/catalogue/safety.hpp"

namespace platewright {

enum class OvenKind { still, fan };

/// One setting of the oven; the last one has no time and lasts until the roast is taken out.
struct RoastOvenStep {
  Temperature at = Temperature::celsius(0);
  std::optional<Duration> time;
};

/// Meat between a lean round and a fat chuck of beef (70 % water, 20 % protein, 9 % fat): from
/// memory, after USDA's tables of food composition.
inline MeatComposition usual_meat() {
  return MeatComposition::of(fraction(70, 100), fraction(20, 100), fraction(9, 100));
}

struct RoastTerms {
  RoastShape shape;
  OvenKind oven_kind = OvenKind::still;
  std::vector<RoastOvenStep> oven;
  Temperature start = Temperature::celsius(4);  ///< all through, when the oven's door closes
  Temperature pull = Temperature::celsius(0);   ///< of the core when it is taken out
  Temperature room = Temperature::celsius(21);  ///< where it rests
  Duration rest = Duration::of(20, units::minute);
  MeatComposition meat = usual_meat();
};

/// Terms that can be worked out.
class RoastQuestion {
 public:
  /// Throws Failure for oven steps of which not the last alone is open, for a last oven that is not
  /// hotter than the temperature at which the roast is taken out, for a start that is not below
  /// that, and for temperatures inside that are those of ice or steam.
  static RoastQuestion of(RoastTerms terms) {
    if (terms.oven.empty()) throw Failure(problems::roast_oven_open("no oven step"));
    for (std::size_t i = 0; i < terms.oven.size(); ++i) {
      const bool last = i + 1 == terms.oven.size();
      if (terms.oven[i].time && last) {
        throw Failure(problems::roast_oven_open("a last oven step with a time"));
      }
      if (!last && (!terms.oven[i].time || *terms.oven[i].time <= Duration{})) {
        throw Failure(problems::roast_oven_open("a step of the oven without a time"));
      }
    }
    check_inside(terms.start);
    check_inside(terms.pull);
    if (terms.start >= terms.pull) {
      throw Failure(problems::roast_starts_done(text_of(terms.start), text_of(terms.pull)));
    }
    if (terms.oven.back().at <= terms.pull) {
      throw Failure(problems::inside_above_oven(text_of(terms.pull)));
    }
    return RoastQuestion(std::move(terms));
  }

  const RoastTerms& terms() const { return terms_; }

 private:
  explicit RoastQuestion(RoastTerms terms) : terms_(std::move(terms)) {}

  static std::string text_of(const Temperature& temperature) {
    return as_short_decimal(temperature.in_fahrenheit(), 1) + " F";
  }
  static void check_inside(const Temperature& inside) {
    if (inside < Temperature::celsius(0) || inside > Temperature::celsius(100)) {
      throw Failure(problems::inside_temperature_impossible(text_of(inside)));
    }
  }

  RoastTerms terms_;
};

}  // namespace platewright
