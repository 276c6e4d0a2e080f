// SPDX-License-Identifier: MIT
#include <array>
#include <cstddef>

#include "platewright/card/display.hpp"
#include "platewright/number/read.hpp"
#include "platewright/problem/utf8.hpp"

namespace platewright {

namespace {

struct Replacement {
  char32_t sign;
  std::string_view ascii;
};

constexpr std::array<Replacement, 27> replacements{{
    {0x00A7, "section "}, {0x00B1, "+/-"}, {0x00B7, "*"}, {0x00D7, "x"},  {0x00F7, "/"},
    {0x2010, "-"},        {0x2011, "-"},   {0x2012, "-"}, {0x2013, "-"},  {0x2014, "-"},
    {0x2015, "-"},        {0x2018, "'"},   {0x2019, "'"}, {0x201C, "\""}, {0x201D, "\""},
    {0x2022, "*"},        {0x2026, "..."}, {0x2032, "'"}, {0x2033, "\""}, {0x2044, "/"},
    {0x2190, "<-"},       {0x2192, "->"},  {0x2212, "-"}, {0x2248, "~"},  {0x2260, "!="},
    {0x2264, "<="},       {0x2265, ">="},
}};

/// The ASCII form of the sign at the start of `rest`, what stands before it being `before`.
std::optional<std::string> ascii_form(std::string_view rest, const Character& character,
                                      const std::string& before) {
  if (character.code == 0x00B0) {
    const std::string_view scale = rest.substr(character.length, 1);
    return scale == "F" || scale == "C" ? "" : " deg";
  }
  for (const Replacement& replacement : replacements) {
    if (replacement.sign == character.code) return std::string(replacement.ascii);
  }
  for (const FractionSign& sign : fraction_signs) {
    if (rest.starts_with(sign.text)) {
      const bool mixed = !before.empty() && is_digit(before.back());
      return (mixed ? " " : "") + std::to_string(sign.numerator) + "/" +
             std::to_string(sign.denominator);
    }
  }
  return std::nullopt;
}

}  // namespace

std::string in_ascii_signs(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size();) {
    const Character character = character_at(text, i);
    const std::size_t length = character.length == 0 ? 1 : character.length;
    if (const auto ascii = ascii_form(text.substr(i), character, out)) {
      out += *ascii;
    } else {
      out += text.substr(i, length);
    }
    i += length;
  }
  return out;
}

}  // namespace platewright
