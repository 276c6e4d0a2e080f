// SPDX-License-Identifier: MIT
#include "workbook/rounding_formulas.hpp"

#include "platewright/costing/round_money.hpp"
#include "platewright/number/apportion.hpp"

namespace platewright::pages {
namespace {

/// `100`: minor units in one of the currency; empty where it has none.
std::string minor_units(const Currency& currency) {
  return currency.minor_digits() == 0 ? "" : as_exact(power_of_ten(currency.minor_digits()));
}

/// `ROUND(F5*100,6)`: in minor units, without what binary fractions add.
std::string in_minor_units(const std::string& sum, const Currency& currency) {
  const std::string units = minor_units(currency);
  return "ROUND(" + sum + (units.empty() ? "" : "*" + units) + ",6)";
}

/// `(...)/100`.
std::string from_minor_units(const std::string& count, const Currency& currency) {
  const std::string units = minor_units(currency);
  return units.empty() ? count : "(" + count + ")/" + units;
}

/// The lines' cells of one column.
struct Lines {
  CellPlace first;
  CellPlace last;
};

/// The minor units that are left once every line is rounded down, for the formulas of the lines.
CellPlace write_left_over(Page& page, const Lines& exact, const std::vector<Rational>& costs,
                          unsigned column, const Currency& currency) {
  const std::string lines = page.range(exact.first, exact.last);
  const Rational units = power_of_ten(currency.minor_digits());
  Rational total;
  Rational given;
  for (const Rational& cost : costs) {
    total += cost * units;
    given += down_to(cost * units, 1);
  }
  return page.formula(column,
                      "INT(" + in_minor_units("SUM(" + lines + ")", currency) +
                          "+0.5)-SUMPRODUCT(INT(" + in_minor_units(lines, currency) + "))",
                      half_up(total, 1) - given, CellLook::number);
}

/// `G5` among `G5:G12`, the earlier line first where two are equal, counted from 1.
std::string place_among(const Page& page, const CellPlace& own, const Lines& all) {
  return "RANK(" + page.at(own) + "," + page.range(all.first, all.last) + ")+COUNTIF(" +
         page.range(all.first, own) + "," + page.at(own) + ")-1";
}

}  // namespace

std::string half_up_formula(const std::string& sum, const Currency& currency) {
  const std::string units = minor_units(currency);
  const std::string whole = "INT(" + in_minor_units(sum, currency) + "+0.5)";
  return units.empty() ? whole : whole + "/" + units;
}

std::string down_formula(const std::string& sum, const Currency& currency) {
  const std::string units = minor_units(currency);
  const std::string whole = "INT(" + in_minor_units(sum, currency) + ")";
  return units.empty() ? whole : whole + "/" + units;
}

std::string whole_up_formula(const std::string& number) {
  return "ROUNDUP(ROUND(" + number + ",9),0)";
}

std::string up_to_formula(const std::string& sum, const std::string& step) {
  return whole_up_formula(sum + "/" + step) + "*" + step;
}

CellPlace round_lines(Page& page, unsigned first, const std::vector<std::optional<Money>>& costs,
                      const RoundedColumns& columns, const Currency& currency) {
  const unsigned below = page.row();
  std::vector<Rational> exact;
  Money total;
  for (const std::optional<Money>& cost : costs) {
    exact.push_back(plain(cost.value_or(Money())));
    total += cost.value_or(Money());
  }
  const CellPlace at_first = page.here(0);
  const auto lines_of = [&](unsigned column) {
    return Lines{{at_first.sheet, first, column}, {at_first.sheet, below - 1, column}};
  };
  const Lines all = lines_of(columns.exact);
  page.formula(columns.exact, "SUM(" + page.range(all.first, all.last) + ")", total,
               CellLook::price, CellRole::total);
  const CellPlace sum = page.here(columns.exact);
  const CellPlace out = page.formula(columns.rounded, half_up_formula(page.at(sum), currency),
                                     round_money(total, minor_unit(currency), Rounding::half_up),
                                     CellLook::money, CellRole::total);
  const CellPlace left = write_left_over(page, all, exact, columns.remainder, currency);
  const Rational units = power_of_ten(currency.minor_digits());
  const std::vector<Rational> rounded = apportion(exact, Rational(1) / units);
  for (std::size_t i = 0; i < exact.size(); ++i) {
    if (!costs[i]) continue;
    page.go_to(first + static_cast<unsigned>(i));
    const std::string in_units = in_minor_units(page.at(page.here(columns.exact)), currency);
    const Rational loss = exact[i] * units - down_to(exact[i] * units, 1);
    const CellPlace own =
        page.formula(columns.remainder, "ROUND(" + in_units + "-INT(" + in_units + "),6)", loss,
                     CellLook::number);
    const std::string place = place_among(page, own, lines_of(columns.remainder));
    page.formula(
        columns.rounded,
        from_minor_units("INT(" + in_units + ")+IF(" + place + "<=" + page.at(left) + ",1,0)",
                         currency),
        rounded[i], CellLook::money);
  }
  page.go_to(below);
  return out;
}

}  // namespace platewright::pages
