// SPDX-License-Identifier: MIT
// What a kitchen cooks in, and who works in it.

#include "files/reading.hpp"
#include "platewright/files/read_vessel.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/days.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/quantity/read_temperature.hpp"

namespace platewright::reading {

std::optional<std::chrono::minutes> minute_of_day(std::string_view text) {
  const auto digit = [&](std::size_t at) { return text[at] >= '0' && text[at] <= '9'; };
  if (text.size() != 5 || text[2] != ':' || !digit(0) || !digit(1) || !digit(3) || !digit(4)) {
    return std::nullopt;
  }
  const auto number = [&](std::size_t at) { return (text[at] - '0') * 10 + (text[at + 1] - '0'); };
  const int minutes = number(0) * 60 + number(3);
  if (number(3) > 59 || minutes > 24 * 60) return std::nullopt;
  return std::chrono::minutes(minutes);
}

namespace {

/// More of anything is a slip.
constexpr int most_of_a_kitchen = 1000;

Rational read_count(std::string_view what, const std::string& text) {
  const Rational count = read_number(text);
  if (!is_whole(count) || count < 1 || count > most_of_a_kitchen) {
    throw Failure(problems::count_too_large(what, text));
  }
  return count;
}

/// `10 of full sheet pan`.
PanSpace read_pan_space(const std::string& text, const Reading& reading) {
  const SplitText parts = split_at(text, " of ");
  if (parts.after.empty()) throw Failure(problems::pan_space_malformed(text));
  PanSpace out;
  out.holds = read_count("places for pans:", parts.before);
  const RecipeVessel pan =
      read_vessel(parts.after, "pan", reading.book.tables, reading.file.measures);
  out.pan = pan.name;
  out.bottom = pan.bottom;
  return out;
}

ClockHours read_hours(const std::string& text) {
  const SplitText parts = split_at(text, " to ");
  const auto from = minute_of_day(parts.before);
  const auto until = minute_of_day(parts.after);
  if (!from || !until || *from == std::chrono::hours(24)) {
    throw Failure(problems::hours_malformed(text));
  }
  return {*from, *until};
}

Oven read_oven(yaml::Fields& fields, const Reading& reading) {
  const auto temperature = [&](std::string_view key) {
    return fields.read<Temperature>(key,
                                    [](const std::string& text) { return read_temperature(text); });
  };
  Oven out;
  out.place = fields.place();
  fields.need("oven", "oven: the upper deck");
  out.name = fields.name("oven").value_or("");
  fields.need("racks", "racks: 5 of full sheet pan");
  const auto racks = fields.read<PanSpace>(
      "racks", [&](const std::string& text) { return read_pan_space(text, reading); });
  if (racks) out.racks = *racks;
  out.fan = fields.flag("fan");
  out.apart = fields.read<Length>(
      "apart", [&](const std::string& text) { return read_height(text, reading); });
  out.lowest = temperature("from");
  out.highest = temperature("to");
  if (out.lowest && out.highest && *out.highest < *out.lowest) {
    reading.problems.add(at(problems::oven_range_backwards(fields.text("from").value_or(""),
                                                           fields.text("to").value_or("")),
                            fields.place()));
  }
  const auto change = fields.read<Duration>(
      "change", [&](const std::string& text) { return to_duration(reading.amount(text)); });
  if (change) out.change = *change;
  fields.finish();
  return out;
}

void read_ovens(yaml::Fields& kitchen, const Reading& reading, Workplace& out) {
  for (const yaml::Node& item : kitchen.list("ovens")) {
    yaml::Fields fields(item, reading.context(), kitchen.path() + " > ovens", oven_keys());
    Oven oven = read_oven(fields, reading);
    for (const Oven& other : out.ovens) {
      if (other.name == oven.name && !oven.name.empty()) {
        report_twice(reading, "oven", oven.name, other.place, oven.place);
      }
    }
    out.ovens.push_back(std::move(oven));
  }
}

void read_people(yaml::Fields& kitchen, const Reading& reading, Workplace& out) {
  for (const yaml::Node& item : kitchen.list("people")) {
    yaml::Fields fields(item, reading.context(), kitchen.path() + " > people", crew_keys());
    Crew crew;
    crew.place = fields.place();
    fields.need("role", "role: cook");
    crew.role = fields.name("role").value_or("");
    crew.workers = fields
                       .read<Rational>("workers",
                                       [](const std::string& text) {
                                         return read_count("a number of workers:", text);
                                       })
                       .value_or(1);
    crew.hours = fields.read<ClockHours>("hours", read_hours).value_or(ClockHours());
    fields.finish();
    out.people.push_back(std::move(crew));
  }
}

}  // namespace

std::optional<Workplace> read_workplace(yaml::Fields& kitchen, const Reading& reading) {
  bool said = false;
  for (const char* key : {"ovens", "hobs", "hot box", "cold room", "people"}) {
    said = kitchen.find(key) != nullptr || said;
  }
  const auto space = [&](std::string_view key) {
    return kitchen.read<PanSpace>(
        key, [&](const std::string& text) { return read_pan_space(text, reading); });
  };
  Workplace out;
  read_ovens(kitchen, reading, out);
  out.hobs = kitchen.read<Rational>(
      "hobs", [](const std::string& text) { return read_count("a number of hobs:", text); });
  out.hot_box = space("hot box");
  out.cold_room = space("cold room");
  read_people(kitchen, reading, out);
  return said ? std::optional(std::move(out)) : std::nullopt;
}

}  // namespace platewright::reading
