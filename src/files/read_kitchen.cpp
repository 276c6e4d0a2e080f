// SPDX-License-Identifier: MIT
// The kitchen that a book declares: what it measures and weighs with, how its cards are rounded,
// what it cooks in and who works in it.

#include "files/reading.hpp"
#include "platewright/kitchen/read_tools.hpp"

namespace platewright::reading {
namespace {

/// `1/4 tsp, 1 tsp` is a list, too.
std::vector<std::string> entries(yaml::Fields& fields, std::string_view key) {
  std::vector<std::string> out;
  for (const std::string& text : fields.texts(key)) {
    for (SplitText parts = split_at(text, ","); !parts.before.empty();
         parts = split_at(parts.after, ",")) {
      out.push_back(parts.before);
    }
  }
  return out;
}

/// Nothing where no key of it is there.
std::optional<Kitchen> kitchen_from(yaml::Fields& fields, const Reading& reading) {
  const UnitTable& units = reading.book.tables.units;
  Kitchen kitchen = usual_kitchen(reading.book.measures, units);
  bool said = false;
  const auto attempt = [&](std::string_view key, auto&& work) {
    if (const yaml::Node* value = fields.find(key)) {
      said = true;
      reading.problems.attempt(fields.place(*value, key), work);
    }
  };
  attempt("owns", [&] {
    kitchen.measures = read_measures(entries(fields, "owns"), kitchen.system, units);
  });
  attempt("scale",
          [&] { kitchen.scale = read_scale(entries(fields, "scale"), kitchen.system, units); });
  attempt("tolerance", [&] {
    if (const auto text = fields.text("tolerance")) kitchen.tolerance = read_tolerance(*text);
  });
  attempt("rounding", [&] {
    const auto text = fields.text("rounding");
    if (text) kitchen.rounding = read_rounding(*text, kitchen.system, units);
  });
  return said ? std::optional(std::move(kitchen)) : std::nullopt;
}

}  // namespace

void read_kitchen(const Reading& reading) {
  const Mapping& keys = keys_of(reading.file.kind);
  if (!keys.lists("kitchen")) return;
  yaml::Fields top(reading.file.root(), reading.context(), {}, keys);
  const yaml::Node* node = top.find("kitchen");
  if (node == nullptr) return;
  yaml::Fields fields(*node, reading.context(), "kitchen", kitchen_keys());
  std::optional<Kitchen> kitchen = kitchen_from(fields, reading);
  std::optional<Workplace> workplace = read_workplace(fields, reading);
  fields.finish();
  // Each by the first file that says something of it: a hall's ovens leave the cook's spoons alone.
  if (!reading.book.kitchen) reading.book.kitchen = std::move(kitchen);
  if (!reading.book.workplace) reading.book.workplace = std::move(workplace);
}

}  // namespace platewright::reading
