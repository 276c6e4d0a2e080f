// SPDX-License-Identifier: MIT
#include "platewright/files/read_core_log.hpp"

#include <vector>

#include "csv/read_csv.hpp"
#include "platewright/number/read.hpp"
#include "platewright/problem/catalogue/price_lists.hpp"
#include "platewright/problem/catalogue/safety.hpp"
#include "platewright/problem/folded_name.hpp"
#include "platewright/quantity/read_temperature.hpp"
#include "yaml/read_yaml.hpp"

namespace platewright {
namespace {

/// A line with one field alone is no heading here: left out, a low reading would not count.
std::optional<csv::Table> whole_table(const std::string& text, const std::string& file,
                                      ProblemList& problems) {
  ProblemList found;
  auto table = csv::read_csv(text, file, ',', found);
  for (const Problem& problem : found.all()) {
    const bool left_out = problem.severity == Severity::warning;
    problems.add(left_out ? at(problems::csv_field_count(1, 2), problem.place) : problem);
  }
  return table;
}

/// The unit of the times. Throws Failure for another header than the two units.
NamedUnit<TimeDimension> time_unit(const csv::Record& header) {
  std::string all;
  for (const csv::Field& field : header.fields) all += (all.empty() ? "" : ",") + field.text;
  if (header.fields.size() == 2) {
    const std::string time = folded_name(header.fields[0].text);
    const std::string& scale = header.fields[1].text;
    const bool known = scale == "F" || scale == "C";
    if (known && time == "seconds") return units::second;
    if (known && time == "minutes") return units::minute;
    if (known && time == "hours") return units::hour;
  }
  // A line without a comma is that of any file at all, and is not shown.
  throw Failure(problems::core_log_header(header.fields.size() < 2 ? std::string() : all));
}

Temperature core_from(const std::string& text, const std::string& scale) {
  const std::string whole = text + " " + scale;
  const Temperature core = read_temperature(whole);
  if (core < Temperature::celsius(0) || core > Temperature::celsius(100)) {
    throw Failure(problems::inside_temperature_impossible(whole));
  }
  return core;
}

}  // namespace

std::optional<CoreCurve> read_core_log(const std::string& file, ProblemList& problems) {
  const auto text = yaml::read_named(file, problems);
  if (!text) return std::nullopt;
  const auto table = whole_table(*text, file, problems);
  if (!table) return std::nullopt;
  const auto place = [&](const csv::Field& field) {
    return Place{file, field.line, field.column, {}};
  };
  std::optional<CoreCurve> out;
  problems.attempt(place(table->header.fields.front()), [&] {
    const NamedUnit<TimeDimension> unit = time_unit(table->header);
    const std::string& scale = table->header.fields[1].text;
    std::vector<CoreReading> readings;
    // A line that could not be read is missing from the records, and so from the curve.
    bool whole = !problems.has_errors();
    for (const csv::Record& record : table->records) {
      const csv::Field& time = record.fields[0];
      const csv::Field& core = record.fields[1];
      CoreReading reading;
      const bool good = problems.attempt(place(time), [&] {
        reading.at = Duration::of(read_number(time.text), unit);
      }) && problems.attempt(place(core), [&] { reading.core = core_from(core.text, scale); });
      whole = whole && good;
      if (!good) continue;
      if (!readings.empty()) {
        const bool follows =
            problems.attempt(place(time), [&] { CoreCurve::check_next(readings.back(), reading); });
        whole = whole && follows;
      }
      readings.push_back(std::move(reading));
    }
    if (whole) out = CoreCurve::of(std::move(readings));
  });
  return out;
}

}  // namespace platewright
