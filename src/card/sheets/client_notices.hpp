// SPDX-License-Identifier: MIT
#pragma once
// What a client's sheet says of the food: allergens and undercooked dishes.

#include <string>
#include <vector>

#include "platewright/card/sheet.hpp"
#include "platewright/event/dish_notices.hpp"

namespace platewright::card {

/// The dish, with the sign that leads to the box below where there is something to read there.
std::string dish_text(const std::string& dish, const std::vector<DishNotice>& notices);

/// Each dish with its allergens, and the ingredients of which nothing is known.
Table allergen_table(const std::vector<DishNotice>& notices);

/// What is told of one dish: each food below its minimum or of which it is not known, and the
/// reminder where guests may choose it.
std::vector<std::string> disclosures(const DishNotice& notice);

/// Dishes below the minimum, with the disclosure and the reminder that the Food Code wants
/// (3-603.11); no lines where every dish reaches it.
Box undercooked_box(const std::vector<DishNotice>& notices);

}  // namespace platewright::card
