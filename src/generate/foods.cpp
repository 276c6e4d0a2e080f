// SPDX-License-Identifier: MIT
// Weights of measures and of pieces.

#include <map>

#include "generate/row_fields.hpp"
#include "platewright/number/read.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/numbers.hpp"

namespace platewright::generate {
namespace {

/// What the units' files say of each name that a measure may be written in.
struct UnitNames {
  std::map<std::string, std::string> volumes;  ///< name as written in US measures -> unit
  std::map<std::string, std::string> kinds;    ///< kinds of pieces

  explicit UnitNames(const std::vector<TableFile>& files) {
    ProblemList already_reported;
    each_row(files, "units", "unit", already_reported, [&](yaml::Fields& fields) {
      const std::string name = fields.text("unit").value_or("");
      const std::string dimension = fields.text("dimension").value_or("");
      const std::string system = fields.text("system").value_or("");
      if (dimension == "pieces") kinds[fields.text("kind").value_or(name)] = name;
      if (dimension != "volume") return;
      for (const std::string& other : fields.texts("names")) volumes[other] = name;
      if (system == "us") {
        for (const std::string& other : fields.texts("bare")) volumes[other] = name;
      }
      volumes[name] = name;
    });
  }
};

struct Measured {
  Rational number;
  std::string unit;
};

Measured read_measured(const std::string& text) {
  const NumberPrefix prefix = read_number_prefix(text);
  if (prefix.value <= 0) throw Failure(problems::number_not_positive("amount", text));
  const std::size_t start = text.find_first_not_of(' ', prefix.length);
  return {prefix.value, start == std::string::npos ? std::string{} : text.substr(start)};
}

std::string unit_among(const std::map<std::string, std::string>& known, const std::string& name) {
  if (const auto found = known.find(name); found != known.end()) return found->second;
  std::vector<std::string> names;
  for (const auto& [other, unit] : known) names.push_back(other);
  throw Failure(problems::word_unknown("unit", name, names));
}

std::string grams_of(yaml::Fields& fields) {
  const Measured weight = read_measured(fields.needed_text("weighs", "weighs: 125 g").value_or(""));
  unit_among({{"g", "gram"}}, weight.unit);
  return ratio(weight.number);
}

}  // namespace

std::string densities_text(const std::vector<TableFile>& files,
                           const std::vector<TableFile>& unit_files, ProblemList& problems) {
  const UnitNames units(unit_files);
  NamesSeen seen;
  std::vector<std::string> rows;
  each_row(files, "densities", "of", problems, [&](yaml::Fields& fields) {
    const std::string of = fields.needed_text("of", "of: flour").value_or("");
    const auto names = fields.texts("names");
    seen.add("food", of, fields.place(), problems);
    for (const std::string& name : names) seen.add("food", name, fields.place(), problems);
    const std::string source = source_of(fields);
    for (const yaml::Node& node : fields.list("measures")) {
      yaml::Fields measure(node, fields.context(), fields.path(), yaml::any_keys());
      const Measured read =
          read_measured(measure.needed_text("measure", "measure: 1 cup").value_or(""));
      rows.push_back(literal(of) + ", " + joined(names) + ", " + ratio(read.number) + ", " +
                     literal(unit_among(units.volumes, read.unit)) + ", \"\", true, " +
                     grams_of(measure) + ", " + source + ", " + literal_of(measure, "row"));
      measure.finish();
    }
  });
  return source_file(array_text("WeightRow", "density_rows", rows));
}

std::string pieces_text(const std::vector<TableFile>& files,
                        const std::vector<TableFile>& unit_files, ProblemList& problems) {
  const UnitNames units(unit_files);
  NamesSeen seen;
  std::vector<std::string> rows;
  each_row(files, "pieces", "of", problems, [&](yaml::Fields& fields) {
    const std::string of = fields.needed_text("of", "of: garlic").value_or("");
    const std::string piece = fields.needed_text("piece", "piece: clove").value_or("");
    unit_among(units.kinds, piece);
    const std::string size = fields.text("size").value_or("");
    seen.add("piece", of + ", " + piece + ", " + size, fields.place(), problems);
    rows.push_back(literal(of) + ", " + joined(fields.texts("names")) + ", {1, 1}, " +
                   literal(piece) + ", " + literal(size) + ", " +
                   (fields.flag("usual") ? "true" : "false") + ", " + grams_of(fields) + ", " +
                   source_of(fields) + ", " + literal_of(fields, "row"));
  });
  return source_file(array_text("WeightRow", "piece_rows", rows));
}

}  // namespace platewright::generate
