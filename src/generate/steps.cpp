// SPDX-License-Identifier: MIT
// Rules for kinds of steps, and rates of thawing.

#include <map>
#include <optional>

#include "generate/row_fields.hpp"
#include "platewright/number/read.hpp"
#include "platewright/problem/catalogue/books.hpp"

namespace platewright::generate {
namespace {

/// A limit's temperature, bound and time, and where it is printed.
struct LimitText {
  std::string figures;
  std::string source;
  std::string note;
};

std::map<std::string, LimitText> limits_by_key(const std::vector<TableFile>& files,
                                               ProblemList& problems) {
  std::map<std::string, LimitText> out;
  each_row(files, "limits", "limit", problems, [&](yaml::Fields& fields) {
    LimitText limit;
    limit.figures = celsius_of(fields, "at") + ", " + literal_of(fields, "bound") + ", " +
                    seconds_of(fields, "within");
    limit.source = source_of(fields) + ", " + literal_of(fields, "row");
    limit.note = fields.text("note").value_or("");
    fields.find("limit");
    out[fields.text("key").value_or("")] = limit;
  });
  return out;
}

const LimitText& limit_of(const std::map<std::string, LimitText>& limits, const std::string& key) {
  const auto found = limits.find(key);
  if (found != limits.end()) return found->second;
  std::vector<std::string> known;
  for (const auto& [name, limit] : limits) known.push_back(name);
  throw Failure(problems::word_unknown("limit", key, known));
}

/// Grams of `4 lb`; the table has no other unit.
std::string grams_of(yaml::Fields& fields, std::string_view key, const std::string& otherwise) {
  const auto text = fields.text(key);
  if (!text) return otherwise;
  const NumberPrefix prefix = read_number_prefix(*text);
  const std::string unit = text->substr(prefix.length);
  if (unit != " lb") throw Failure(problems::word_unknown("weight unit", unit, {"lb"}));
  // NIST Handbook 44, Appendix C: a pound is 453.59237 g.
  return ratio(prefix.value * read_number("453.59237"));
}

}  // namespace

std::string step_rows_text(const std::vector<TableFile>& files, ProblemList& problems) {
  const auto limits = limits_by_key(files, problems);
  std::vector<std::string> rules;
  each_row(files, "step rules", "step", problems, [&](yaml::Fields& fields) {
    LimitText limit{"not_printed, \"\", not_printed", {}, {}};
    if (const auto key = fields.text("limit")) limit = limit_of(limits, *key);
    if (limit.source.empty()) limit.source = source_of(fields) + ", " + literal_of(fields, "row");
    const std::string note = fields.text("note").value_or(limit.note);
    rules.push_back(literal_of(fields, "step") + ", " + literal_of(fields, "where") + ", " +
                    literal(fields.needed_text("demand", "demand: reaches").value_or("")) + ", " +
                    limit.figures + ", " + limit.source + ", " + literal(note));
  });
  std::vector<std::string> rates;
  each_row(files, "thawing", "food", problems, [&](yaml::Fields& fields) {
    for (const char* key : {"food", "from", "to", "least", "most"}) fields.find(key);
    const std::string least = grams_of(fields, "for each", "");
    const std::string most = grams_of(fields, "for each at most", least);
    const std::string row = literal_of(fields, "where") + ", " + seconds_of(fields, "time") + ", " +
                            least + ", " + most + ", " + source_of(fields) + ", " +
                            literal_of(fields, "row") + ", " + literal_of(fields, "note");
    if (!least.empty()) rates.push_back(row);
  });
  return array_text("StepRuleRow", "step_rule_rows", rules) + "\n" +
         array_text("ThawingRateRow", "thawing_rate_rows", rates);
}

}  // namespace platewright::generate
