#include "card/sheets/worksheet_figures.hpp"

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

/// `1.316`, `0.7875`.
std::string factor_text(const Rational& factor) {
  return as_decimal(factor, exact_places(factor, 3).value_or(3));
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

Cell FigureWriter::number(const Rational& value, const std::string& unit,
                          const std::string& after) const {
  const unsigned minor = sheet_.currency.minor_digits();
  const unsigned places = exact_places(value, minor).value_or(value < 1 ? minor + 2 : minor);
  const std::string shown = as_decimal(value, places);
  return figure_as(with_thousands(shown) + after, value, shown, unit);
}

Cell FigureWriter::money(const Money& value) const {
  return number(value.in(units::currency_unit), sheet_.currency.code(), "");
}

Cell FigureWriter::price_in_column(const PricePerMass& value) const {
  const Money one = value * price_weight(sheet_.weights);
  return number(one.in(units::currency_unit), sheet_.currency.code(), "");
}

Cell FigureWriter::price(const PricePerMass& value) const {
  const std::string per = " per " + std::string(price_weight_name(sheet_.weights));
  const Money one = value * price_weight(sheet_.weights);
  return number(one.in(units::currency_unit), sheet_.currency.code() + per, per);
}

Cell FigureWriter::weight(FigureForm form, const Mass& value) const {
  const Rational count = value / price_weight(sheet_.weights);
  const std::string unit(price_weight_name(sheet_.weights));
  if (form == FigureForm::factor) {
    return figure_as(factor_text(count), count, factor_text(count), unit);
  }
  const bool pounds = sheet_.weights == WeighedIn::pounds;
  const std::string text = pounds ? pounds_text(count) : as_short_decimal(count, 4);
  return figure_as(text + " " + unit, count, as_short_decimal(count, 4), unit);
}

Cell FigureWriter::cell(FigureForm form, const Figure& value) const {
  if (const auto* mass = std::get_if<Mass>(&value)) return weight(form, *mass);
  if (const auto* sum = std::get_if<Money>(&value)) return money(*sum);
  if (const auto* by_weight = std::get_if<PricePerMass>(&value)) return price(*by_weight);
  const auto& share = std::get<Rational>(value);
  return form == FigureForm::factor ? figure(share, factor_text(share)) : percent_cell(share, 2);
}

std::string FigureWriter::line(const WorkingStep& step) const {
  std::string out;
  if (step.terms.size() == 1) return cell(step.form, step.value).text;
  for (const Term& term : step.terms) {
    if (!out.empty()) out += sign_of(step.operation);
    out += cell(term.form, term.value).text;
  }
  return out + " = " + cell(step.form, step.value).text;
}

}  // namespace platewright::card
