#pragma once
// A ladder walked down and up.

#include <optional>
#include <string>

#include "platewright/card/kitchen_view.hpp"
#include "platewright/card/sheet.hpp"
#include "platewright/yield/portions.hpp"

namespace platewright {

/// What is asked of a ladder. Each is worked out only where its figures are there.
struct YieldQuestion {
  std::optional<Mass> buy;          ///< what does this weight serve?
  std::optional<Rational> guests;   ///< what to buy for so many portions?
  std::optional<Mass> portion;      ///< weight of a portion at the plate
  std::optional<Mass> piece;        ///< average weight of a whole piece as purchased
};

/// The ladder's rungs with their sources, and the answers.
Sheet yield_sheet(const std::string& name, const Ladder& ladder, const YieldQuestion& question,
                  const KitchenView& view);

}  // namespace platewright
