// SPDX-License-Identifier: MIT
#include "platewright/workbook/event_workbook.hpp"

#include <algorithm>
#include <set>

#include "support/catch.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

EventPlan plan_of(bool has_terms) {
  const TestKitchen kitchen = supper_kitchen();
  Event event = supper();
  event.has_terms = has_terms;
  return EventPlan(Occasion{event, kitchen.book, kitchen.prices});
}

const WorkbookSheet& sheet_of(const Workbook& book, const std::string& name) {
  const auto found = std::find_if(book.sheets.begin(), book.sheets.end(),
                                  [&](const WorkbookSheet& sheet) { return sheet.name == name; });
  REQUIRE(found != book.sheets.end());
  return *found;
}

/// The formula in a column of the last row that begins with a label.
const Formula& formula_beside(const WorkbookSheet& sheet, const std::string& label,
                              unsigned column) {
  unsigned row = 0;
  for (const WorkbookCell& cell : sheet.cells) {
    const auto* text = std::get_if<std::string>(&cell.content);
    if (cell.column == 0 && text != nullptr && *text == label) row = cell.row;
  }
  for (const WorkbookCell& cell : sheet.cells) {
    if (cell.row == row && cell.column == column) return std::get<Formula>(cell.content);
  }
  throw std::runtime_error("no formula beside " + label);
}

}  // namespace

TEST_CASE("a workbook's formulas come to what the plan comes to") {
  const EventPlan plan = plan_of(true);
  const Workbook book = event_workbook(plan);
  const auto in_units = [](const Money& sum) { return sum.in(units::currency_unit); };
  CHECK(formula_beside(sheet_of(book, "Cost"), "Food", 8).value == in_units(plan.cost().food));
  CHECK(formula_beside(sheet_of(book, "Order"), "Goods", 11).value == in_units(plan.order().total));
  CHECK(formula_beside(sheet_of(book, "Quote"), "TOTAL", 7).value == in_units(plan.quote().total));
}

TEST_CASE("every price of a workbook stands in one cell, and nothing else is to be changed") {
  const Workbook book = event_workbook(plan_of(true));
  for (const WorkbookSheet& sheet : book.sheets) {
    for (const WorkbookCell& cell : sheet.cells) {
      if (cell.role == CellRole::input) {
        CHECK(sheet.name == "Prices");
        CHECK(std::holds_alternative<Rational>(cell.content));
      }
    }
  }
}

TEST_CASE("no two cells of a workbook stand in one place") {
  for (const WorkbookSheet& sheet : event_workbook(plan_of(true)).sheets) {
    std::set<std::pair<unsigned, unsigned>> seen;
    for (const WorkbookCell& cell : sheet.cells) {
      CHECK(seen.insert({cell.row, cell.column}).second);
    }
  }
}

TEST_CASE("a discount and tax in the prices are formulas too") {
  const TestKitchen kitchen = supper_kitchen();
  Event event = supper();
  event.has_terms = true;
  event.terms.discounts = {{"for a returning client", fraction(1, 10), {}, {}}};
  event.terms.prices_include_tax = true;
  const EventPlan plan(Occasion{event, kitchen.book, kitchen.prices});
  const Quote quote = plan.quote();
  REQUIRE(quote.discounts.size() == 1);
  REQUIRE(quote.discounts.front().amount > Money());
  const Workbook book = event_workbook(plan);
  CHECK(formula_beside(sheet_of(book, "Quote"), "TOTAL", 7).value ==
        quote.total.in(units::currency_unit));
}

TEST_CASE("an event without terms has no sheet of a quote") {
  const Workbook book = event_workbook(plan_of(false));
  REQUIRE(book.sheets.size() == 3);
  CHECK(book.sheets.back().name == "Order");
}
