// SPDX-License-Identifier: MIT
#include "files/worksheet_texts.hpp"

#include <cctype>

#include "files/reading.hpp"
#include "platewright/problem/catalogue/worksheets.hpp"
#include "platewright/quantity/money.hpp"

namespace platewright::reading {
namespace {

/// The decimals of the number that a text begins with; none for a whole number or a fraction.
unsigned decimals_of(std::string_view text) {
  const std::size_t point = text.find('.');
  const std::size_t number_end = text.find_first_not_of("0123456789.");
  if (point == std::string_view::npos || point > number_end) return 0;
  return static_cast<unsigned>(std::min(number_end, text.size()) - point - 1);
}

/// One unit of the last place written, in the unit of the answer.
std::optional<Rational> last_place_of(std::string_view text) {
  const unsigned decimals = decimals_of(text);
  if (decimals == 0) return std::nullopt;
  return Rational(1) / power_of_ten(decimals);
}

template <class Quantity>
std::optional<Figure> times(const std::optional<Rational>& place, const Quantity& unit) {
  if (!place) return std::nullopt;
  return Figure(unit * *place);
}

/// Whole per cent are rounded figures, as everyone writes them.
void read_share_answer(Answer& answer, const std::string& text) {
  answer.value = read_share(text);
  const bool percent = text.find('%') != std::string::npos || text.find("per") != std::string::npos;
  const auto place = last_place_of(text);
  if (percent) {
    answer.last_place = Figure(Rational(place.value_or(1) / 100));
  } else if (place) {
    answer.last_place = Figure(*place);
  }
}

void read_weight_answer(Answer& answer, const std::string& text, FigureForm form, WeighedIn weights,
                        const TextUnits& units) {
  // A factor for a price by weight is written without a unit.
  const bool bare =
      form == FigureForm::factor && text.find_first_not_of("0123456789./ ") == std::string::npos;
  if (bare) {
    answer.value = price_weight(weights) * read_number(text);
    answer.last_place = times(last_place_of(text), price_weight(weights));
    return;
  }
  const Amount amount = units.amount(text);
  answer.value = to_mass(amount);
  const bool compound =
      text.find_first_of("0123456789", text.find_first_of("abcdefghijklmnopqrst"
                                                          "uvwxyz")) != std::string::npos;
  if (!compound) {
    answer.last_place = times(last_place_of(text), Mass::of(amount.unit.size(), units::gram));
  }
}

}  // namespace

PricePerMass read_price_by_weight(std::string_view text, const TextUnits& units) {
  const SplitText parts = split_at(text, " per ");
  if (parts.after.empty()) {
    const Money money = read_money(parts.before);
    // Nothing costs nothing by any weight.
    if (money == Money{}) return {};
    throw Failure(problems::worksheet_price_malformed(text));
  }
  const bool counted = std::isdigit(static_cast<unsigned char>(parts.after.front())) != 0;
  const Mass weight = units.mass(counted ? parts.after : "1 " + parts.after);
  check_positive("the weight of a price", weight);
  return read_money(parts.before) / weight;
}

PricedWeight read_priced_weight(std::string_view text, const TextUnits& units) {
  const SplitText by_weight = split_at(text, " at ");
  if (!by_weight.after.empty()) {
    return {units.amount(by_weight.before), read_price_by_weight(by_weight.after, units)};
  }
  const SplitText whole = split_at(text, " for ");
  if (whole.after.empty()) throw Failure(problems::worksheet_price_missing(text));
  return {units.amount(whole.before), read_money(whole.after)};
}

TrimPart read_trim_part(PartKind kind, const std::string& name, const std::string& text,
                        const TextUnits& units) {
  if (text == "the rest") return {name, kind, std::nullopt, {}};
  if (kind != PartKind::by_product) return {name, kind, units.mass(text), {}};
  const PricedWeight part = read_priced_weight(text, units);
  const Mass weight = to_mass(part.weight);
  if (const auto* value = std::get_if<PricePerMass>(&part.price)) {
    return TrimPart::by_product(name, weight, *value);
  }
  check_positive("a by-product's weight", weight);
  return TrimPart::by_product(name, weight, std::get<Money>(part.price) / weight);
}

Answer read_answer(const WorkingStep& step, const std::string& text, WeighedIn weights,
                   const TextUnits& units) {
  Answer answer{step.name, text, {}, {}};
  // Many leave out the nought before the point.
  const std::string full = !text.empty() && text.front() == '.' ? "0" + text : text;
  if (std::holds_alternative<Rational>(step.value)) {
    read_share_answer(answer, full);
  } else if (std::holds_alternative<Mass>(step.value)) {
    read_weight_answer(answer, full, step.form, weights, units);
  } else if (std::holds_alternative<Money>(step.value)) {
    answer.value = read_money(full);
    answer.last_place = times(last_place_of(full), Money::of(1, units::currency_unit));
  } else {
    const bool bare = full.find(" per ") == std::string::npos;
    const std::string price =
        bare ? full + " per " + std::string(price_weight_name(weights)) : full;
    answer.value = read_price_by_weight(price, units);
    const SplitText parts = split_at(price, " per ");
    const Mass weight = std::isdigit(static_cast<unsigned char>(parts.after.front())) != 0
                            ? units.mass(parts.after)
                            : units.mass("1 " + parts.after);
    answer.last_place = times(last_place_of(full), Money::of(1, units::currency_unit) / weight);
  }
  return answer;
}

WeighedIn weighed_in(const Amount& weight) {
  return weight.unit.record().system == MeasuringSystem::metric ? WeighedIn::kilograms
                                                                : WeighedIn::pounds;
}

}  // namespace platewright::reading
