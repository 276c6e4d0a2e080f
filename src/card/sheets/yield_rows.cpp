// SPDX-License-Identifier: MIT
#include "card/sheets/yield_rows.hpp"

#include "card/sheets/rung_texts.hpp"
#include "platewright/card/figures.hpp"
#include "platewright/yield/bought.hpp"

namespace platewright::card {
namespace {

std::string held_text(const Ladder& ladder) {
  std::string out;
  for (const Loss loss : ladder.still_held()) {
    if (!out.empty()) out += " and the ";
    out += held_word(loss);
  }
  return out;
}

}  // namespace

void add_rows(Sheet& sheet, const ChosenRow& chosen) {
  Table table{
      "rows",
      chosen.row.kind == YieldKind::cut ? "Rows of this cut" : "Rows by how it is trimmed",
      {words_column("row", "Row"), figures_column("yield", "Yield"), words_column("used", "Used")},
      {},
      {},
      {}};
  for (const YieldRow& row : chosen.among) {
    std::string sources;
    for (const Rung& rung : row.ladder.rungs()) {
      sources += (sources.empty() ? "" : "; ") + source_text(rung);
    }
    table.add({words(row.name + with_what_is_held(row.ladder)),
               cited(sheet, percent_cell(row.ladder.yield(), 2), sources),
               words(row.name == chosen.row.name ? "this one" : "")});
  }
  sheet.add(std::move(table));
}

void add_still_held(Sheet& sheet, const ChosenRow& chosen, const Ladder& ladder) {
  const std::string held = held_text(ladder);
  if (held.empty()) return;
  std::string text = "The row ends at " + std::string(name_of(ladder.last())) + " with the " +
                     held + " in the weight, and so is every portion on this sheet weighed. ";
  if (chosen.takes_out) {
    text += "For portions without it use the row \"" + chosen.takes_out->name +
            "\", which yields " + percent_cell(chosen.takes_out->ladder.yield(), 2).text + ".";
  } else {
    text +=
        "No row of these goods takes it out: carve one, and add your own test with --tested \"" +
        std::string(name_of(ladder.last())) + " to served\" and its yield.";
  }
  if (!chosen.note.empty()) text += " " + chosen.note;
  sheet.add(Paragraphs{"still_held", "The " + held + " is in the weight", {text}});
}

void add_still_raw(Sheet& sheet, const ChosenRow& chosen, const Ladder& ladder) {
  const bool ends_raw = !ladder.loses_nothing() && ladder.last() < Stage::cooked;
  if (chosen.row.kind != YieldKind::cut || !ends_raw) return;
  const std::string stage(name_of(ladder.last()));
  sheet.add(
      Paragraphs{"still_raw",
                 "The portions are raw weight",
                 {"The row ends at " + stage +
                  ", and no published row cooks these goods. Cook some, and add your own test "
                  "with --tested \"" +
                  stage + " to cooked\" and its yield."}});
}

std::string with_what_is_held(const Ladder& ladder) {
  const std::string held = held_text(ladder);
  return held.empty() ? held : ", with the " + held + " in it";
}

}  // namespace platewright::card
