// SPDX-License-Identifier: MIT
#include "platewright/card/table_sheets.hpp"

#include <algorithm>
#include <functional>
#include <map>

#include "card/sheets/shared.hpp"
#include "card/sheets/step_boxes.hpp"
#include "card/sheets/yield_rows.hpp"
#include "platewright/problem/catalogue/books.hpp"

namespace platewright {
namespace {

std::string lower(std::string_view text) {
  return folded_name(text);
}

std::string joined(const std::vector<std::string>& names, const char* between = ", ") {
  std::string out;
  for (const std::string& name : names) out += (out.empty() ? "" : between) + name;
  return out;
}

std::string with_row(const std::string& source, const std::string& row) {
  return row.empty() ? source : source + ", " + row;
}

/// Rows of a table, of which those that hold all the words are kept.
class RowFilter {
 public:
  RowFilter(Table& table, const std::vector<std::string>& words) : table_(table) {
    for (const std::string& word : words) words_.push_back(lower(word));
  }

  void add(Row row) {
    std::string all;
    for (const Cell& cell : row) all += lower(cell.text) + "\n";
    const bool holds = std::all_of(words_.begin(), words_.end(), [&](const std::string& word) {
      return all.find(word) != std::string::npos;
    });
    if (holds) table_.add(std::move(row));
  }

