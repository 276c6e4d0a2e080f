// SPDX-License-Identifier: MIT
// Times of roasting, thawing and carry-over. They are shown, not calculated with, so the figures
// stay as the table writes them.

#include "generate/row_fields.hpp"

namespace platewright::generate {
namespace {

/// `4 lb to 6 lb`, `325 F`, or nothing.
std::string span_of(yaml::Fields& fields, std::string_view from, std::string_view to) {
  const std::string first = fields.text(from).value_or("");
  const std::string second = fields.text(to).value_or("");
  if (second.empty() || first == second) return first;
  return first.empty() ? "up to " + second : first + " to " + second;
}

}  // namespace

std::string times_text(const std::vector<TableFile>& files, ProblemList& problems) {
  std::vector<std::string> rows;
  const auto add = [&](const std::string& kind, const std::string& of, const std::string& weight,
                       const std::string& at, const std::string& time, const std::string& end,
                       yaml::Fields& fields) {
    rows.push_back(literal(kind) + ", " + literal(of) + ", " + literal(weight) + ", " +
                   literal(at) + ", " + literal(time) + ", " + literal(end) + ", " +
                   source_of(fields) + ", " + literal_of(fields, "row") + ", " +
                   literal_of(fields, "note"));
  };
  each_row(files, "roasting", "cut", problems, [&](yaml::Fields& fields) {
    const std::string species = fields.text("species").value_or("");
    std::string end = span_of(fields, "end", "end to");
    if (const auto rest = fields.text("rest")) end += ", rest " + *rest;
    add("roasting", species + ": " + fields.text("cut").value_or(""), span_of(fields, "from", "to"),
        span_of(fields, "oven", "oven to"),
        span_of(fields, "least", "most") + " " + fields.text("counted").value_or(""), end, fields);
  });
  each_row(files, "thawing", "food", problems, [&](yaml::Fields& fields) {
    std::string time = span_of(fields, "least", "most");
    if (const auto each = fields.text("time")) {
      time = *each + " for each " + span_of(fields, "for each", "for each at most");
    }
    add("thawing", fields.text("food").value_or(""), span_of(fields, "from", "to"),
        fields.text("where").value_or(""), time, "", fields);
  });
  each_row(files, "carry over", "row", problems, [&](yaml::Fields& fields) {
    const auto rise = fields.text("rise");
    add("carry-over", fields.text("row").value_or(""), "", fields.text("off at").value_or(""),
        span_of(fields, "least", "most"),
        rise ? "rises by " + *rise : "rises to " + fields.text("rises to").value_or(""), fields);
  });
  return source_file(array_text("TimeRow", "time_rows", rows));
}

}  // namespace platewright::generate
