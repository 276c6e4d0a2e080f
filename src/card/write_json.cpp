#include <algorithm>
#include <nlohmann/json.hpp>
#include <string>
#include <variant>

#include "platewright/card/writers.hpp"
#include "platewright/number/write.hpp"
#include "platewright/problem/text.hpp"

namespace platewright {

namespace {

using Json = nlohmann::ordered_json;

/// Puts a value under `key`, or under `key_2` and so on where the key is taken, so that a sheet
/// whose builder gave a key twice loses nothing.
Json& put(Json& object, const std::string& key, Json value) {
  std::string free = key;
  for (int i = 2; object.contains(free); ++i) free = key + "_" + std::to_string(i);
  return object[free] = std::move(value);
}

/// An empty cell is null, words are a string, a figure is an object.
Json json_of(const Cell& cell) {
  if (!cell.exact) return cell.text.empty() ? Json() : Json(cell.text);
  Json out{{"exact", as_exact(*cell.exact)}, {"shown", cell.shown}};
  if (!cell.unit.empty()) out["unit"] = cell.unit;
  if (cell.text != cell.shown && cell.text != cell.shown + " " + cell.unit) out["text"] = cell.text;
  return out;
}

/// The cell under its key, and the number of its source under `<key>_source`.
void put_cell(Json& object, const std::string& key, const Cell& cell) {
  put(object, key, json_of(cell));
  if (cell.footnote != 0) put(object, key + "_source", cell.footnote);
}

Json json_of(const Table& table, const Row& row, const std::string& group = "") {
  Json out = Json::object();
  if (!group.empty()) out["group"] = group;
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    put_cell(out, table.columns[i].key, i < row.size() ? row[i] : Cell{});
  }
  return out;
}

Json titled(const std::string& title) {
  Json out = Json::object();
  if (!title.empty()) out["title"] = title;
  return out;
}

Json json_of(const Table& table) {
  Json out = titled(table.title);
  out["rows"] = Json::array();
  for (const RowGroup& group : table.groups) {
    for (const Row& row : group.rows) out["rows"].push_back(json_of(table, row, group.title));
  }
  for (const Row& row : table.totals) out["totals"].push_back(json_of(table, row));
  if (!table.notes.empty()) out["notes"] = table.notes;
  return out;
}

Json json_of(const Facts& facts) {
  Json out = titled(facts.title);
  out["facts"] = Json::object();
  for (const Fact& fact : facts.facts) put_cell(out["facts"], fact.key, fact.value);
  return out;
}

Json json_of(const Paragraphs& paragraphs) {
  Json out = titled(paragraphs.title);
  out["texts"] = paragraphs.texts;
  return out;
}

Json json_of(const Steps& steps) {
  Json out = titled(steps.title);
  out["steps"] = Json::array();
  for (const Step& step : steps.steps) {
    Json one{{"number", out["steps"].size() + 1}, {"text", step.text}};
    put_cell(one, "takes", step.takes);
    one["uses"] = Json::array();
    for (const StepLine& line : step.lines) {
      Json use{{"text", line.text}};
      put_cell(use, "amount", line.amount);
      if (!line.beside.text.empty()) put_cell(use, steps.beside, line.beside);
      one["uses"].push_back(std::move(use));
    }
    out["steps"].push_back(std::move(one));
  }
  return out;
}

Json json_of(const Box& box) {
  Json out = titled(box.title);
  out["lines"] = box.lines;
  return out;
}

Json json_of(const Bars& bars) {
  Json out = titled(bars.title);
  out["bars"] = Json::array();
  for (const Bar& bar : bars.bars) {
    Json one{{"key", bar.key}, {"label", bar.label}, {"share", as_exact(bar.share)}};
    put_cell(one, "value", bar.value);
    out["bars"].push_back(std::move(one));
  }
  return out;
}

Json json_of(const Signatures& signatures) {
  return Json{{"labels", signatures.labels}};
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

Json json_of(const Part& part) {
  Json out = titled(part.title);
  out["sections"] = Json::object();
  return out;
}

}  // namespace

std::string write_json(const Sheet& sheet) {
  Json out{{"sheet", name_of(sheet.kind)}, {"title", sheet.title}};
  if (!sheet.date.empty()) out["date"] = sheet.date;
  if (!sheet.subtitles.empty()) out["subtitles"] = sheet.subtitles;
  Json sections = Json::object();
  std::string part_key;
  Json part;
  const auto close_part = [&] {
    if (!part.is_null()) put(sections, part_key, std::move(part));
    part = Json();
  };
  for (const Block& block : sheet.blocks) {
    std::visit(
        [&](const auto& one) {
          Json written = json_of(one);
          if (std::holds_alternative<Part>(block)) {
            close_part();
            part_key = one.key;
            part = std::move(written);
          } else {
            put(part.is_null() ? sections : part["sections"], one.key, std::move(written));
          }
        },
        block);
  }
  close_part();
  out["sections"] = std::move(sections);
  if (!sheet.footnotes.empty()) out["sources"] = sheet.footnotes;
  return with_unseen_escaped(out.dump(2, ' ', false, Json::error_handler_t::replace)) + "\n";
}

}  // namespace platewright
