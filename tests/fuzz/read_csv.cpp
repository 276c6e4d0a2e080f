// SPDX-License-Identifier: MIT
// Whatever a supplier sends is a table of equal records, or problems.

#include "csv/read_csv.hpp"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace platewright;
  const std::string text(reinterpret_cast<const char*>(data), size);
  for (const char separator : {',', ';', '\t'}) {
    ProblemList problems;
    const auto table = csv::read_csv(text, "fuzzed.csv", separator, problems);
    if (table.has_value() == problems.has_errors()) std::abort();
    if (!table) continue;
    for (const csv::Record& record : table->records) {
      if (record.fields.size() != table->header.fields.size()) std::abort();
    }
  }
  return 0;
}
