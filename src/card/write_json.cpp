// SPDX-License-Identifier: MIT
#include <nlohmann/json.hpp>
#include <string>

#include "card/arrays.hpp"
#include "card/json_document.hpp"
#include "card/sheet_json.hpp"
#include "platewright/card/writers.hpp"
#include "platewright/number/write.hpp"

namespace platewright {

namespace {

std::string digits_of(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c >= '0' && c <= '9') out += c;
  }
  return out;
}

/// An empty cell is null, words are a string, a figure is an object. What a page prints for it is
/// there where that is another number (`1/2 cup + 3 tbsp`), not where it has marks of a page alone.
Json json_of(const Cell& cell) {
  if (!cell.exact) return cell.text.empty() ? Json() : Json(cell.text);
  Json out{{"exact", as_exact(*cell.exact)}, {"shown", cell.shown}};
  if (!cell.unit.empty()) out["unit"] = cell.unit;
  if (digits_of(cell.text) != digits_of(cell.shown)) out["text"] = cell.text;
  return out;
}

/// Every key of the array in every row, so that all of them have one shape.
Json json_of(const detail::Array& array) {
  std::vector<bool> cited(array.keys.size());
  for (const Row& row : array.rows) {
    for (std::size_t i = 0; i < row.size(); ++i) cited[i] = cited[i] || row[i].footnote != 0;
  }
  Json out = Json::array();
  for (const Row& row : array.rows) {
    Json fields = Json::object();
    for (std::size_t i = 0; i < array.keys.size(); ++i) {
      const Cell cell = i < row.size() ? row[i] : Cell{};
      fields[array.keys[i]] = json_of(cell);
      if (!cited[i]) continue;
      fields[array.keys[i] + "_source"] = cell.footnote == 0 ? Json() : Json(cell.footnote);
    }
    out.push_back(std::move(fields));
  }
  return out;
}

}  // namespace

Json json_of_sheet(const Sheet& sheet, const std::string& only) {
  Json out{{"version", json_version}, {"sheet", name_of(sheet.kind)}, {"title", sheet.title}};
  if (!sheet.date.empty()) out["date"] = sheet.date;
  if (!sheet.subtitles.empty()) out["subtitles"] = sheet.subtitles;
  Json arrays = Json::object();
  Json titles = Json::object();
  for (const detail::Array& array : detail::arrays_of(sheet)) {
    if (!only.empty() && array.name != only) continue;
    arrays[array.name] = json_of(array);
    if (!array.title.empty()) titles[array.name] = array.title;
  }
  out["arrays"] = std::move(arrays);
  out["titles"] = std::move(titles);
  out["sources"] = sheet.footnotes;
  return out;
}

std::string write_json(const Sheet& sheet, const std::string& only) {
  return json_document(json_of_sheet(sheet, only));
}

}  // namespace platewright
