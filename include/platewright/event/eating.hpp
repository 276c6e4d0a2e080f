// SPDX-License-Identifier: MIT
#pragma once
// Which guests can eat which dish.

#include <string>
#include <vector>

#include "platewright/event/dish_notices.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/events.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright {

/// What the book can say of one dish and one kind of guest.
enum class Eats {
  can,          ///< every ingredient states its allergens, and none of theirs is among them
  cannot,       ///< it holds what they may not eat
  may_contain,  ///< a label warns of it
  not_known,    ///< an ingredient does not state its allergens
};

/// The answer, and the allergens or ingredients that it is for.
struct EatingAnswer {
  Eats eats = Eats::not_known;
  std::vector<std::string> because;
};

namespace detail {

std::vector<std::string> among(const std::vector<AllergenFound>& found,
                               const std::vector<std::string>& without);

}  // namespace detail

/// What is not stated is never taken for free: only what is known to hold none can be eaten. Guests
/// who may eat everything can eat what is not known, too.
EatingAnswer eats(const GuestKind& guests, const RecipeAllergens& dish);

/// Whether some guests may not eat something.
bool has_diets(const Event& event);

/// A warning for each dish that the menu gives to a kind of guest who may not eat it, and for each
/// kind for whom no dish of the menu is known to be eatable. Needs a book without circles; throws
/// Failure for a dish that is no recipe.
ProblemList guest_warnings(const Event& event, const RecipeBook& book, const AllergenTable& table);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/eating.hpp"
#endif
