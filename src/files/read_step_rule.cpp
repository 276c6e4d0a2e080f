// SPDX-License-Identifier: MIT
// Rules for steps of another country, or of a kitchen's own plan.

#include "files/reading.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/quantity/read_temperature.hpp"

namespace platewright::reading {

StepRule read_step_rule(yaml::Fields& fields, const Reading& reading, const std::string& source,
                        const std::string& row) {
  StepRule out;
  out.step = step_kind_from(fields.needed_text("step", "step: chill").value_or(""));
  out.where = fields.take<StepPlace>("where",
                                     [](const std::string& text) { return step_place_from(text); });
  out.demand = step_demand_from(fields.needed_text("demand", "demand: reaches").value_or(""));
  const auto at = fields.take<Temperature>(
      "at", [](const std::string& text) { return read_temperature(text); });
  const auto bound =
      fields.take<Bound>("bound", [](const std::string& text) { return bound_from(text); });
  if (at && !bound) throw Failure(problems::key_missing("bound", "bound: at most"));
  if (at) out.temperature = BoundTemperature{*at, *bound};
  out.within = fields.take<Duration>(
      "within", [&](const std::string& text) { return to_duration(reading.amount(text)); });
  out.source = source;
  out.row = row;
  out.note = fields.text("note").value_or("");
  check_complete(out);
  return out;
}

}  // namespace platewright::reading
