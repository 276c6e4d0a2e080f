// SPDX-License-Identifier: MIT
#include "book/contradictions.hpp"

#include <algorithm>

#include "platewright/problem/catalogue/contradictions.hpp"
#include "platewright/recipe/piece_line.hpp"

namespace platewright {
namespace {

/// Scales and conversions differ by less: common practice, no source.
const Rational weighing_tolerance = fraction(1, 50);

void check_tested(const Recipe& recipe, const Book& book, ProblemList& problems) {
  const RecipeLine* line = piece_line(recipe, book.recipes);
  if (line == nullptr) return;
  const Ingredient* cut = book.recipes.ingredient_of(*line);
  const LineAmount* amount = line->amount.amount();
  if (cut == nullptr || amount == nullptr || !amount->low() || amount->high()) return;
  if (amount->low()->dimension() != UnitDimension::mass) return;
  if (stage_of(*line, *cut) != Stage::purchased) return;
  const Mass written = to_mass(*amount->low());
  const Mass tested = recipe.tested->weight * recipe.tested->count;
  const Rational apart = written / tested - 1;
  if (apart <= weighing_tolerance && -apart <= weighing_tolerance) return;
  const auto pounds = [](const Mass& mass) {
    return as_short_decimal(mass.in(units::pound), 2) + " lb";
  };
  problems.add(
      at(problems::tested_on_differs(line->name, pounds(written), pounds(tested)), line->place));
}

bool is_salt(const std::string& name) {
  const auto ends = [&](const std::string& end) {
    return name.size() >= end.size() && name.substr(name.size() - end.size()) == end;
  };
  return name == "salt" || name.substr(0, 5) == "salt," || ends(" salt");
}

/// 100 g of water dissolve 35.9 g of sodium chloride at 20 C: CRC Handbook of Chemistry and
/// Physics, aqueous solubility of inorganic compounds (from memory).
void check_brine(const RecipeLine& line, ProblemList& problems) {
  const WeightShare* share = line.amount.share();
  if (share == nullptr || share->share <= fraction(36, 100) || !is_salt(line.name)) return;
  const bool of_water = share->of.size() == 1 && share->of.front() == "water";
  if (!of_water) return;
  problems.add(as_warning(at(
      problems::brine_above_saturation(line.name, as_short_decimal(share->share * 100, 1) + " %"),
      line.place)));
}

/// Food kept cold is kept for the days of FDA Food Code 2022, 3-501.17.
void check_step(const MethodStep& step, const SafetyTable& table, ProblemList& problems) {
  const auto limit = table.limit("date mark");
  if (!step.takes || !limit || !limit->within || step.takes->most <= *limit->within) return;
  const auto days = [](const Duration& time, Rounding rounding) {
    return as_short_decimal(time.in(units::hour) / 24, 1, rounding) + " days";
  };
  problems.add(as_warning(at(problems::step_beyond_date_mark(days(step.takes->most, Rounding::up),
                                                             days(*limit->within, Rounding::down),
                                                             limit->source + ", " + limit->row),
                             step.place)));
}

/// A steak from the grill keeps more of its weight than a roast: its row is not the roast's.
void check_method(const Recipe& recipe, const RecipeLine& line, const Book& book,
                  ProblemList& problems) {
  if (recipe.oven.empty()) return;
  const Ingredient* cut = book.recipes.ingredient_of(line);
  if (cut == nullptr || !cut->is_cut) return;
  for (const Rung& rung : cut->ladder.rungs()) {
    const auto begins = [&](const char* word) { return rung.method.find(word) == 0; };
    const bool of_the_pan_or_grill =
        begins("broiled") || begins("grilled") || begins("fried") || begins("pan");
    if (rung.own || !of_the_pan_or_grill) continue;
    problems.add(as_warning(at(
        problems::yield_of_another_method(cut->name, cut->yield_name, rung.method), line.place)));
  }
}

}  // namespace

void check_contradictions(const Recipe& recipe, const Book& book, ProblemList& problems) {
  check_tested(recipe, book, problems);
  for (const RecipeLine& line : recipe.lines) {
    check_brine(line, problems);
    check_method(recipe, line, book, problems);
  }
  for (const MethodStep& step : recipe.steps) check_step(step, book.tables.safety, problems);
}

}  // namespace platewright
