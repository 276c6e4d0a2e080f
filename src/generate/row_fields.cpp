// SPDX-License-Identifier: MIT
#include "generate/row_fields.hpp"

#include "platewright/number/read.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/own_tables.hpp"
#include "platewright/quantity/read_temperature.hpp"

namespace platewright::generate {

void NamesSeen::add(const std::string& what, const std::string& name, const Place& place,
                    ProblemList& problems) {
  const std::string plain = identifier(name);
  for (const auto& [seen, first] : seen_) {
    if (seen == plain) {
      // One row may list two spellings of its name that differ in signs alone.
      if (first == place) return;
      problems.add(at(
          problems::name_twice(what, name, first.file + ":" + std::to_string(first.line)), place));
      return;
    }
  }
  seen_.emplace_back(plain, place);
}

void each_row(const std::vector<TableFile>& files, std::string_view key, std::string_view identity,
              ProblemList& problems, const std::function<void(yaml::Fields&)>& row) {
  for (const TableFile& file : files) {
    const yaml::Context context{file.file, problems};
    yaml::Fields top(file.root, context, {}, yaml::any_keys());
    for (const yaml::Node& node : top.list(key)) {
      yaml::Fields peek(node, context, std::string(key), yaml::any_keys());
      const std::string name = peek.text(identity).value_or("?");
      yaml::Fields fields(node, context, std::string(identity) + " " + in_quotes(name),
                          yaml::any_keys());
      problems.attempt(fields.place(), [&] { row(fields); });
      fields.finish();
    }
  }
}

std::string literal_of(yaml::Fields& fields, std::string_view key) {
  return literal(fields.text(key).value_or(""));
}

std::string share_or_none(yaml::Fields& fields, std::string_view key) {
  const auto value = fields.share(key);
  return value ? ratio(*value) : "not_printed";
}

std::string source_of(yaml::Fields& fields) {
  const auto source = fields.text("source");
  if (!source || source->empty()) throw Failure(problems::row_without_source(fields.path()));
  return literal(*source);
}

std::string celsius_of(yaml::Fields& fields, std::string_view key) {
  const auto text = fields.text(key);
  return text ? ratio(read_temperature(*text).in_celsius()) : "not_printed";
}

/// Seconds of `3 min`, `15 s`, `2 h`, `7 days`.
std::string seconds_in(const std::string& text) {
  const NumberPrefix prefix = read_number_prefix(text);
  const std::size_t start = text.find_first_not_of(' ', prefix.length);
  const std::string unit = start == std::string::npos ? std::string{} : text.substr(start);
  if (unit == "s") return ratio(prefix.value);
  if (unit == "min") return ratio(prefix.value * 60);
  if (unit == "h") return ratio(prefix.value * 3600);
  if (unit == "days" || unit == "day") return ratio(prefix.value * 86400);
  throw Failure(problems::word_unknown("time unit", unit, {"s", "min", "h", "days"}));
}

std::string seconds_of(yaml::Fields& fields, std::string_view key) {
  const auto text = fields.text(key);
  return text ? seconds_in(*text) : "not_printed";
}

std::string array_text(std::string_view type, std::string_view accessor,
                       const std::vector<std::string>& rows) {
  std::string out = "namespace {\nconstexpr ";
  out += std::string(type) + " " + std::string(accessor) + "_data[] = {\n";
  for (const std::string& row : rows) out += "    {" + row + "},\n";
  out += "};\n}  // namespace\n\nstd::span<const " + std::string(type) + "> ";
  return out + std::string(accessor) + "() { return " + std::string(accessor) + "_data; }\n";
}

std::string source_file(const std::string& body) {
  return "// Made from the tables by platewright_generate. Change the tables, not this file.\n\n"
         "#include \"book/tables/built_in_rows.hpp\"\n\nnamespace platewright::tables {\n\n" +
         body + "\n}  // namespace platewright::tables\n";
}

}  // namespace platewright::generate
