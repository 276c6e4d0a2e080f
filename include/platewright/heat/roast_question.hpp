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
#include "platewright/problem/body.hpp"
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
  static RoastQuestion of(RoastTerms terms);

  const RoastTerms& terms() const { return terms_; }

 private:
  explicit RoastQuestion(RoastTerms terms) : terms_(std::move(terms)) {}

  static std::string text_of(const Temperature& temperature);
  static void check_inside(const Temperature& inside);

  RoastTerms terms_;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/heat/bodies/roast_question.hpp"
#endif
