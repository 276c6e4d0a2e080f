#pragma once
// Currencies by their codes.

#include <algorithm>
#include <string_view>

#include "platewright/problem/catalogue/larders.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright {

/// Decimals of a currency's minor unit (ISO 4217, list one); two where it is not named here.
inline unsigned minor_digits_of(std::string_view currency) {
  for (const std::string_view code : {"BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG",
                                      "RWF", "UGX", "UYI", "VND", "VUV", "XAF", "XOF", "XPF"}) {
    if (code == currency) return 0;
  }
  for (const std::string_view code : {"BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"}) {
    if (code == currency) return 3;
  }
  return 2;
}

/// Throws Failure for what is not a code of ISO 4217 by its form: three capital letters.
inline void check_currency(std::string_view code) {
  const bool capitals =
      std::all_of(code.begin(), code.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
  if (code.size() != 3 || !capitals) throw Failure(problems::currency_malformed(code));
}

}  // namespace platewright
