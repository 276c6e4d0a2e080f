#pragma once
// What everything costs, by the name of the ingredient.

#include <map>
#include <string>

#include "platewright/costing/purchase.hpp"

namespace platewright {

struct PriceList {
  std::string currency = "USD";  ///< ISO 4217 code
  unsigned minor_digits = 2;     ///< decimals of the currency's minor unit (ISO 4217)
  std::map<std::string, PriceEntry> entries;
  /// By supplier, the least that an order must come to.
  std::map<std::string, Money> minimum_orders = {};
  /// By code, the currencies that prices may be written in beside the list's own.
  std::map<std::string, ForeignCurrency> exchange_rates = {};

  const PriceEntry* find(const std::string& ingredient) const {
    const auto found = entries.find(ingredient);
    return found == entries.end() ? nullptr : &found->second;
  }
};

}  // namespace platewright
