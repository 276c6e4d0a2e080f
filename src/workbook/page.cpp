// SPDX-License-Identifier: MIT
#include "workbook/page.hpp"

namespace platewright::pages {
namespace {

/// `F12`.
std::string cell_name(const CellPlace& place) {
  std::string letters;
  for (unsigned left = place.column + 1; left > 0; left = (left - 1) / 26) {
    letters.insert(letters.begin(), static_cast<char>('A' + (left - 1) % 26));
  }
  return letters + std::to_string(place.row + 1);
}

}  // namespace

void Page::begin(std::string title, const std::vector<std::string>& notes) {
  words(0, std::move(title), CellLook::title);
  next();
  for (const std::string& note : notes) {
    words(0, note, CellLook::note);
    next();
  }
  next();
}

void Page::headings(const std::vector<std::string>& texts) {
  for (std::size_t i = 0; i < texts.size(); ++i) {
    if (!texts[i].empty()) words(static_cast<unsigned>(i), texts[i], CellLook::heading);
  }
  next();
}

std::string Page::at(const CellPlace& place) const {
  return (place.sheet == sheet_.name ? "" : place.sheet + "!") + cell_name(place);
}

std::string Page::range(const CellPlace& first, const CellPlace& last) const {
  return at(first) + ":" + cell_name(last);
}

}  // namespace platewright::pages
