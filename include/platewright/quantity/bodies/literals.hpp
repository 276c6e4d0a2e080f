// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/quantity/literals.hpp.

#include <string>

#include "platewright/quantity/literals.hpp"

namespace platewright::literals {

namespace detail {

PLATEWRIGHT_BODY Rational digits_of(const char* literal) {
  std::string digits;
  for (; *literal != '\0'; ++literal) {
    if (*literal != '\'') digits += *literal;
  }
  return read_number(digits);
}

}  // namespace detail

}  // namespace platewright::literals
