// SPDX-License-Identifier: MIT
// Checks the tables of units-data/ and yields/ and turns them into C++, when platewright is built.

#include <algorithm>
#include <filesystem>
#include <iostream>
#include <map>
#include <string>
#include <vector>

#include "generate/source.hpp"
#include "generate/table_code.hpp"
#include "yaml/read_yaml.hpp"

namespace {

using platewright::ProblemList;
using platewright::generate::TableFile;

/// The table files of a folder, by name, so that the outcome does not depend on the disk's order.
std::vector<TableFile> read_folder(const std::string& folder, ProblemList& problems) {
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(folder)) {
    if (entry.path().extension() == ".yaml") names.push_back(entry.path().string());
  }
  std::sort(names.begin(), names.end());
  std::vector<TableFile> out;
  for (const std::string& name : names) {
    const auto text = platewright::yaml::read_file(name, problems);
    if (!text) continue;
    if (auto root = platewright::yaml::read_yaml(*text, name, problems)) {
      out.push_back(TableFile{name, std::move(*root)});
    }
  }
  return out;
}

void print(const ProblemList& problems) {
  for (const auto& problem : problems.all()) {
    std::cerr << problem.place.file << ':' << problem.place.line << ':' << problem.place.column
              << ": " << problem.id << ": " << problem.found << "; expected " << problem.expected
              << "; " << problem.remedy << " (" << problem.place.path << ")\n";
  }
}

int generate(const std::string& units_data, const std::string& yields, const std::string& out) {
  using namespace platewright::generate;
  ProblemList problems;
  const auto units = read_folder(units_data, problems);
  const auto yield_files = read_folder(yields, problems);
  const UnitsText unit_texts = units_text(units, problems);
  const std::map<std::string, std::string> files{
      {"include/platewright/quantity/units.hpp", unit_texts.named_units},
      {"include/platewright/quantity/detail/unit_rows.hpp", unit_texts.rows},
      {"src/densities.cpp", densities_text(units, units, problems)},
      {"src/pieces.cpp", pieces_text(units, units, problems)},
      {"src/cuts.cpp", cuts_text(yield_files, problems)},
      {"src/produce.cpp", goods_text("produce", yield_files, problems)},
      {"src/grains.cpp", goods_text("grain", yield_files, problems)},
      {"src/vessels.cpp", vessels_text(units, problems)},
      {"src/safety.cpp", safety_text(yield_files, problems)},
      {"src/lethality.cpp", lethality_text(yield_files, problems)},
      {"src/times.cpp", times_text(yield_files, problems)},
      {"src/allergens.cpp", allergens_text(yield_files, problems)},
  };
  if (problems.has_errors()) {
    print(problems);
    return 1;
  }
  for (const auto& [name, text] : files)
    write_if_changed((std::filesystem::path(out) / name).string(), text);
  return 0;
}

}  // namespace

int main(int count, char** arguments) {
  std::map<std::string, std::string> options;
  for (int i = 1; i + 1 < count; i += 2) options[arguments[i]] = arguments[i + 1];
  if (count != 7 || !options.contains("--units-data") || !options.contains("--yields") ||
      !options.contains("--out")) {
    std::cerr << "platewright_generate --units-data FOLDER --yields FOLDER --out FOLDER\n";
    return 2;
  }
  try {
    return generate(options["--units-data"], options["--yields"], options["--out"]);
  } catch (const std::exception& error) {
    std::cerr << "platewright_generate: " << error.what() << '\n';
    return 1;
  }
}
