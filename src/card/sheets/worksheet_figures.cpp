// SPDX-License-Identifier: MIT
#include "card/sheets/worksheet_figures.hpp"

#include <algorithm>

#include "platewright/card/figures.hpp"
#include "platewright/quantity/money.hpp"

namespace platewright::card {
namespace {

const char* sign_of(Operation operation) {
  switch (operation) {
    case Operation::add:
      return " + ";
    case Operation::subtract:
      return " - ";
    case Operation::multiply:
      return " x ";
    case Operation::divide:
      return " / ";
  }
  return " ";
}

/// Sixteenths of a pound as a mixed number, since they are ounces; anything else as a decimal.
std::string pounds_text(const Rational& pounds) {
  return is_whole(pounds * 16) ? as_mixed(pounds) : as_short_decimal(pounds, 4);
}

/// The fewest decimals, up to `most`, that say the value exactly; `most` where none do.
unsigned places_needed(const Rational& value, unsigned most) {
  unsigned places = 0;
  while (places < most && !is_whole(value * power_of_ten(places))) ++places;
  return places;
}

/// `1.316`, `0.7875`.
std::string factor_text(const Rational& factor, unsigned least_places) {
  return as_decimal(
      factor, std::max(exact_places(factor, 3).value_or(3), places_needed(factor, least_places)));
}

/// What one is of the figure as the sheet writes it: 1 % of a share, a price for one pound.
Figure one_of(const WorkingStep& step, WeighedIn weights) {
  const Money one = Money::of(1, units::currency_unit);
  if (std::holds_alternative<Mass>(step.value)) return price_weight(weights);
  if (std::holds_alternative<Money>(step.value)) return one;
  if (std::holds_alternative<PricePerMass>(step.value)) return one / price_weight(weights);
  return step.form == FigureForm::factor ? Rational(1) : fraction(1, 100);
}

}  // namespace

Cell exact_weight_cell(const Mass& mass, WeighedIn weights) {
  const Rational count = mass / price_weight(weights);
  if (weights == WeighedIn::kilograms) return figure(count, as_short_decimal(count, 3), "kg");
  const Rational ounces = half_up(mass.in(units::ounce), fraction(1, 100));
  const Rational pounds = Rational(floor_of(ounces / 16));
  const Rational rest = ounces - pounds * 16;
  std::string text = pounds == 0 ? "" : as_fraction(pounds) + " lb";
  if (rest != 0 || text.empty()) {
    text += (text.empty() ? "" : " ") + as_short_decimal(rest, 2) + " oz";
  }
  return figure_as(text, count, as_short_decimal(count, 4), "lb");
}

unsigned places_of(const Answer& answer, const WorkingStep& step, WeighedIn weights) {
  // Nobody reads more, and a sheet of thousands of digits is no use.
  constexpr unsigned most = 10;
  if (!answer.last_place) return 0;
  const auto place = ratio_of(*answer.last_place, one_of(step, weights));
  unsigned places = 0;
  while (place && places < most && Rational(1) / power_of_ten(places) > *place) ++places;
  return places;
}

unsigned FigureWriter::money_places(const Rational& value, unsigned least_places) const {
  const unsigned minor = sheet_.currency.minor_digits();
  const unsigned usual = exact_places(value, minor).value_or(value < 1 ? minor + 2 : minor);
  return std::max(usual, places_needed(value, least_places));
}

unsigned FigureWriter::price_places(const Rational& value, unsigned least_places) const {
  if (!digits_) return money_places(value, least_places);
  const unsigned asked = std::max(*digits_, least_places);
  return std::max(sheet_.currency.minor_digits(), places_needed(value, asked));
}

Cell FigureWriter::number(const Rational& value, unsigned places, const std::string& unit,
                          const std::string& after) const {
  const std::string shown = as_decimal(value, places);
  return figure_as(with_thousands(shown) + after, value, shown, unit);
}

Cell FigureWriter::price_in_column(const PricePerMass& value) const {
  const Rational one = (value * price_weight(sheet_.weights)).in(units::currency_unit);
  return number(one, price_places(one, 0), sheet_.currency.code(), "");
}

Cell FigureWriter::price(const PricePerMass& value, unsigned least_places) const {
  const std::string per = " per " + std::string(price_weight_name(sheet_.weights));
  const Rational one = (value * price_weight(sheet_.weights)).in(units::currency_unit);
  return number(one, price_places(one, least_places), sheet_.currency.code() + per, per);
}

Cell FigureWriter::weight(FigureForm form, const Mass& value, unsigned least_places) const {
  const Rational count = value / price_weight(sheet_.weights);
  const std::string unit(price_weight_name(sheet_.weights));
  if (form == FigureForm::factor) {
    const std::string text = factor_text(count, least_places);
    return figure_as(text, count, text, unit);
  }
  const bool pounds = sheet_.weights == WeighedIn::pounds;
  const std::string text = pounds ? pounds_text(count) : as_short_decimal(count, 4);
  return figure_as(text + " " + unit, count, as_short_decimal(count, 4), unit);
}

Cell FigureWriter::cell(FigureForm form, const Figure& value, unsigned least_places) const {
  if (const auto* mass = std::get_if<Mass>(&value)) return weight(form, *mass, least_places);
  if (const auto* by_weight = std::get_if<PricePerMass>(&value)) {
    return price(*by_weight, least_places);
  }
  if (const auto* sum = std::get_if<Money>(&value)) {
    // As many as two places more where they say it exactly, so that a calculator shows the same,
    // and two more of what is below one currency unit.
    const Rational amount = sum->in(units::currency_unit);
    return number(amount, money_places(amount, least_places), sheet_.currency.code(), "");
  }
  const auto& share = std::get<Rational>(value);
  if (form != FigureForm::factor) return percent_cell(share, std::max(2U, least_places));
  return figure(share, factor_text(share, least_places));
}

std::string FigureWriter::line(const WorkingStep& step, unsigned least_places) const {
  const std::string result = cell(step.form, step.value, least_places).text;
  if (step.terms.size() == 1) return result;
  std::string out;
  for (const Term& term : step.terms) {
    if (!out.empty()) out += sign_of(step.operation);
    out += cell(term.form, term.value).text;
  }
  return out + " = " + result;
}

}  // namespace platewright::card
