// SPDX-License-Identifier: MIT
// The codes of currencies against ISO 4217 as Debian's package iso-codes has it.

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <set>

#include "platewright/quantity/currency.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

const char* const list = "/usr/share/iso-codes/json/iso_4217.json";

/// ISO 4217, list one: funds codes, which nobody pays with (from memory).
const std::set<std::string> funds{"BOV", "CHE", "CHW", "CLF", "COU", "MXV", "USN", "UYI", "UYW"};
/// Metals, bond units, and codes for tests begin with X; of the others these four are currencies.
const std::set<std::string> with_an_x{"XAF", "XCD", "XOF", "XPF"};
/// Later than the list of iso-codes 4.15.
const std::set<std::string> newer{"XCG", "ZWG"};

}  // namespace

TEST_CASE("every currency of ISO 4217 is known, and nothing else is one") {
  if (!std::filesystem::exists(list)) {
    WARN("iso-codes is not installed: not compared");
    return;
  }
  std::ifstream file(list);
  std::set<std::string> expected = newer;
  const nlohmann::json published = nlohmann::json::parse(file);
  for (const auto& entry : published.at("4217")) {
    const std::string code = entry.at("alpha_3");
    if (funds.count(code) != 0 || (code[0] == 'X' && with_an_x.count(code) == 0)) continue;
    expected.insert(code);
  }
  CHECK(expected.size() > 150);
  CHECK(std::set<std::string>(currency_codes.begin(), currency_codes.end()) == expected);
}
