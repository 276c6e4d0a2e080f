// SPDX-License-Identifier: MIT
#include "workbook/cell_text.hpp"

#include <cstddef>

#include "platewright/problem/catalogue/workbooks.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/problem/utf8.hpp"

namespace platewright {

std::string cell_text(std::string_view text) {
  constexpr std::size_t most = 32767;
  std::string out;
  std::size_t signs = 0;
  for (std::size_t i = 0; i < text.size(); ++signs) {
    const Character character = character_at(text, i);
    const bool whole = character.length > 0 && character.code != 0;
    out += whole ? text.substr(i, character.length) : std::string_view("\uFFFD");
    i += character.length == 0 ? 1 : character.length;
    // Signs beyond the first plane count twice where a spreadsheet counts.
    if (character.code > 0xFFFF) ++signs;
  }
  if (signs > most) throw Failure(problems::workbook_text_too_long(text, most));
  return out;
}

}  // namespace platewright
