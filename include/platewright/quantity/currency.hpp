// SPDX-License-Identifier: MIT
#pragma once
// Currencies by their codes.

#include <algorithm>
#include <array>
#include <string>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/larders.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright {

/// Codes of the currencies that can be paid with (ISO 4217, list one, as Debian's iso-codes 4.15
/// has it; amendments 176 and 177 brought XCG and ZWG, from memory). Funds, metals and codes for
/// tests are left out.
inline constexpr std::array<std::string_view, 161> currency_codes{
    "AED", "AFN", "ALL", "AMD", "ANG", "AOA", "ARS", "AUD", "AWG", "AZN", "BAM", "BBD", "BDT",
    "BGN", "BHD", "BIF", "BMD", "BND", "BOB", "BRL", "BSD", "BTN", "BWP", "BYN", "BZD", "CAD",
    "CDF", "CHF", "CLP", "CNY", "COP", "CRC", "CUC", "CUP", "CVE", "CZK", "DJF", "DKK", "DOP",
    "DZD", "EGP", "ERN", "ETB", "EUR", "FJD", "FKP", "GBP", "GEL", "GHS", "GIP", "GMD", "GNF",
    "GTQ", "GYD", "HKD", "HNL", "HRK", "HTG", "HUF", "IDR", "ILS", "INR", "IQD", "IRR", "ISK",
    "JMD", "JOD", "JPY", "KES", "KGS", "KHR", "KMF", "KPW", "KRW", "KWD", "KYD", "KZT", "LAK",
    "LBP", "LKR", "LRD", "LSL", "LYD", "MAD", "MDL", "MGA", "MKD", "MMK", "MNT", "MOP", "MRU",
    "MUR", "MVR", "MWK", "MXN", "MYR", "MZN", "NAD", "NGN", "NIO", "NOK", "NPR", "NZD", "OMR",
    "PAB", "PEN", "PGK", "PHP", "PKR", "PLN", "PYG", "QAR", "RON", "RSD", "RUB", "RWF", "SAR",
    "SBD", "SCR", "SDG", "SEK", "SGD", "SHP", "SLE", "SLL", "SOS", "SRD", "SSP", "STN", "SVC",
    "SYP", "SZL", "THB", "TJS", "TMT", "TND", "TOP", "TRY", "TTD", "TWD", "TZS", "UAH", "UGX",
    "USD", "UYU", "UZS", "VED", "VES", "VND", "VUV", "WST", "XAF", "XCD", "XCG", "XOF", "XPF",
    "YER", "ZAR", "ZMW", "ZWG", "ZWL"};

namespace detail {

/// Decimals of a currency's minor unit (ISO 4217, list one); two where it is not named here.
unsigned minor_digits_of(std::string_view currency);

}  // namespace detail

/// True for the code of a currency that can be paid with.
inline bool is_currency(std::string_view code) {
  return std::find(currency_codes.begin(), currency_codes.end(), code) != currency_codes.end();
}

/// A currency that can be paid with: there is none of another code. Its decimals are those of
/// ISO 4217.
class Currency {
 public:
  /// Throws Failure for what is no currency's code, with the nearest ones.
  explicit Currency(std::string_view code)
      : code_(known(code)), minor_digits_(detail::minor_digits_of(code)) {}

  const std::string& code() const { return code_; }
  /// Decimals of its minor unit: 2 for USD, 0 for JPY.
  unsigned minor_digits() const { return minor_digits_; }
  /// Whose the code and the decimals are.
  static std::string_view source() { return "ISO 4217, list one"; }

  friend bool operator==(const Currency& left, const Currency& right) {
    return left.code_ == right.code_;
  }

 private:
  static std::string_view known(std::string_view code);

  std::string code_;
  unsigned minor_digits_;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/quantity/bodies/currency.hpp"
#endif
