// SPDX-License-Identifier: MIT
#pragma once
// Cells that several sheets share.

#include <string>
#include <vector>

#include "platewright/card/figures.hpp"
#include "platewright/costing/price_list.hpp"
#include "platewright/costing/unit_price.hpp"
#include "platewright/event/event.hpp"
#include "platewright/number/apportion.hpp"

namespace platewright::card {

inline Rational plain(const Money& money) {
  return money.in(units::currency_unit);
}

/// The amount as a decimal with its unit's symbol: `3.5 lb`.
inline Cell amount_cell(const Amount& amount, Rounding rounding, unsigned places = 2) {
  const std::string shown = as_short_decimal(amount.number, places, rounding);
  return figure_as(shown + " " + amount.unit.symbol_for(amount.number), amount.number, shown,
                   amount.unit.name());
}

/// A price in the currency's minor unit, with more decimals where it would be off by more than half
/// a per cent: `8.95`, `0.0031`.
inline std::string unit_price_digits(const Rational& price, unsigned minor_digits) {
  unsigned places = minor_digits;
  const auto off = [&] {
    const Rational step = Rational(1) / power_of_ten(places);
    const Rational error = half_up(price, step) - price;
    return (error < 0 ? Rational(-error) : error) * 200 > price;
  };
  while (price > 0 && off()) ++places;
  return as_decimal(price, places);
}

/// A price that is worked out, for one unit: `8.95/lb`.
inline Cell unit_price_cell(const UnitPrice& price, const std::string& shown,
                            const PriceList& prices) {
  return figure_as(shown + "/" + price.unit.record().symbol, plain(price.price), shown,
                   prices.currency.code() + " per " + price.unit.name());
}

inline Cell unit_price_cell(const UnitPrice& price, const PriceList& prices) {
  const unsigned minor = prices.currency.minor_digits();
  return unit_price_cell(price, unit_price_digits(plain(price.price), minor), prices);
}

/// A price that is paid, exactly where two more places than the minor unit's say it, as an invoice
/// does: `2.385/lb`.
inline Cell paid_price_cell(const UnitPrice& price, const PriceList& prices) {
  const Rational value = plain(price.price);
  const auto places = exact_places(value, prices.currency.minor_digits());
  return places ? unit_price_cell(price, as_decimal(value, *places), prices)
                : unit_price_cell(price, prices);
}

/// Cells of money whose rounded figures sum to the rounded total exactly; `exact` stays exact.
inline std::vector<Cell> apportioned_cells(const std::vector<Money>& lines,
                                           const PriceList& prices) {
  std::vector<Rational> exact;
  for (const Money& line : lines) exact.push_back(plain(line));
  const Rational step = Rational(1) / power_of_ten(prices.currency.minor_digits());
  const std::vector<Rational> rounded = apportion(exact, step);
  std::vector<Cell> out;
  for (std::size_t i = 0; i < exact.size(); ++i) {
    out.push_back(figure_as(money_text(rounded[i], prices.currency), exact[i],
                            as_decimal(rounded[i], prices.currency.minor_digits()),
                            prices.currency.code()));
  }
  return out;
}

/// `at 1 EUR = 1.085 USD (our bank, 2027-09-01)`.
inline std::string rate_text(const ForeignCurrency& foreign, const PriceList& prices) {
  const std::string out = "at 1 " + foreign.currency.code() + " = " + as_exact(foreign.rate) + " " +
                          prices.currency.code();
  return foreign.source.empty() ? out : out + " (" + foreign.source + ")";
}

inline Cell money(const Money& value, const PriceList& prices) {
  return bare_money_cell(plain(value), prices.currency);
}

/// `70 adults, 10 children, 4 crew`.
inline std::string guests_text(const Event& event) {
  std::string out;
  for (const GuestKind& kind : event.guests) {
    out += (out.empty() ? "" : ", ") + as_exact(kind.count) + " " + kind.name;
  }
  return out;
}

/// `served Sat 2027-10-09 at 18:30 America/Chicago`, or nothing.
inline std::string served_text(const Event& event) {
  if (!event.at) return {};
  const LocalTime& local = event.at->local();
  const std::string zone = event.at->zone().name();
  return "served " + weekday_text(local) + " " + date_text(local) + " at " + clock_text(local) +
         (zone.empty() ? "" : " " + zone);
}

}  // namespace platewright::card
