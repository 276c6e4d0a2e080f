// SPDX-License-Identifier: MIT
// One amount has one figure on a cost sheet.

#include "platewright/card/cost_sheet.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// Used and as bought, of one line.
std::vector<std::string> columns_of(const char* used, const char* purchased) {
  CostLine line;
  line.name = "eggs";
  line.used = amount(used);
  line.purchased = amount(purchased);
  PlateCost cost;
  cost.lines = {line};
  const Sheet sheet = cost_sheet(cost, {});
  for (const Block& block : sheet.blocks) {
    const auto* table = std::get_if<Table>(&block);
    if (table == nullptr || table->key != "lines") continue;
    const Row& row = table->groups.front().rows.front();
    return {row[1].text, row[2].text};
  }
  return {};
}

using Columns = std::vector<std::string>;

}  // namespace

TEST_CASE("what is bought as it is used is one figure in both columns") {
  CHECK(columns_of("28.125 each", "28.125 each") == Columns{"28.125 each", "28.125 each"});
  CHECK(columns_of("28.125 oz", "2 lb") == Columns{"28.13 oz", "2 lb"});
}
