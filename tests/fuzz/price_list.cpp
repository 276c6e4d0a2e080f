// SPDX-License-Identifier: MIT
// Whatever a supplier's list and its header say, no row is lost unsaid, and the offers that are
// written can be read back as they are.

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "fuzz/files_of_input.hpp"
#include "fuzz/insist.hpp"
#include "platewright/files/read_book.hpp"
#include "platewright/files/take_in_prices.hpp"

namespace {

using namespace platewright;
using platewright::test::insist;

constexpr const char* larder =
    "currency: USD\nlarder:\n  salt: {weighs: {1 cup: 290 g}, allergens: none}\n"
    "  lamb: {cut: \"lamb leg, bone-in, roasted\", allergens: none}\n"
    "  eggs: {weighs: {1 each: 50 g}, allergens: [eggs]}\n";

/// The book of the larder alone, which stands in `folder`.
Book book_in(const std::filesystem::path& folder) {
  const std::filesystem::path file = folder / "larder.yaml";
  test::write_file(file, larder);
  ProblemList problems;
  auto book = read_book({file.string()}, problems);
  insist(book.has_value(), "the larder of this target can be read");
  return *std::move(book);
}

/// The text, read as a file beside the larder, holds `taken` offers at prices of 0 or more.
void check_read_back(const TakenPrices& taken, const std::filesystem::path& folder) {
  test::write_file(folder / "taken.yaml", taken.text);
  ProblemList problems;
  const auto book =
      read_book({(folder / "taken.yaml").string(), (folder / "larder.yaml").string()}, problems);
  insist(book.has_value(), "the offers that were written are read back");
  std::size_t offers = 0;
  for (const auto& [name, entry] : book->prices.entries) {
    offers += entry.purchases.size();
    for (const Purchase& purchase : entry.purchases) {
      insist(purchase.price >= Money(), "no price is below 0");
      insist(purchase.content.number > 0, "no pack is empty");
    }
  }
  insist(offers == taken.taken, "as many offers are read as were taken");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const test::TemporaryFolder folder;
  static const test::TemporaryFolder of_larder;
  static const Book book = book_in(of_larder.path());
  const std::vector<std::string> names = test::files_of_input(data, size, folder.path());
  const auto header = std::find_if(names.begin(), names.end(),
                                   [](const std::string& name) { return name.ends_with(".yaml"); });
  if (header == names.end()) return 0;
  const std::string file = (folder.path() / *header).string();
  for (const BadRows bad_rows : {BadRows::left_out, BadRows::refused}) {
    ProblemList problems;
    const auto taken = take_in_prices(file, book, problems, bad_rows);
    insist(taken.has_value() != problems.has_errors(), "offers, or errors");
    if (!taken) continue;
    insist(bad_rows == BadRows::left_out || taken->bad == 0, "no bad row is left out unasked");
    insist(taken->bad + taken->unmatched == 0 || !problems.all().empty(), "what is left is said");
    if (taken->taken > 0) check_read_back(*taken, of_larder.path());
    if (taken->bad == 0) break;  // the other way gives the same
  }
  return 0;
}
