// SPDX-License-Identifier: MIT
// How long a step takes, and how that grows.

#include "files/reading.hpp"
#include "platewright/problem/catalogue/steps.hpp"
#include "platewright/problem/plural.hpp"

namespace platewright::reading {
namespace {

/// The words that a time may be written for in this recipe.
std::vector<std::string> growing_words(const Recipe& recipe) {
  std::vector<std::string> out = {"batch"};
  if (recipe.tested) out.insert(out.begin(), recipe.tested->piece);
  if (recipe.vessel) out.emplace_back("pan");
  if (recipe.makes.portions) out.emplace_back("portion");
  return out;
}

std::optional<GrowsBy> grows_by(std::string_view word, const Recipe& recipe) {
  const auto is = [&](std::string_view one) { return word == one || word == several(one); };
  if (recipe.tested && is(recipe.tested->piece)) return GrowsBy::piece;
  if (is("batch")) return GrowsBy::batch;
  if (recipe.vessel && (is("pan") || is(recipe.vessel->name))) return GrowsBy::vessel;
  if (recipe.makes.portions && is("portion")) return GrowsBy::portion;
  return std::nullopt;
}

/// `leg`, `4 legs`, and behind it `by 2 people`.
TimeGrowth read_growth(const std::string& text, const Recipe& recipe) {
  const auto malformed = [&] {
    return Failure(problems::step_growth_malformed(text, growing_words(recipe)));
  };
  const auto counted = [&](const std::string& words, Rational& count) {
    const bool has_number = !words.empty() && words.front() >= '0' && words.front() <= '9';
    const NumberPrefix number = has_number ? read_number_prefix(words) : NumberPrefix{1, 0};
    if (number.value <= 0) throw malformed();
    count = number.value;
    return std::string(trimmed_spaces(std::string_view(words).substr(number.length)));
  };
  const SplitText parts = split_at(text, " by ");
  TimeGrowth out;
  const auto by = grows_by(counted(parts.before, out.each), recipe);
  if (!by) throw malformed();
  out.by = *by;
  if (parts.after.empty()) return out;
  const std::string who = counted(parts.after, out.people);
  if (who != "people" && who != "person" && who != "cooks" && who != "cook") throw malformed();
  return out;
}

}  // namespace

StepTime read_step_time(const std::string& text, const Recipe& recipe, const Reading& reading) {
  const SplitText parts = split_at(text, " per ");
  StepTime out{read_time_span(parts.before, reading), std::nullopt};
  if (!parts.after.empty()) out.grows = read_growth(parts.after, recipe);
  return out;
}

}  // namespace platewright::reading
