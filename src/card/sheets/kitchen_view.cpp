// SPDX-License-Identifier: MIT
#include "platewright/card/kitchen_view.hpp"

#include "platewright/card/number_text.hpp"
#include "platewright/kitchen/measure_text.hpp"

namespace platewright {
namespace {

std::string_view system_title(MeasuringSystem system) {
  switch (system) {
    case MeasuringSystem::us:
      return "US customary";
    case MeasuringSystem::imperial:
      return "imperial";
    case MeasuringSystem::australian:
      return "Australian metric";
    case MeasuringSystem::japanese:
      return "Japanese metric";
    case MeasuringSystem::metric:
    case MeasuringSystem::labelling:
    case MeasuringSystem::any:
      break;
  }
  return "metric";
}

/// `2 tbsp to 3 tbsp`; no range where a kitchen measures both ends alike, each with its own error.
void add_upper_end(Cell& cell, const Cell& high) {
  const auto measured = [](const Cell& end) { return end.text.substr(0, end.text.find(" (")); };
  if (measured(high) != measured(cell)) cell.text += " to " + high.text;
}

}  // namespace

std::string KitchenView::described() const {
  std::string out(system_title(kitchen_.system));
  const bool has_pints =
      kitchen_.system == MeasuringSystem::us || kitchen_.system == MeasuringSystem::imperial;
  out += has_pints ? " cups, spoons and pints; " : " cups and spoons; ";
  if (kitchen_.rounding.policy) out += rounding_text(kitchen_.rounding);
  if (kitchen_.rounding.measures) return out;
  if (kitchen_.rounding.policy) out += ", capacities in ";
  return out + "the fewest measures within " + percent_text(kitchen_.tolerance);
}

/// The error in brackets where it is more than the tolerance.
std::string KitchenView::with_error(const std::string& text, const Rational& error) const {
  if (error <= kitchen_.tolerance && -error <= kitchen_.tolerance) return text;
  return text + " (" + signed_percent_text(error) + ")";
}

/// Whole pieces from three on, halves below; a part of a piece that would vanish stays a half.
std::string KitchenView::pieces_text(const Amount& amount) const {
  const Rational step = amount.number < 3 ? fraction(1, 2) : Rational(1);
  Rational shown = half_up(amount.number, step);
  if (shown == 0 && amount.number > 0) shown = step;
  std::string text = as_mixed(shown);
  if (amount.unit.name() != "each") text += " " + amount.unit.symbol_for(shown);
  return amount.number == 0 ? text : with_error(text, (shown - amount.number) / amount.number);
}

std::string KitchenView::capacity(const Volume& volume) const {
  return kitchen_measure_text(measured_in(volume, kitchen_));
}

std::string KitchenView::level(const Volume& volume) const {
  const Volume one = kitchen_.system == MeasuringSystem::us ? Volume::of(1, units::us_quart)
                     : kitchen_.system == MeasuringSystem::imperial
                         ? Volume::of(1, units::imperial_quart)
                         : Volume::of(1, units::litre);
  const bool litres = one == Volume::of(1, units::litre);
  return as_short_decimal(volume / one, 1) + (litres ? " L" : " qt");
}

Cell KitchenView::weight(const Mass& mass, Rounding rounding) const {
  return figure_as(kitchen_parts_text(weighed_in(mass, kitchen_, rounding)), mass.in(units::gram),
                   as_short_decimal(mass.in(units::gram), 1, rounding), "g");
}

Cell KitchenView::measure(const Amount& amount) const {
  const std::string shown = as_short_decimal(amount.number, 3);
  std::string text;
  switch (amount.dimension()) {
    case UnitDimension::volume:
      text = capacity(to_volume(amount));
      break;
    case UnitDimension::mass: {
      const KitchenMeasure weighed = weighed_in(to_mass(amount), kitchen_);
      text = with_error(kitchen_parts_text(weighed), weighed.error());
      break;
    }
    case UnitDimension::pieces:
      text = pieces_text(amount);
      break;
    case UnitDimension::length:
      text = kitchen_parts_text(cut_in(to_length(amount), kitchen_));
      break;
    case UnitDimension::area:
    case UnitDimension::time:
      text = as_short_decimal(amount.number, 1) + " " + amount.unit.symbol_for(amount.number);
      break;
  }
  return figure_as(text, amount.number, shown, amount.unit.name());
}

Cell KitchenView::measure(const LineAmount& amount) const {
  if (!amount.low()) return words("to taste");
  Cell cell = measure(*amount.low());
  if (amount.high()) add_upper_end(cell, measure(*amount.high()));
  return cell;
}

Cell KitchenView::weight_of(const LineAmount& amount, const IngredientWeights& weights) const {
  if (!amount.low() || !can_be_weighed(amount.low()->unit)) return {};
  try {
    const Mass mass = platewright::weight_of(*amount.low(), weights);
    // A few leaves weigh less than the scale shows: the count stands alone.
    if (amount.low()->dimension() != UnitDimension::mass) {
      const Rational error = weighed_in(mass, kitchen_).error();
      if (error > fraction(1, 10) || -error > fraction(1, 10)) return {};
    }
    Cell cell = weight(mass, Rounding::half_up);
    if (amount.high()) {
      add_upper_end(cell,
                    weight(platewright::weight_of(*amount.high(), weights), Rounding::half_up));
    }
    return cell;
  } catch (const Failure&) {
    return {};  // what it weighs is not known: the measure stands alone
  }
}

}  // namespace platewright
