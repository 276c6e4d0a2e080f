// SPDX-License-Identifier: MIT
// A later price list: offers that join those of the larder.

#include "files/reading.hpp"
#include "platewright/event/local_time.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/larders.hpp"

namespace platewright::reading {
namespace {

/// Nothing where the offer is no map, which is reported.
std::optional<Purchase> offer_from(const yaml::Node& node, const std::string& path,
                                   const Reading& reading, const Ingredient& ingredient) {
  yaml::Fields fields(node, reading.context(), path, offer_keys());
  if (!fields.is_map()) return std::nullopt;
  Purchase out = read_purchase(fields, reading, ingredient);
  fields.finish();
  return out;
}

/// One offer of an ingredient, or a list of them.
void read_offers(const yaml::Node& name, const yaml::Node& node, const Reading& reading,
                 const std::string& supplier, const std::optional<LocalDay>& on) {
  const std::string path = "offers > " + in_quotes(name.text);
  const Ingredient& ingredient = reading.book.recipes.ingredient(name.text);
  const std::vector<yaml::Node> one{node};
  for (const yaml::Node& offer : node.is_list() ? node.items : one) {
    auto purchase = offer_from(offer, path, reading, ingredient);
    if (!purchase) continue;
    if (purchase->supplier.empty()) purchase->supplier = supplier;
    if (!purchase->on) purchase->on = on;
    reading.book.prices.add(name.text, std::move(*purchase));
  }
}

}  // namespace

void read_prices(const Reading& reading) {
  yaml::Fields top(reading.file.root(), reading.context(), {}, prices_keys());
  const std::string supplier = top.text("prices").value_or("");
  read_file_currency(top, reading);
  top.find("measures");
  top.find("with");
  const auto on =
      top.read<LocalDay>("on", [](const std::string& text) { return read_local_day(text); });
  const yaml::Node* offers = top.need("offers", "offers:\n  salt: {pack: 3 lb, price: 2.05}");
  if (offers != nullptr && !offers->is_map()) {
    reading.problems.add(at(problems::wrong_shape(yaml::shape_of(*offers), "a map of offers"),
                            top.place(*offers, "offers")));
  } else if (offers != nullptr) {
    for (const auto& [name, node] : offers->entries) {
      const auto& key = name;
      const auto& value = node;
      reading.problems.attempt(top.place(name, "offers"),
                               [&] { read_offers(key, value, reading, supplier, on); });
    }
  }
  top.finish();
}

}  // namespace platewright::reading
