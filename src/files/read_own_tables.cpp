// SPDX-License-Identifier: MIT
// A user's own rows, in the form of the program's own tables. They win over the built-in ones.

#include "files/reading.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/catalogue/own_tables.hpp"
#include "platewright/problem/look_alikes.hpp"

namespace platewright::reading {
namespace {

/// A row's name and the other names for it.
struct Names {
  std::string name;
  std::vector<std::string> others;
};

/// Those whose letters only look right are warned of: their row would be found by no one.
Names names_of(yaml::Fields& fields, std::string_view key) {
  Names out{fields.needed_text(key, std::string(key) + ": its name").value_or(""),
            fields.texts("names")};
  const auto check_letters = [&](const std::string& name) {
    const auto warning = look_alike_warning(name);
    if (warning) fields.context().problems.add(at(*warning, fields.place()));
  };
  check_letters(out.name);
  for (const std::string& name : out.others) check_letters(name);
  return out;
}

/// Every figure has a source, the user's own too: a sheet says whose number it used.
Source source_of(yaml::Fields& fields) {
  const auto source = fields.text("source");
  if (!source || source->empty()) throw Failure(problems::row_without_source(fields.path()));
  return {*source, fields.text("row").value_or("")};
}

template <class Work>
void each_row(yaml::Fields& top, const Reading& reading, std::string_view key, const Mapping& keys,
              Work&& work) {
  for (const yaml::Node& node : top.list(key)) {
    // The first value of a row is its name.
    std::string path = "tables > " + std::string(key);
    if (!node.entries.empty()) path += " > " + node.entries.front().second.text;
    yaml::Fields fields(node, reading.context(), path, keys);
    fields.finish(reading.problems.attempt(fields.place(), [&] { work(fields); }));
  }
}

void read_unit(yaml::Fields& fields, const Reading& reading) {
  UnitRecord record;
  const Names names = names_of(fields, "unit");
  record.name = names.name;
  record.names = names.others;
  record.symbol = fields.text("symbol").value_or(record.name);
  record.plural = fields.text("plural").value_or(record.symbol);
  // Written in a unit that is there already, so that a unit can't be defined by itself.
  const auto size = fields.needed_text("is", "is: 750 mL");
  if (!size) return;
  const Amount amount = reading.amount(*size);
  if (amount.number <= 0) throw Failure(problems::number_not_positive("a unit", *size));
  record.dimension = amount.dimension();
  record.size = amount.canonical();
  record.kind = amount.unit.kind();
  record.exactness = "own";
  record.source = source_of(fields).text;
  record.note = fields.text("note").value_or("");
  reading.book.tables.units.add(std::move(record));
}

Mass weight_of(yaml::Fields& fields, const Reading& reading) {
  const auto text = fields.needed_text("weighs", "weighs: 125 g");
  const Amount weight = reading.amount(text.value_or(""));
  if (weight.number <= 0) throw Failure(problems::number_not_positive("a weight", *text));
  return to_mass(weight);
}

void read_density(yaml::Fields& fields, const Reading& reading) {
  const Names names = names_of(fields, "of");
  const Source source = source_of(fields);
  for (const yaml::Node& node : fields.list("measures")) {
    yaml::Fields measure(node, reading.context(), fields.path(), density_measure_keys());
    const Amount size =
        reading.amount(measure.needed_text("measure", "measure: 1 cup").value_or(""));
    if (size.number <= 0) {
      throw Failure(problems::number_not_positive("a measure", amount_text(size)));
    }
    MeasureWeight own{size, weight_of(measure, reading)};
    own.source = source.text;
    own.row = measure.text("row").value_or("");
    own.own = true;
    measure.finish();
    reading.book.tables.weights.add(names.name, names.others, std::move(own));
  }
}

void read_piece(yaml::Fields& fields, const Reading& reading) {
  const Names names = names_of(fields, "of");
  const Amount one =
      reading.amount("1 " + fields.needed_text("piece", "piece: clove").value_or(""));
  MeasureWeight own{one, weight_of(fields, reading)};
  own.size = fields.text("size").value_or("");
  own.usual = fields.find("usual") == nullptr || fields.flag("usual");
  const Source source = source_of(fields);
  own.source = source.text;
  own.row = source.row;
  own.own = true;
  reading.book.tables.weights.add(names.name, names.others, std::move(own));
}

Rung read_rung(const yaml::Node& node, const Reading& reading, const std::string& path) {
  yaml::Fields fields(node, reading.context(), path, rung_keys());
  Rung rung;
  rung.from = stage_from(fields.text("from").value_or("purchased"));
  rung.to = stage_from(fields.needed_text("to", "to: cooked").value_or("cooked"));
  const auto yield = fields.share("yield");
  if (!yield) throw Failure(problems::number_not_positive("yield", "nothing"));
  rung.yield = *yield;
  for (const std::string& loss : fields.texts("holds")) rung.holds.push_back(loss_from(loss));
  check_yield_at_most(rung.yield, true);
  rung.method = fields.text("method").value_or("");
  if (const auto samples = fields.number("samples")) {
    rung.spread.samples = static_cast<std::int64_t>(floor_of(*samples));
  }
  rung.spread.standard_deviation = fields.share("deviation");
  rung.spread.low = fields.share("low");
  rung.spread.high = fields.share("high");
  rung.source = source_of(fields);
  rung.own = true;
  fields.finish();
  return rung;
}

void read_cut(yaml::Fields& fields, const Reading& reading, YieldRows& rows) {
  Cut cut;
  const Names names = names_of(fields, "cut");
  cut.name = names.name;
  cut.names = names.others;
  cut.species = fields.text("species").value_or("");
  cut.safety = fields.read<FoodKind>("safety", [&](const std::string& text) {
    return reading.book.tables.safety.kind_called(text);
  });
  const auto bought = fields.read<std::string>("bought", [](const std::string& text) {
    check_bought(text);
    return text;
  });
  cut.bought = bought.value_or("");
  cut.imps = fields.text("imps").value_or("");
  cut.goods = fields.text("goods").value_or("");
  cut.note = fields.text("note").value_or("");
  std::vector<Rung> rungs;
  for (const yaml::Node& node : fields.list("rungs")) {
    rungs.push_back(read_rung(node, reading, fields.path() + " > " + in_quotes(cut.name)));
  }
  cut.ladder = Ladder(std::move(rungs));
  check_cut(cut);
  rows.cuts.push_back(std::move(cut));
}

/// As a yield, or as a factor (as purchased over edible portion).
Rational yield_of(yaml::Fields& fields, bool takes_up_water) {
  const auto factor = fields.number("factor");
  auto yield = factor ? std::nullopt : fields.share("yield");
  if (factor && *factor > 0) yield = Rational(1) / *factor;
  if (!yield || *yield <= 0) throw Failure(problems::number_not_positive("yield", "0 or nothing"));
  check_yield_at_most(*yield, takes_up_water);
  return *yield;
}

}  // namespace

void read_own_tables(const std::vector<BookFile>& files, Book& book, ProblemList& problems) {
  YieldRows rows;
  std::vector<StepRule> step_rules;
  for (const BookFile& file : files) {
    const Reading reading{file, book, problems};
    yaml::Fields top(file.root(), reading.context(), {}, own_tables_keys());
    top.find("tables");
    top.find("measures");
    top.find("kitchen");
    top.find("with");
    each_row(top, reading, "units", own_unit_keys(),
             [&](yaml::Fields& fields) { read_unit(fields, reading); });
    each_row(top, reading, "densities", density_keys(),
             [&](yaml::Fields& fields) { read_density(fields, reading); });
    each_row(top, reading, "pieces", piece_weight_keys(),
             [&](yaml::Fields& fields) { read_piece(fields, reading); });
    each_row(top, reading, "cuts", own_cut_keys(),
             [&](yaml::Fields& fields) { read_cut(fields, reading, rows); });
    each_row(top, reading, "produce", own_produce_keys(), [&](yaml::Fields& fields) {
      const Names names = names_of(fields, "produce");
      const std::string trim = fields.text("trim").value_or("");
      rows.produce.push_back(
          {names.name, names.others, trim, yield_of(fields, false), source_of(fields)});
    });
    each_row(top, reading, "grains", own_grain_keys(), [&](yaml::Fields& fields) {
      const Names names = names_of(fields, "grain");
      rows.grains.push_back({names.name, names.others, yield_of(fields, true), source_of(fields),
                             fields.text("note").value_or("")});
    });
    if (const auto law = top.read<AllergenLaw>(
            "allergen law", [](const std::string& text) { return allergen_law_from(text); })) {
      book.tables.allergens.go_by(*law);
    }
    each_row(top, reading, "step rules", step_rule_keys(), [&](yaml::Fields& fields) {
      const Source source = source_of(fields);
      step_rules.push_back(read_step_rule(fields, reading, source.text, source.row));
    });
    top.finish();
  }
  // Rules of two authorities are not mixed.
  if (!step_rules.empty()) book.tables.safety.step_rules = std::move(step_rules);
  if (rows.cuts.empty() && rows.produce.empty() && rows.grains.empty()) return;
  const Place place{files.front().file, 1, 1, "tables"};
  problems.attempt(place,
                   [&] { book.tables.yields = YieldTable(built_in_yields(), std::move(rows)); });
}

}  // namespace platewright::reading
