// SPDX-License-Identifier: MIT
// What holds for every sheet, tried on sheets of random blocks with awkward texts.

#include <nlohmann/json.hpp>
#include <random>
#include <sstream>
#include <string>
#include <vector>

#include "platewright/card/display.hpp"
#include "platewright/card/writers.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

class RandomSheets {
 public:
  explicit RandomSheets(unsigned seed) : engine_(seed) {}

  Sheet next() {
    Sheet sheet(SheetKind::card);
    sheet.title = text();
    sheet.date = text();
    for (unsigned i = below(3); i > 0; --i) sheet.subtitles.push_back(text());
    for (unsigned i = 1 + below(6); i > 0; --i) sheet.add(block(sheet));
    return sheet;
  }

 private:
  unsigned below(unsigned limit) { return static_cast<unsigned>(engine_() % limit); }

  std::string text() {
    static const std::vector<std::string> pieces{
        "lamb",
        "leg,",
        "a",
        "bone-in",
        "\u6D77\u82D4",
        "cre\u0300me",
        "\u00BD",
        "130 \u00B0F",
        "\u202E",
        "\xFF",
        "=",
        "\"",
        "|",
        "\n",
        "\t",
        "62.5 %",
        "\U0001F969",
        ",",
        "\u0301",
        "Donaudampfschifffahrtsgesellschaftskapit\u00E4nsm\u00FCtze"};
    std::string out;
    for (unsigned i = below(9); i > 0; --i) {
      out += pieces[below(static_cast<unsigned>(pieces.size()))];
      if (below(3) != 0) out += " ";
    }
    return out;
  }

  Cell cell(Sheet& sheet) {
    Cell out =
        below(2) == 0 ? words(text()) : figure(fraction(below(999), 1 + below(99)), "8.33", "lb");
    return below(6) == 0 ? cited(sheet, out, text()) : out;
  }

  Table table(Sheet& sheet) {
    Table out;
    out.key = "table";
    out.title = text();
    const unsigned columns = 1 + below(7);
    for (unsigned i = 0; i < columns; ++i) {
      const std::string key = "column_" + std::to_string(i);
      out.columns.push_back(below(2) == 0 ? words_column(key, text())
                                          : figures_column(key, text()));
    }
    const auto row = [&] {
      Row cells;
      for (unsigned i = below(columns + 1); i > 0; --i) cells.push_back(cell(sheet));
      return cells;
    };
    for (unsigned i = below(8); i > 0; --i) {
      if (below(3) == 0) out.open_group(text());
      out.add(row());
    }
    for (unsigned i = below(3); i > 0; --i) out.totals.push_back(row());
    return out;
  }

  Block block(Sheet& sheet) {
    switch (below(9)) {
      case 0:
        return Facts{"facts", text(), {{"a", text(), cell(sheet)}, {"b", text(), cell(sheet)}}};
      case 1:
        return Paragraphs{"notes", text(), {text(), text()}};
      case 2:
        return Steps{"method", text(), {{text(), cell(sheet), {{cell(sheet), text()}}}}};
      case 3:
        return Box{"box", text(), {text(), text()}};
      case 4:
        return Bars{
            "bars", text(), {{"a", text(), fraction(below(20), 7), cell(sheet), words(text())}}};
      case 5:
        return Signatures{"signatures", {text(), text(), text()}};
      case 6:
        return Part{"part", text()};
      case 7:
        return Picture(table(sheet), Lanes{{text(), 0, 60, {{30, text()}}},
                                           {{text(), {{text(), {{0, 20, "A", text()}}}}}},
                                           {text()}});
      default:
        return table(sheet);
    }
  }

  std::mt19937 engine_;
};

/// The widest line, form feeds not counted.
unsigned widest_line(const std::string& text) {
  unsigned widest = 0;
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) {
    if (!line.empty() && line.front() == '\f') line.erase(0, 1);
    widest = std::max(widest, display_width(line));
  }
  return widest;
}

/// How many fields each record has; only good for what quotes are balanced in, which they are.
std::vector<unsigned> fields_of(const std::string& csv) {
  std::vector<unsigned> out;
  unsigned fields = 1;
  bool quoted = false;
  for (std::size_t i = 0; i < csv.size(); ++i) {
    if (csv[i] == '"') quoted = !quoted;
    if (quoted) continue;
    if (csv[i] == ',') ++fields;
    if (csv[i] == '\n') {
      out.push_back(fields);
      fields = 1;
    }
  }
  return out;
}

}  // namespace

TEST_CASE("no line of any sheet is wider than the page") {
  RandomSheets sheets(1);
  for (int i = 0; i < 300; ++i) {
    const Sheet sheet = sheets.next();
    for (const unsigned width : {40U, 57U, 80U, 132U}) {
      CHECK(widest_line(write_text(sheet, {width, false, 0})) <= width);
      CHECK(widest_line(write_text(sheet, {width, true, 25})) <= width);
    }
  }
}

TEST_CASE("no sheet lets a control character or a broken byte through") {
  RandomSheets sheets(2);
  for (int i = 0; i < 200; ++i) {
    const Sheet sheet = sheets.next();
    for (const std::string& text : {write_text(sheet), write_markdown(sheet), write_csv(sheet)}) {
      CHECK(text.find("\u202E") == std::string::npos);
      CHECK(text.find('\xFF') == std::string::npos);
      CHECK(text.find('\t') == std::string::npos);
    }
  }
}

TEST_CASE("every sheet is sound JSON, and equally long records") {
  RandomSheets sheets(3);
  for (int i = 0; i < 200; ++i) {
    const Sheet sheet = sheets.next();
    CHECK(nlohmann::json::parse(write_json(sheet))["sheet"] == "card");
    const std::vector<unsigned> fields = fields_of(write_csv(sheet));
    CHECK(std::vector<unsigned>(fields.size(), fields.front()) == fields);
  }
}
