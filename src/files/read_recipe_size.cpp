// SPDX-License-Identifier: MIT
// In what a recipe is made, and in what batches.

#include "files/reading.hpp"
#include "platewright/files/read_vessel.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/catalogue/recipes.hpp"
#include "platewright/problem/catalogue/vessels.hpp"

namespace platewright::reading {
namespace {

/// `3 times`.
Rational read_largest_batch(const std::string& text) {
  const NumberPrefix times = read_number_prefix(text);
  const std::string rest(trimmed_spaces(std::string_view(text).substr(times.length)));
  const bool known = rest == "times" || rest == "time" || rest == "batches" || rest == "batch";
  if (times.value <= 0 || !known) throw Failure(problems::largest_batch_malformed(text));
  return times.value;
}

}  // namespace

void read_recipe_size(const Reading& reading, yaml::Fields& top, Recipe& recipe) {
  recipe.vessel = top.read<RecipeVessel>("pan", [&](const std::string& text) {
    RecipeVessel out =
        read_vessel(text, content_word(recipe), reading.book.tables, reading.file.measures);
    if (recipe.tested && out.holds && *out.holds < 1) {
      throw Failure(problems::vessel_below_a_piece(out.name, recipe.tested->piece));
    }
    return out;
  });
  recipe.stands = top.read<Length>(
      "stands", [&](const std::string& text) { return read_height(text, reading); });
  recipe.largest_batch = top.read<Rational>("largest batch", read_largest_batch);
  recipe.whole_batches = top.flag("whole batches");
  const auto lost = top.read<Rational>("lost", [](const std::string& text) {
    const Rational share = read_share(text);
    if (share >= 1) {
      throw Failure(problems::share_out_of_range("a loss", text, "at least 0 and below 100 %"));
    }
    return share;
  });
  recipe.lost = lost.value_or(0);
}

}  // namespace platewright::reading
