// SPDX-License-Identifier: MIT
#include <cstddef>
#include <string>
#include <string_view>
#include <variant>

#include "platewright/card/display.hpp"
#include "platewright/card/writers.hpp"

namespace platewright {

namespace {

/// True where the sign at `i` would turn the line into a list item, a heading or a rule.
bool begins_a_block(std::string_view line, std::size_t i) {
  if (line[i] != '.' && line[i] != ')') {
    return i == 0 && std::string_view("#+-=").find(line[i]) != std::string_view::npos;
  }
  const bool ends_a_word = i + 1 == line.size() || line[i + 1] == ' ';
  return i > 0 && ends_a_word &&
         line.substr(0, i).find_first_not_of("0123456789") == std::string_view::npos;
}

/// Data on one line, with everything escaped that Markdown gives a meaning to.
std::string plain(std::string_view data) {
  constexpr std::string_view meaningful = "\\`*_{}[]<>|~&$";
  std::string line = on_one_line(data);
  line.erase(0, line.find_first_not_of(' '));
  std::string out;
  for (std::size_t i = 0; i < line.size(); ++i) {
    if (meaningful.find(line[i]) != std::string_view::npos || begins_a_block(line, i)) out += '\\';
    out += line[i];
  }
  return out;
}

std::string plain(const Cell& cell) {
  std::string out = plain(cell.text);
  if (cell.footnote != 0) out += " \\[" + std::to_string(cell.footnote) + "\\]";
  return out;
}

std::string heading(const std::string& title, int level) {
  if (title.empty()) return "";
  return std::string(static_cast<std::size_t>(level), '#') + " " + plain(title) + "\n\n";
}

std::string table_row(const Table& table, const Row& row, std::string_view around = "") {
  std::string out = "|";
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    const std::string text = i < row.size() ? plain(row[i]) : "";
    out += text.empty() ? "  |" : " " + std::string(around) + text + std::string(around) + " |";
  }
  return out + "\n";
}

std::string markdown(const Table& whole) {
  const Table table = for_a_page(whole);
  std::string out = heading(table.title, 3) + "|";
  for (const Column& column : table.columns) out += " " + plain(column.heading) + " |";
  out += "\n|";
  for (const Column& column : table.columns) {
    out += column.kind == ColumnKind::figures ? " ---: |" : " --- |";
  }
  out += "\n";
  for (const RowGroup& group : table.groups) {
    if (!group.title.empty()) out += table_row(table, {words(group.title)}, "**");
    for (const Row& row : group.rows) out += table_row(table, row);
  }
  for (const Row& row : table.totals) out += table_row(table, row, "**");
  for (const std::string& note : table.notes) out += "\n" + plain(note) + "\n";
  return out + "\n";
}

std::string bullet(const std::string& label, const Cell& value) {
  return "- **" + plain(label) + "** " + plain(value);
}

std::string markdown(const Facts& facts) {
  std::string out = heading(facts.title, 3);
  for (const Fact& fact : facts.facts) out += bullet(fact.label, fact.value) + "\n";
  return out + "\n";
}

std::string markdown(const Paragraphs& paragraphs) {
  std::string out = heading(paragraphs.title, 3);
  for (const std::string& text : paragraphs.texts) out += plain(text) + "\n\n";
  return out;
}

std::string markdown(const Steps& steps) {
  std::string out = heading(steps.title, 3);
  int number = 0;
  for (const Step& step : steps.steps) {
    const std::string mark = std::to_string(++number) + ". ";
    out += mark + plain(step.text);
    if (!step.takes.text.empty()) out += " (" + plain(step.takes) + ")";
    out += "\n";
    for (const StepLine& line : step.lines) {
      std::string amount = plain(line.amount);
      if (!line.beside.text.empty()) amount += " (" + plain(line.beside) + ")";
      out += std::string(mark.size(), ' ') + "- " + amount + (amount.empty() ? "" : " ") +
             plain(line.text) + "\n";
    }
  }
  return out + "\n";
}

std::string markdown(const Box& box) {
  std::string out;
  if (!box.title.empty()) out += "> **" + plain(box.title) + "**\n>\n";
  bool first = true;
  for (const std::string& line : box.lines) {
    if (!first) out += ">\n";
    out += "> " + plain(line) + "\n";
    first = false;
  }
  return out + "\n";
}

std::string markdown(const Bars& bars) {
  std::string out = heading(bars.title, 3);
  for (const Bar& bar : bars.bars) {
    const std::string share = plain(bar.share_text);
    out += bullet(bar.label, bar.value) + (share.empty() ? "" : ", " + share) + "\n";
  }
  return out + "\n";
}

std::string markdown(const Signatures& signatures) {
  std::string out;
  for (const std::string& label : signatures.labels) {
    out += plain(label) + ": " + std::string(30, '.') + "\n\n";
  }
  return out;
}

std::string markdown(const Part& part) {
  return heading(part.title, 2);
}

}  // namespace

std::string write_markdown(const Sheet& sheet) {
  std::string out = heading(sheet.title, 1);
  for (const std::string& subtitle : sheet.subtitles) out += plain(subtitle) + "\n\n";
  if (!sheet.date.empty()) out += plain(sheet.date) + "\n\n";
  for (const Block& block : sheet.blocks) {
    out += std::visit([](const auto& one) { return markdown(one); }, block);
  }
  if (!sheet.footnotes.empty()) out += heading("Sources and remarks", 3);
  int number = 0;
  for (const std::string& footnote : sheet.footnotes) {
    out += "\\[" + std::to_string(++number) + "\\] " + plain(footnote) + "\n\n";
  }
  while (out.ends_with("\n\n")) out.pop_back();
  return out;
}

}  // namespace platewright
