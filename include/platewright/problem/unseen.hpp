// SPDX-License-Identifier: MIT
#pragma once
// Signs that show nothing by themselves, and so can make two names that look the same.

#include <algorithm>
#include <iterator>

namespace platewright {

namespace detail {

struct CodeRange {
  char32_t first;
  char32_t last;
};

/// Default_Ignorable_Code_Point of the Unicode Character Database 15, DerivedCoreProperties.txt.
inline constexpr CodeRange default_ignorable[] = {
    {0x00AD, 0x00AD},   {0x034F, 0x034F},   {0x061C, 0x061C}, {0x115F, 0x1160}, {0x17B4, 0x17B5},
    {0x180B, 0x180F},   {0x200B, 0x200F},   {0x202A, 0x202E}, {0x2060, 0x206F}, {0x3164, 0x3164},
    {0xFE00, 0xFE0F},   {0xFEFF, 0xFEFF},   {0xFFA0, 0xFFA0}, {0xFFF0, 0xFFF8}, {0x1BCA0, 0x1BCA3},
    {0x1D173, 0x1D17A}, {0xE0000, 0xE0FFF},
};

}  // namespace detail

/// True for signs that Unicode wants shown as nothing where they are not understood: zero-width
/// spaces, marks of the reading direction, soft hyphens, variation selectors, tags.
inline bool is_default_ignorable(char32_t code) {
  return std::any_of(
      std::begin(detail::default_ignorable), std::end(detail::default_ignorable),
      [code](const detail::CodeRange& range) { return code >= range.first && code <= range.last; });
}

/// True for the two joiners (U+200C, U+200D), which Persian and the scripts of India spell with.
inline bool is_joiner(char32_t code) {
  return code == 0x200C || code == 0x200D;
}

/// True for control characters and for what parts lines and paragraphs.
inline bool is_control(char32_t code) {
  return code < 0x20 || (code >= 0x7F && code <= 0x9F) || code == 0x2028 || code == 0x2029;
}

/// True for signs that show nothing and change how the text around them is read or compared.
/// Joiners and variation selectors, which only shape the sign before them, are left.
inline bool is_unseen_control(char32_t code) {
  const bool shapes =
      is_joiner(code) || (code >= 0xFE00 && code <= 0xFE0F) || (code >= 0xE0100 && code <= 0xE01EF);
  return is_control(code) || (is_default_ignorable(code) && !shapes);
}

}  // namespace platewright
