// SPDX-License-Identifier: MIT
#include "platewright/files/read_vessel.hpp"

#include <algorithm>
#include <array>
#include <cctype>

#include "platewright/number/read.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/quantity/read_amount.hpp"

namespace platewright {
namespace {

/// Lower is better: what a cook can fill a vessel to.
std::size_t preference(const std::string& capacity) {
  constexpr std::array<std::string_view, 4> order{"usable", "level", "contents", "water capacity"};
  return static_cast<std::size_t>(std::find(order.begin(), order.end(), capacity) - order.begin());
}

/// True for a capacity to the rim, which no cook fills.
bool is_whole(const std::string& capacity) {
  return capacity == "brimful" || capacity == "water capacity";
}

/// Hyphens and commas do not matter: `half size sheet pan`, `full-size hotel pan 4 in`.
std::string plain_name(std::string_view name) {
  std::string out(name);
  std::replace(out.begin(), out.end(), '-', ' ');
  std::replace(out.begin(), out.end(), ',', ' ');
  return folded_name(out);
}

bool has_name(const Vessel& row, const std::string& plain) {
  if (plain_name(row.name) == plain) return true;
  return std::any_of(row.names.begin(), row.names.end(),
                     [&](const std::string& name) { return plain_name(name) == plain; });
}

const Vessel* row_of(std::string_view name, const Tables& tables) {
  const std::string plain = plain_name(name);
  const Vessel* best = nullptr;
  for (const Vessel& row : tables.vessels) {
    if (!has_name(row, plain) ||
        (row.printed.empty() && row.by_rule.empty() && row.outside.empty()))
      continue;
    if (best == nullptr || preference(row.capacity) < preference(best->capacity)) best = &row;
  }
  return best;
}

bool is_plural_of(std::string_view word, std::string_view one) {
  return word == one || word == several(one);
}

bool begins_with_digit(std::string_view text) {
  return !text.empty() && std::isdigit(static_cast<unsigned char>(text.front())) != 0;
}

/// `18 x 26 in`, `650 x 530 x 20 mm`: the first two. Nothing for another form.
std::optional<PanBottom> read_bottom(std::string_view text, const UnitTable& units) {
  constexpr std::string_view times = " x ";
  const std::size_t first = text.find(times);
  const std::size_t unit_at = text.rfind(' ');
  if (first == std::string_view::npos || unit_at <= first + times.size()) return std::nullopt;
  const std::string unit(text.substr(unit_at));
  std::string_view second = text.substr(first + times.size(), unit_at - first - times.size());
  second = second.substr(0, second.find(times));
  const auto side = [&](std::string_view number) {
    const Amount length = read_amount(std::string(number) + unit, units, MeasuringSystem::us);
    if (length.number <= 0) throw Failure(problems::number_not_positive("a size", text));
    return to_length(length);
  };
  return PanBottom{side(text.substr(0, first)), side(second)};
}

/// What stands behind `of`: a capacity, of which a cook fills the usual share, or the bottom of a
/// tray.
void read_size(std::string_view text, const Tables& tables, MeasuringSystem system,
               RecipeVessel& out) {
  if (const auto bottom = read_bottom(text, tables.units)) {
    out.bottom = *bottom;
    return;
  }
  const Volume whole = to_volume(read_amount(text, tables.units, system));
  if (whole <= Volume()) throw Failure(problems::number_not_positive("a volume", text));
  out.fill = usual_fill();
  out.volume = whole;
}

/// Rows print US measures or metric ones, whatever the book's own are.
void take_size(const Vessel& row, const Tables& tables, RecipeVessel& out) {
  const std::string& printed = row.printed.empty() ? row.by_rule : row.printed;
  if (!printed.empty()) {
    out.volume = to_volume(read_amount(printed, tables.units, MeasuringSystem::us));
    if (is_whole(row.capacity)) out.fill = usual_fill();
  }
  out.bottom = read_bottom(row.outside, tables.units);
  out.source = row.source;
}

/// `2 legs`, `24`, or `72 L`, which is how far it is filled.
void read_holds(std::string_view text, std::string_view content, const Tables& tables,
                MeasuringSystem system, RecipeVessel& out) {
  const NumberPrefix count = read_number_prefix(text);
  const std::string_view word = trimmed_spaces(text.substr(count.length));
  if (count.value <= 0) throw Failure(problems::number_not_positive("what it holds", text));
  if (word.empty() || is_plural_of(word, content)) {
    out.holds = count.value;
    return;
  }
  out.volume = to_volume(read_amount(text, tables.units, system));
  out.fill = 1;
  out.source.clear();
}

}  // namespace

RecipeVessel read_vessel(std::string_view text, std::string_view content, const Tables& tables,
                         MeasuringSystem system) {
  constexpr std::string_view holds = ", holds ";
  constexpr std::string_view of = " of ";
  RecipeVessel out;
  const std::size_t held = text.rfind(holds);
  std::string_view name = text.substr(0, held);
  const std::size_t at = name.rfind(of);
  if (at != std::string_view::npos && begins_with_digit(name.substr(at + of.size()))) {
    read_size(name.substr(at + of.size()), tables, system, out);
    name = name.substr(0, at);
  } else if (const Vessel* row = row_of(name, tables)) {
    take_size(*row, tables, out);
  }
  out.name = std::string(trimmed_spaces(name));
  if (out.name.empty()) throw Failure(problems::vessel_malformed(text, content));
  if (held == std::string_view::npos) return out;
  try {
    read_holds(text.substr(held + holds.size()), content, tables, system, out);
  } catch (const Failure& failure) {
    if (failure.problem().id == "number-not-positive") throw;
    throw Failure(problems::vessel_malformed(text, content));
  }
  return out;
}

}  // namespace platewright
