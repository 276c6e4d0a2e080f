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

bool has_name(const Vessel& row, const std::string& plain) {
  if (folded_name(row.name) == plain) return true;
  return std::any_of(row.names.begin(), row.names.end(),
                     [&](const std::string& name) { return folded_name(name) == plain; });
}

const Vessel* row_of(std::string_view name, const Tables& tables) {
  const std::string plain = folded_name(name);
  const Vessel* best = nullptr;
  for (const Vessel& row : tables.vessels) {
    if (!has_name(row, plain) || (row.printed.empty() && row.by_rule.empty())) continue;
    if (best == nullptr || preference(row.capacity) < preference(best->capacity)) best = &row;
  }
  return best;
}

bool is_plural_of(std::string_view word, std::string_view one) {
  return word == one || word == std::string(one) + "s" || word == std::string(one) + "es";
}

/// `2 legs`.
Rational read_holds(std::string_view text, std::string_view content, std::string_view whole) {
  const NumberPrefix count = read_number_prefix(text);
  const std::string_view word = trimmed_spaces(text.substr(count.length));
  if (!word.empty() && !is_plural_of(word, content)) {
    throw Failure(problems::vessel_malformed(whole));
  }
  if (count.value <= 0) throw Failure(problems::number_not_positive("what it holds", text));
  return count.value;
}

}  // namespace

RecipeVessel read_vessel(std::string_view text, std::string_view content, const Tables& tables,
                         MeasuringSystem system) {
  constexpr std::string_view holds = ", holds ";
  constexpr std::string_view of = " of ";
  RecipeVessel out;
  std::string_view name = text;
  if (const std::size_t at = text.rfind(holds); at != std::string_view::npos) {
    out.holds = read_holds(text.substr(at + holds.size()), content, text);
    name = text.substr(0, at);
  }
  const std::size_t at = name.rfind(of);
  const bool own = at != std::string_view::npos && at + of.size() < name.size() &&
                   std::isdigit(static_cast<unsigned char>(name[at + of.size()])) != 0;
  if (own) {
    out.volume = to_volume(read_amount(name.substr(at + of.size()), tables.units, system));
    if (*out.volume <= Volume()) throw Failure(problems::number_not_positive("a volume", name));
    name = name.substr(0, at);
  } else if (const Vessel* row = row_of(name, tables)) {
    const std::string& printed = row->printed.empty() ? row->by_rule : row->printed;
    out.volume = to_volume(read_amount(printed, tables.units, system));
    out.source = row->source;
  }
  out.name = std::string(trimmed_spaces(name));
  if (out.name.empty()) throw Failure(problems::vessel_malformed(text));
  return out;
}

}  // namespace platewright
