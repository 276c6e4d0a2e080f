// SPDX-License-Identifier: MIT
#include <nlohmann/json.hpp>
#include <string>

#include "card/arrays.hpp"
#include "platewright/card/writers.hpp"
#include "platewright/number/write.hpp"
#include "platewright/problem/text.hpp"

namespace platewright {

namespace {

using Json = nlohmann::ordered_json;

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

/// The text of a JSON document with every sign that nobody sees as an escape. Such signs stand
/// nowhere but inside strings, where `\\u202E` means the same.
std::string with_unseen_escaped(const std::string& text) {
  std::string out;
  const auto add_unit = [&out](char32_t unit) {
    out += "\\u";
    for (int shift = 12; shift >= 0; shift -= 4) out += "0123456789abcdef"[(unit >> shift) & 0xFU];
  };
  for (std::size_t i = 0; i < text.size();) {
    const Character character = character_at(text, i);
    const std::size_t length = std::max<std::size_t>(character.length, 1);
    const char32_t code = character.code;
    if (code < 0x20 || !is_unseen_control(code)) {
      out += text.substr(i, length);
    } else if (code <= 0xFFFF) {
      add_unit(code);
    } else {
      // Two units of UTF-16, as RFC 8259, section 7, wants them.
      add_unit(0xD800 + ((code - 0x10000) >> 10U));
      add_unit(0xDC00 + ((code - 0x10000) & 0x3FFU));
    }
    i += length;
  }
  return out;
}

}  // namespace

std::string write_json(const Sheet& sheet, const std::string& only) {
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
  return with_unseen_escaped(out.dump(2, ' ', false, Json::error_handler_t::replace)) + "\n";
}

}  // namespace platewright
