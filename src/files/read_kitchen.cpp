// The kitchen that a book declares: what it measures and weighs with, and how its cards are
// rounded.

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

Kitchen kitchen_from(const yaml::Node& node, const Reading& reading) {
  yaml::Fields fields(node, reading.context(), "kitchen");
  const UnitTable& units = reading.book.tables.units;
  Kitchen kitchen = usual_kitchen(reading.book.measures, units);
  const auto attempt = [&](std::string_view key, auto&& work) {
    if (const yaml::Node* value = fields.find(key)) {
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
  fields.finish();
  return kitchen;
}

}  // namespace

void read_kitchen(const Reading& reading) {
  yaml::Fields top(reading.file.root, reading.context(), {});
  const yaml::Node* node = top.find("kitchen");
  if (node == nullptr) return;
  Kitchen kitchen = kitchen_from(*node, reading);
  if (!reading.book.kitchen) reading.book.kitchen = std::move(kitchen);
}

}  // namespace platewright::reading
