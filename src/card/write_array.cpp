// SPDX-License-Identifier: MIT
// One table of a sheet, flat: for a spreadsheet or a script.

#include "card/arrays.hpp"
#include "card/csv_fields.hpp"
#include "platewright/card/writers.hpp"
#include "platewright/number/write.hpp"

namespace platewright {
namespace detail {

std::string exact_field(const Rational& value) {
  std::string out = as_exact(value);
  if (const std::size_t bar = out.find('/'); bar != std::string::npos)
    out.replace(bar, 1, " over ");
  return out;
}

namespace {

std::string csv_of(const Array& array) {
  std::vector<Fields> fields(array.keys.size());
  for (const Row& row : array.rows) {
    for (std::size_t i = 0; i < row.size(); ++i) fields[i].need(row[i]);
  }
  Record heading;
  for (std::size_t i = 0; i < fields.size(); ++i) fields[i].name(heading, array.keys[i], '_');
  std::vector<Record> records{std::move(heading)};
  for (const Row& row : array.rows) {
    Record record;
    for (std::size_t i = 0; i < fields.size(); ++i) {
      fields[i].fill(record, i < row.size() ? row[i] : Cell{});
    }
    records.push_back(std::move(record));
  }
  return written(records);
}

}  // namespace
}  // namespace detail

std::vector<std::string> array_names(const Sheet& sheet) {
  std::vector<std::string> out;
  for (const detail::Array& array : detail::arrays_of(sheet)) out.push_back(array.name);
  return out;
}

std::optional<std::string> write_array(const Sheet& sheet, const std::string& name) {
  for (const detail::Array& array : detail::arrays_of(sheet)) {
    if (array.name == name) return detail::csv_of(array);
  }
  return std::nullopt;
}

}  // namespace platewright
