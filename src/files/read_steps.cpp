// SPDX-License-Identifier: MIT
// The method of a recipe.

#include <algorithm>

#include "files/reading.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/catalogue/steps.hpp"
#include "platewright/quantity/read_temperature.hpp"

namespace platewright::reading {
namespace {

/// Whether `next` comes after `mark` in time, and further on the way that the food goes.
bool follows(const ReachedTemperature& next, const ReachedTemperature& mark, StepKind kind) {
  if (!mark.in || (next.in && *next.in <= *mark.in)) return false;
  return kind == StepKind::chill ? next.at < mark.at : next.at > mark.at;
}

/// `165 F`, `70 F in 2 h, 41 F in 6 h`. The last one may leave its time to that of the step.
std::vector<ReachedTemperature> read_reached(const std::string& text, StepKind kind,
                                             const Reading& reading) {
  std::vector<ReachedTemperature> out;
  std::string rest = text;
  while (!rest.empty()) {
    const SplitText marks = split_at(rest, ",");
    const SplitText mark = split_at(marks.before, " in ");
    ReachedTemperature reached;
    reached.at = read_temperature(mark.before);
    if (!mark.after.empty()) reached.in = to_duration(reading.amount(mark.after));
    const bool ordered = out.empty() || follows(reached, out.back(), kind);
    if (!ordered) throw Failure(problems::reached_malformed(text));
    out.push_back(reached);
    rest = marks.after;
  }
  if (out.empty()) throw Failure(problems::reached_malformed(text));
  return out;
}

/// Whether the step may have such a key, which is there; says so where it may not.
bool taken(yaml::Fields& fields, const Reading& reading, std::string_view key,
           const std::optional<StepKind>& kind, bool (*takes)(StepKind)) {
  const yaml::Node* node = fields.find(key);
  if (node == nullptr || (kind && takes(*kind))) return node != nullptr;
  // A kind that can't be read is a problem already.
  if (kind || fields.find("kind") == nullptr) {
    reading.problems.add(at(kind ? problems::step_key_not_taken(name_of(*kind), key)
                                 : problems::step_key_without_kind(key),
                            fields.place(*node, key)));
  }
  return false;
}

std::optional<StepControl> read_control(yaml::Fields& fields, const Reading& reading) {
  const auto kind =
      fields.read<StepKind>("kind", [](const std::string& text) { return step_kind_from(text); });
  StepControl out;
  if (kind) out.kind = *kind;
  if (taken(fields, reading, "where", kind, takes_place)) {
    out.where = fields.read<StepPlace>(
        "where", [](const std::string& text) { return step_place_from(text); });
  }
  if (taken(fields, reading, "at", kind, takes_temperature)) {
    out.at = fields.read<Temperature>(
        "at", [](const std::string& text) { return read_temperature(text); });
  }
  if (taken(fields, reading, "reaches", kind, takes_reached)) {
    out.reaches =
        fields
            .read<std::vector<ReachedTemperature>>(
                "reaches",
                [&](const std::string& text) { return read_reached(text, *kind, reading); })
            .value_or(std::vector<ReachedTemperature>());
  }
  return kind ? std::optional(std::move(out)) : std::nullopt;
}

/// How long frozen food takes goes by where it thaws, and no one sees from outside whether it has.
void check_thawing_is_said(yaml::Fields& fields, const StepControl& control) {
  if (control.kind != StepKind::thaw) return;
  fields.need("where", "where: refrigerator");
  fields.need("takes", "takes: 2 days to 3 days");
}

/// `hands: 4 min per leg by 2 people`, `role: cook`, `hobs: 2`.
StepNeeds read_needs(yaml::Fields& fields, const Recipe& recipe, const Reading& reading) {
  StepNeeds out;
  if (const auto hands = fields.read<StepTime>("hands", [&](const std::string& text) {
        return read_step_time(text, recipe, reading);
      })) {
    out.hands = hands->takes.most;
    out.hands_for = hands->grows;
  }
  out.role = fields.name("role").value_or("");
  out.hobs = fields.read<Rational>("hobs", [](const std::string& text) {
    const Rational hobs = read_number(text);
    if (hobs <= 0) throw Failure(problems::number_not_positive("a number of hobs", text));
    return hobs;
  });
  return out;
}

MethodStep read_step(const yaml::Node& item, const Recipe& recipe, const Reading& reading,
                     const std::string& path) {
  MethodStep step;
  step.place = Place{reading.file.file, item.line, item.column, path};
  if (item.is_scalar()) {
    step.text = item.text;
    return step;
  }
  yaml::Fields fields(item, reading.context(), path, step_keys());
  step.text = fields.needed_text("do", "do: Rub all over.").value_or("");
  step.uses = fields.texts("uses");
  if (const auto time = fields.read<StepTime>("takes", [&](const std::string& text) {
        return read_step_time(text, recipe, reading);
      })) {
    step.takes = time->takes;
    step.grows = time->grows;
  }
  step.oven = fields.flag("oven");
  step.control = read_control(fields, reading);
  step.needs = read_needs(fields, recipe, reading);
  if (step.control) check_thawing_is_said(fields, *step.control);
  fields.finish();
  return step;
}

}  // namespace

void read_steps(const Reading& reading, yaml::Fields& top, Recipe& recipe) {
  int number = 0;
  for (const yaml::Node& item : top.list("steps")) {
    const std::string path = top.path() + " > step " + std::to_string(++number);
    recipe.steps.push_back(read_step(item, recipe, reading, path));
  }
}

}  // namespace platewright::reading