 private:
  Table& table_;
  std::vector<std::string> words_;
};

void fill_units(RowFilter& rows, const Tables& tables) {
  static const std::map<UnitDimension, std::string> canonical{
      {UnitDimension::mass, "g"},   {UnitDimension::volume, "mL"}, {UnitDimension::length, "cm"},
      {UnitDimension::area, "cm2"}, {UnitDimension::time, "s"},    {UnitDimension::pieces, "each"}};
  for (const Unit& unit : tables.units.all()) {
    const UnitRecord& record = unit.record();
    const std::string exact = as_exact(record.size);
    rows.add(
        {words(record.name),
         figure_as(exact + " " + canonical.at(record.dimension), record.size, exact,
                   canonical.at(record.dimension)),
         words(std::string(dimension_name(record.dimension))), words(record.exactness),
         words(joined(record.names) +
               (record.bare.empty() ? ""
                                    : "; in a book of " + std::string(system_name(record.system)) +
                                          " measures: " + joined(record.bare))),
         words(with_row(record.source, record.note))});
  }
}

void fill_weights(RowFilter& rows, const Tables& tables, bool pieces) {
  for (const auto& [plain, weights] : tables.weights.all()) {
    for (const MeasureWeight& row : weights.rows) {
      if ((row.measure.dimension() == UnitDimension::pieces) != pieces) continue;
      const std::string grams = as_short_decimal(row.weighs.in(units::gram), 2);
      std::string measure = amount_text(row.measure);
      if (!row.size.empty()) measure += ", " + row.size;
      rows.add({words(weights.name), words(measure), figure(row.weighs.in(units::gram), grams, "g"),
                words(with_row(row.source, row.row))});
    }
  }
}

void fill_cuts(RowFilter& rows, const Tables& tables) {
  for (const Cut& cut : tables.yields.cuts()) {
    for (const Rung& rung : cut.ladder.rungs()) {
      const bool last = rung.to == cut.ladder.last();
      rows.add({words(cut.name),
                words(words_for(rung) + (last ? card::with_what_is_held(cut.ladder) : "")),
                percent_cell(rung.yield, 2), words(cut.bought), words(cut.imps),
                words(with_row(rung.source.text, rung.source.row))});
    }
  }
}

void fill_produce(RowFilter& rows, const Tables& tables) {
  for (const Produce& row : tables.yields.produce()) {
    rows.add({words(row.name), words(row.trim), percent_cell(row.yield, 2),
              figure(Rational(1) / row.yield, as_short_decimal(Rational(1) / row.yield, 2)),
              words(with_row(row.source.text, row.source.row))});
  }
}

void fill_grains(RowFilter& rows, const Tables& tables) {
  for (const Grain& row : tables.yields.grains()) {
    rows.add({words(row.name), figure(row.yield, as_short_decimal(row.yield, 2)), words(row.note),
              words(with_row(row.source.text, row.source.row))});
  }
}

void fill_vessels(RowFilter& rows, const Tables& tables) {
  for (const Vessel& row : tables.vessels) {
    rows.add({words(row.name), words(row.kind), words(row.printed), words(row.by_rule),
              words(row.capacity), words(row.outside), words(with_row(row.source, row.note))});
  }
}

Cell limit_cell(const BoundTemperature& limit) {
  return fahrenheit_cell(limit.at, limit.bound == Bound::at_least ? Rounding::up : Rounding::down);
}

void fill_safety(RowFilter& rows, const Tables& tables) {
  // What is held or waited for is never shown shorter, what must not be exceeded never longer.
  const auto time = [](const std::optional<Duration>& duration, Rounding rounding) {
    return duration ? duration_cell(duration->in(units::minute), rounding) : Cell{};
  };
  for (const MinimumTemperature& row : tables.safety.minimums) {
    rows.add({words("minimum"), words(row.product + " (safety: " + row.kind.key() + ")"),
              fahrenheit_cell(row.at, Rounding::up), time(row.hold, Rounding::up),
              time(row.rest, Rounding::up),
              words(with_row(with_row(row.source, row.row), row.note))});
  }
  for (const RoastHold& row : tables.safety.roast_holds) {
    rows.add({words("roast hold"),
              words("whole meat roasts"),
              fahrenheit_cell(row.at, Rounding::up),
              duration_cell(row.hold.in(units::minute), Rounding::up),
              {},
              words(with_row(row.authority, row.row))});
  }
  for (const SafetyLimit& row : tables.safety.limits) {
    rows.add({words("limit"),
              words(row.limit),
              row.temperature ? limit_cell(*row.temperature) : Cell{},
              time(row.within, Rounding::down),
              {},
              words(with_row(with_row(row.source, row.row), row.note))});
  }
}

void fill_steps(RowFilter& rows, const Tables& tables) {
  for (const StepRule& rule : tables.safety.step_rules) {
    rows.add({words(std::string(name_of(rule.step))),
              words(rule.where ? where_words(*rule.where) : "anywhere"),
              words(std::string(name_of(rule.demand))),
              words(limit_words(rule, card::step_figures())),
              words(with_row(rule.source, rule.row))});
  }
}

void fill_times(RowFilter& rows, const Tables& tables) {
  for (const PublishedTime& row : tables.times) {
    rows.add({words(std::string(name_of(row.kind))), words(row.of), words(row.weight),
              words(row.at), words(row.time), words(row.end),
              words(with_row(with_row(row.source, row.row), row.note))});
  }
}

void fill_allergens(RowFilter& rows, const Tables& tables) {
  for (const Allergen& row : tables.allergens.rows()) {
    rows.add({words(row.scheme), words(row.name), words(row.key), words(joined(row.names)),
              words(row.name_the_kind ? "yes" : ""), words(row.source)});
  }
}

/// How one table is shown.
struct TableForm {
  std::string title;
  std::vector<Column> columns;
  std::function<void(RowFilter&, const Tables&)> fill;
};

const std::map<std::string, TableForm>& forms() {
  const auto w = words_column;
  const auto f = figures_column;
  static const std::map<std::string, TableForm> all{
      {"units",
       {"Units",
        {w("unit", "Unit"), f("size", "Exactly"), w("dimension", "Measures"),
         w("exactness", "How exact"), w("names", "Written"), w("source", "Source")},
        fill_units}},
      {"densities",
       {"Weights of measures",
        {w("food", "Food"), w("measure", "Measure"), f("weighs", "Weighs"), w("source", "Source")},
        [](RowFilter& rows, const Tables& tables) { fill_weights(rows, tables, false); }}},
      {"pieces",
       {"Weights of pieces, edible portion",
        {w("food", "Food"), w("piece", "Piece"), f("weighs", "Weighs"), w("source", "Source")},
        [](RowFilter& rows, const Tables& tables) { fill_weights(rows, tables, true); }}},
      {"cuts",
       {"Cuts",
        {w("cut", "Cut"), w("rung", "From, to"), f("yield", "Yield"), w("bought", "Bought"),
         w("imps", "IMPS"), w("source", "Source")},
        fill_cuts}},
      {"produce",
       {"Produce",
        {w("produce", "Produce"), w("trim", "Trim"), f("yield", "Yield"), f("factor", "AP / EP"),
         w("source", "Source")},
        fill_produce}},
      {"grains",
       {"Grains, pulses and pasta: cooked weight / dry weight",
        {w("grain", "Grain"), f("yield", "Yield"), w("note", "Note"), w("source", "Source")},
        fill_grains}},
      {"vessels",
       {"Vessels",
        {w("vessel", "Vessel"), w("kind", "Kind"), w("printed", "Printed"), w("by_rule", "By rule"),
         w("capacity", "Which volume"), w("outside", "Outside"), w("source", "Source")},
        fill_vessels}},
      {"safety",
       {"Temperatures and times",
        {w("kind", "Kind"), w("product", "Of"), f("temperature", "At"), f("time", "Time"),
         f("rest", "Rest"), w("source", "Source")},
        fill_safety}},
      {"steps",
       {"What is asked of the kinds of steps",
        {w("step", "Step"), w("where", "Where"), w("demand", "It"), w("limit", "Limit"),
         w("source", "Source")},
        fill_steps}},
      {"times",
       {"Roasting, thawing, carry-over: estimates; the thermometer decides",
        {w("kind", "Kind"), w("of", "Of"), w("weight", "Weight"), w("at", "At"), w("time", "Time"),
         w("end", "Until"), w("source", "Source")},
        fill_times}},
      {"allergens",
       {"Allergens that must be declared",
        {w("scheme", "Law"), w("allergen", "Allergen"), w("key", "Key"), w("names", "Also"),
         w("name_the_kind", "Name the kind"), w("source", "Source")},
        fill_allergens}},
  };
  return all;
}

}  // namespace

Sheet table_sheet(const std::string& name, const std::vector<std::string>& words,
                  const Tables& tables) {
  const auto form = forms().find(name);
  if (form == forms().end()) {
    std::vector<std::string> known;
    for (const auto& [other, unused] : forms()) known.push_back(other);
    throw Failure(problems::word_unknown("table", name, known));
  }
  Sheet sheet(SheetKind::tables);
  sheet.title = form->second.title;
  Table table{name, "", form->second.columns, {}, {}, {}};
  RowFilter rows(table, words);
  form->second.fill(rows, tables);
  if (table.groups.empty()) throw Failure(problems::no_such_row(name, joined(words, " ")));
  if (name == "safety" || name == "steps") {
    table.notes = {
        "Minimums of the authorities named. Local codes and licensed practice come first."};
  }
  sheet.add(std::move(table));
  return sheet;
}

}  // namespace platewright
