// SPDX-License-Identifier: MIT
// The units: named ones for the compiler, rows for the run-time table, both from one list.

#include <cctype>
#include <map>

#include "generate/row_fields.hpp"
#include "platewright/number/write.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/folded_name.hpp"

namespace platewright::generate {
namespace {

const std::map<std::string, std::string>& dimension_tags() {
  static const std::map<std::string, std::string> tags{
      {"mass", "MassDimension"}, {"volume", "VolumeDimension"}, {"length", "LengthDimension"},
      {"area", "AreaDimension"}, {"time", "TimeDimension"},     {"pieces", "PiecesDimension"}};
  return tags;
}

const std::vector<std::string>& systems() {
  static const std::vector<std::string> names{"us",         "imperial", "metric", "labelling",
                                              "australian", "japanese", "any"};
  return names;
}

const std::vector<std::string>& exactness_words() {
  static const std::vector<std::string> words{"exact", "convention", "exact by rule", "as printed",
                                              "derived"};
  return words;
}

std::string checked_word(std::string_view what, const std::string& word,
                         const std::vector<std::string>& known) {
  for (const std::string& other : known) {
    if (other == word) return word;
  }
  throw Failure(problems::word_unknown(what, word, known));
}

class UnitWriter {
 public:
  explicit UnitWriter(ProblemList& problems) : problems_(problems) {}

  void write(yaml::Fields& fields) {
    const std::string name = fields.needed_text("unit", "unit: pound").value_or("");
    const std::string dimension = dimension_of(fields);
    const auto size = fields.share("is");
    if (!size || *size <= 0) throw Failure(problems::number_not_positive("size", "0 or nothing"));
    const std::string system =
        checked_word("system", fields.text("system").value_or(""), systems());
    const std::string symbol = fields.text("symbol").value_or(name);
    const std::string plural = fields.text("plural").value_or(symbol);
    const auto names = fields.texts("names");
    const auto bare = fields.texts("bare");
    note_names(fields, name, names, system, bare);
    fields.find("gnu");  // what GNU units calls it: only the tests look at it
    const std::string ucum = literal_of(fields, "ucum");
    const std::string kind = fields.text("kind").value_or(dimension == "pieces" ? name : "");
    const std::string exactness =
        checked_word("exactness", fields.text("exactness").value_or(""), exactness_words());
    const std::string source = source_of(fields);
    const std::string size_text = ratio(*size);
    named += "/// " + name + ": " + as_fraction(*size) + " canonical units; " + exactness +
             ".\ninline constexpr NamedUnit<" + dimension_tags().at(dimension) + "> " +
             identifier(name) + "{" + size_text + ", " + literal(name) + "};\n";
    rows += "    {" + literal(name) + ", UnitDimension::" + dimension + ", " + size_text +
            ", MeasuringSystem::" + system + ", " + literal(symbol) + ", " + literal(plural) +
            ", " + joined(names) + ", " + joined(bare) + ", " + ucum + ", " + literal(kind) + ", " +
            literal(exactness) + ", " + source + ", " + literal_of(fields, "note") + "},\n";
  }

  std::string named;
  std::string rows;

 private:
  static std::string dimension_of(yaml::Fields& fields) {
    std::vector<std::string> known;
    for (const auto& [name, tag] : dimension_tags()) known.push_back(name);
    return checked_word("dimension", fields.text("dimension").value_or(""), known);
  }

  void note_names(yaml::Fields& fields, const std::string& name,
                  const std::vector<std::string>& names, const std::string& system,
                  const std::vector<std::string>& bare) {
    identifiers_.add("unit", name, fields.place(), problems_);
    for (const std::string& other : names) {
      note(names_, folded_abbreviation(other), fields);
    }
    for (const std::string& other : bare) note(bare_[system], other, fields);
  }

  // Compared as text, since signs such as " and # are names too.
  void note(std::map<std::string, int>& seen, const std::string& name, yaml::Fields& fields) {
    const auto [first, is_new] = seen.emplace(name, fields.place().line);
    if (!is_new) {
      problems_.add(at(problems::name_twice("unit", name, "line " + std::to_string(first->second)),
                       fields.place()));
    }
  }

  ProblemList& problems_;
  NamesSeen identifiers_;
  std::map<std::string, int> names_;
  std::map<std::string, std::map<std::string, int>> bare_;
};

}  // namespace

UnitsText units_text(const std::vector<TableFile>& files, ProblemList& problems) {
  UnitWriter writer(problems);
  each_row(files, "units", "unit", problems, [&](yaml::Fields& fields) { writer.write(fields); });
  UnitsText out;
  out.named_units =
      "#pragma once\n// Every unit of units-data/units.yaml by name. Made by platewright_generate: "
      "change "
      "the table,\n// not this file. Canonical units are g, mL, cm, cm2, s and pieces.\n\n"
      "#include \"platewright/quantity/quantity.hpp\"\n\nnamespace platewright::units {\n\n" +
      writer.named + "\n}  // namespace platewright::units\n";
  out.rows =
      "#pragma once\n// The run-time rows of units-data/units.yaml. Made by platewright_generate: "
      "change "
      "the table, not\n// this file.\n\n#include \"platewright/quantity/unit.hpp\"\n\n"
      "namespace platewright::detail {\n\ninline constexpr UnitRow unit_rows[] = {\n" +
      writer.rows + "};\n\n}  // namespace platewright::detail\n";
  return out;
}

}  // namespace platewright::generate
