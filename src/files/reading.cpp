// SPDX-License-Identifier: MIT
#include "files/reading.hpp"

#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/recipes.hpp"

namespace platewright::reading {

SplitText split_at(std::string_view text, std::string_view separator) {
  const std::size_t found = text.find(separator);
  if (found == std::string_view::npos) return {std::string(trimmed_spaces(text)), {}};
  return {std::string(trimmed_spaces(text.substr(0, found))),
          std::string(trimmed_spaces(text.substr(found + separator.size())))};
}

std::vector<TextPair> text_pairs(yaml::Fields& fields, std::string_view key) {
  std::vector<TextPair> out;
  const yaml::Node* node = fields.find(key);
  if (node == nullptr || node->is_nothing()) return out;
  if (!node->is_map()) {
    std::string remedy = "write each as `name: value`";
    if (node->is_scalar() && key == "guests") {
      remedy = "write `guests: {adults: " + escaped(node->text) + "}`";
    }
    fields.context().problems.add(
        at(problems::wrong_shape(yaml::shape_of(*node), "a map of keys", std::move(remedy)),
           fields.place(*node, key)));
    return out;
  }
  for (const auto& [name, value] : node->entries) {
    const Place place = fields.place(value, std::string(key) + " > " + name.text);
    if (value.is_scalar()) {
      out.push_back({name.text, value.text, fields.place(name, key), place});
    } else {
      fields.context().problems.add(
          at(problems::wrong_shape(yaml::shape_of(value), "one value"), place));
    }
  }
  return out;
}

Length read_height(const std::string& text, const Reading& reading) {
  const Length height = to_length(reading.amount(text));
  if (height <= Length()) throw Failure(problems::number_not_positive("a height", text));
  return height;
}

TimeSpan read_time_span(std::string_view text, const Reading& reading) {
  // `2-3 h` and `12 to 48 h` are ranges of one unit; `12 h to 48 h` is two times.
  const SplitText parts = split_at(text, " to ");
  const bool two_times = !parts.after.empty() && read_number_prefix(parts.before).length <
                                                     trimmed_spaces(parts.before).size();
  if (!two_times) {
    const LineAmount range = reading.line_amount(text);
    if (range.to_taste()) throw Failure(problems::time_span_malformed(text));
    return {to_duration(*range.low()), to_duration(range.high().value_or(*range.low()))};
  }
  const Duration least = to_duration(reading.amount(parts.before));
  const Duration most = to_duration(reading.amount(parts.after));
  if (most < least) throw Failure(problems::time_span_malformed(text));
  return {least, most};
}

Money read_money(std::string_view text) {
  return Money::of(read_number(text), units::currency_unit);
}

void report_twice(const Reading& reading, std::string_view what, const std::string& name,
                  const Place& first, const Place& second) {
  reading.problems.add(
      at(problems::name_twice(what, name, first.file + ":" + std::to_string(first.line)), second));
}

}  // namespace platewright::reading
