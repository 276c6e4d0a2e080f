// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/quantity/currency.hpp.

#include "platewright/quantity/currency.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY unsigned minor_digits_of(std::string_view currency) {
  for (const std::string_view code : {"BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG",
                                      "RWF", "UGX", "VND", "VUV", "XAF", "XOF", "XPF"}) {
    if (code == currency) return 0;
  }
  for (const std::string_view code : {"BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"}) {
    if (code == currency) return 3;
  }
  return 2;
}

}  // namespace detail

PLATEWRIGHT_BODY std::string_view Currency::known(std::string_view code) {
  if (is_currency(code)) return code;
  throw Failure(problems::currency_malformed(
      code, std::vector<std::string>(currency_codes.begin(), currency_codes.end())));
}

}  // namespace platewright
