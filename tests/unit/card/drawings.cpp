// SPDX-License-Identifier: MIT
// What is drawn on a page of HTML: where it stands, and what is said of it.

#include <string>

#include "card/sheets/plots.hpp"
#include "platewright/card/writers.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

std::string page_of(Picture picture) {
  Sheet sheet(SheetKind::day);
  sheet.add(std::move(picture));
  return write_html(sheet);
}

bool says(const std::string& page, const std::string& part) {
  return page.find(part) != std::string::npos;
}

Table numbers(const std::vector<std::pair<int, int>>& rows) {
  Table table{"t", "Curve", {figures_column("x", "X"), figures_column("y", "Y")}, {}, {}, {}};
  for (const auto& [x, y] : rows) {
    table.add({figure(x, std::to_string(x)), figure(y, std::to_string(y))});
  }
  return table;
}

std::vector<std::string> labels(const Axis& axis) {
  std::vector<std::string> out;
  for (const Tick& tick : axis.ticks) out.push_back(tick.label);
  return out;
}

}  // namespace

TEST_CASE("an axis runs between round numbers around all values") {
  CHECK(labels(card::axis_over("", {20, 47, 120})) ==
        std::vector<std::string>{"20", "40", "60", "80", "100", "120"});
  CHECK(labels(card::axis_over("", {fraction(1, 10), fraction(3, 10)})) ==
        std::vector<std::string>{"0.1", "0.15", "0.2", "0.25", "0.3"});
  CHECK(labels(card::axis_over("", {7})) == std::vector<std::string>{"7", "8"});
  CHECK(labels(card::axis_over("", {-3, 3})) ==
        std::vector<std::string>{"-3", "-2", "-1", "0", "1", "2", "3"});
}

TEST_CASE("whatever the values, an axis holds them in two to nine ticks") {
  for (int least = -1000; least <= 1000; least += 77) {
    for (int length = 1; length < 100000; length = length * 3 + 1) {
      const Rational low = fraction(least, 7);
      const Rational high = low + fraction(length, 13);
      const Axis axis = card::axis_over("", {high, low});
      CHECK(axis.from <= low);
      CHECK(axis.to >= high);
      CHECK(axis.ticks.size() >= 2);
      CHECK(axis.ticks.size() <= 9);
      CHECK(axis.ticks.front().at == axis.from);
      CHECK(axis.ticks.back().at == axis.to);
    }
  }
}

TEST_CASE("a table is drawn from its own figures, in the order of the axis") {
  Table table = numbers({{40, 10}, {20, 30}});
  table.add({words("no number"), figure(1, "1")});
  const Picture picture = card::drawn(table, 0, "Guests", {{1, "Price"}}, "USD");
  const Plot& plot = std::get<Plot>(picture.drawing);
  CHECK(plot.curves[0].points == std::vector<PlotPoint>{{20, 30}, {40, 10}});
  CHECK(static_cast<const Table&>(picture) == table);
  CHECK(card::drawn(numbers({}), 0, "Guests", {{1, "Price"}}, "USD").drawing != picture.drawing);
}

TEST_CASE("a picture is its table for every other writer") {
  Sheet drawn(SheetKind::guest_table);
  Sheet plain(SheetKind::guest_table);
  const Table table = numbers({{1, 2}, {3, 4}});
  drawn.add(card::drawn(table, 0, "Guests", {{1, "Price"}}, "USD"));
  plain.add(table);
  CHECK(write_text(drawn) == write_text(plain));
  CHECK(write_markdown(drawn) == write_markdown(plain));
  CHECK(write_csv(drawn) == write_csv(plain));
  CHECK(write_json(drawn) == write_json(plain));
}

TEST_CASE("a plot stands below its table, with its axes named and told in words") {
  const std::string page = page_of(
      card::drawn(numbers({{0, 0}, {10, 100}}), 0, "Guests", {{1, "Cost"}, {1, "Price"}}, "USD"));
  CHECK(page.find("<table") < page.find("<figure"));
  CHECK(says(page,
             "role=\"img\" aria-label=\"Curve: Cost, Price (USD) by Guests; the figures are "
             "in the table above\""));
  CHECK(says(page, "points=\"41,272 600,34\""));
  CHECK(says(page, ">USD</text>"));
  CHECK(says(page, ">100</text>"));
  CHECK(says(page, "stroke-dasharray=\"9 5\""));
}

TEST_CASE("lanes take the place of their signs, and say each time in words") {
  const Lanes lanes{
      {"", 0, 100, {{0, "14:00"}, {60, "15:00"}}},
      {{"Ovens",
        {{"deck oven", {{0, 50, "A", "A 14:00 to 14:50"}, {50, 51, "B", "B 14:50 to 14:51"}}}}}},
      {"A  lamb"}};
  const std::string page =
      page_of({Table{"p", "The day", {words_column("who", "Who")}, {}, {}, {"A sign"}}, lanes});
  CHECK(says(page, "aria-label=\"A 14:00 to 14:50, B 14:50 to 14:51\""));
  CHECK(says(page, "<rect x=\"22\" y=\"2\" width=\"258\" height=\"18\"/>"));
  CHECK(says(page, ">A</text>"));
  // Too short for its letter.
  CHECK_FALSE(says(page, ">B</text>"));
  CHECK(says(page, "<th scope=\"row\">deck oven</th>"));
  CHECK(says(page, "<p class=\"note\">A  lamb</p>"));
  CHECK_FALSE(says(page, "A sign"));
}
