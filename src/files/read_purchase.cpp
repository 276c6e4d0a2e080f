// SPDX-License-Identifier: MIT
// How an ingredient is bought, and what there is of it already.

#include <cctype>

#include "files/pack_content.hpp"
#include "files/reading.hpp"
#include "platewright/costing/unit_price.hpp"
#include "platewright/event/local_time.hpp"
#include "platewright/number/write.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/contradictions.hpp"
#include "platewright/problem/catalogue/larders.hpp"
#include "platewright/problem/catalogue/numbers.hpp"

namespace platewright::reading {
namespace {

/// `12.50/lb`: a bar before a word.
bool is_per_unit_by_a_bar(std::string_view text) {
  const std::size_t bar = text.find('/');
  if (bar == std::string_view::npos) return false;
  const std::string_view after = trimmed_spaces(text.substr(bar + 1));
  return !after.empty() && std::isalpha(static_cast<unsigned char>(after.front())) != 0;
}

/// `piece: 9 lb, price: 5.40`: of a pound, most likely, and of the piece as it stands.
void refuse_bare_price(const std::string& text, const Purchase& purchase) {
  const bool weighed = purchase.content.dimension() == UnitDimension::mass;
  if (!purchase.by_the_piece || !weighed) return;
  throw Failure(problems::piece_price_bare(
      text, as_short_decimal(purchase.content.number, 3) + " " + purchase.content.unit.name()));
}

/// `12.50` is for the pack; `8.95 per lb` is worked out for it.
PricedSum price_from(const std::string& text, const Purchase& purchase, const Reading& reading,
                     const Ingredient& ingredient) {
  const SplitText parts = split_at(text, " per ");
  if (is_per_unit_by_a_bar(parts.before)) throw Failure(problems::price_malformed(text));
  PricedSum out = read_priced(parts.before, reading);
  if (purchase.by_the_piece && parts.after == "piece") return out;
  if (parts.after.empty()) {
    refuse_bare_price(text, purchase);
    return out;
  }
  const Amount unit = reading.amount("1 " + parts.after);
  const Amount& content = purchase.weighs && same_measure(purchase.weighs->unit, unit.unit)
                              ? *purchase.weighs
                              : purchase.content;
  out.money = out.money * convert(content, unit.unit, ingredient.weights).amount.number;
  return out;
}

/// An amount above 0.
std::optional<Amount> content_of(yaml::Fields& buy, std::string_view key, const char* what,
                                 const std::function<Amount(const std::string&)>& read) {
  return buy.take<Amount>(key, [&](const std::string& text) {
    const Amount out = read(text);
    if (out.number <= 0) throw Failure(problems::number_not_positive(what, text));
    return out;
  });
}

/// What a pack or a piece is, without its price.
Purchase read_content(yaml::Fields& buy, const Reading& reading, const Ingredient& ingredient) {
  const auto plain = [&](const std::string& text) { return reading.amount(text); };
  const auto piece = content_of(buy, "piece", "a piece", plain);
  const auto pack = content_of(
      buy, "pack", "a pack", [&](const std::string& text) { return pack_content(text, reading); });
  const auto weighs = content_of(buy, "weighs", "a weight of a pack", plain);
  const auto spread = content_of(buy, "spread", "a spread", plain);
  if (!piece && !pack) throw Failure(problems::price_without_pack(ingredient.name));
  Purchase out{piece ? *piece : *pack};
  out.weighs = weighs;
  out.spread = spread;
  out.by_the_piece = piece.has_value();
  out.pack_text = piece ? "piece of about " + *buy.text("piece") : *buy.text("pack");
  return out;
}

/// How a supplier delivers.
struct Delivery {
  std::string supplier;
  std::optional<int> days;
  std::optional<LocalDay> on;
  Money deposit;
  std::optional<Integer> least;
};

Delivery read_delivery(yaml::Fields& buy, const Reading& reading) {
  Delivery out;
  out.supplier = buy.text("from").value_or("");
  out.on = buy.read<LocalDay>("on", [](const std::string& text) { return read_local_day(text); });
  out.deposit =
      buy.read<Money>("deposit",
                      [&](const std::string& text) { return read_priced(text, reading).money; })
          .value_or(Money());
  if (const auto days = buy.number("days")) {
    if (!is_whole(*days) || *days > 365) {
      throw Failure(problems::number_malformed(as_exact(*days), "whole days, at most 365"));
    }
    out.days = static_cast<int>(floor_of(*days));
  }
  if (const auto least = buy.number("least")) {
    if (!is_whole(*least) || *least < 1) {
      throw Failure(problems::number_malformed(as_exact(*least), "whole packs, 1 or more"));
    }
    out.least = floor_of(*least);
  }
  return out;
}

Purchase delivered(Purchase purchase, Delivery delivery) {
  purchase.supplier = std::move(delivery.supplier);
  purchase.days = delivery.days;
  purchase.on = delivery.on;
  purchase.deposit = std::move(delivery.deposit);
  purchase.least = std::move(delivery.least);
  return purchase;
}

/// `{name: fat, share: 6 %, worth: 0.40 per lb}`, or `used as: lamb bones` in place of the worth.
ByProduct by_product(yaml::Fields& fields, const Reading& reading) {
  const std::string name = fields.needed_text("name", "name: bones").value_or("");
  const Rational share = fields.share("share").value_or(0);
  if (fields.need("share", "share: 12 %") != nullptr && (share <= 0 || share >= 1)) {
    throw Failure(problems::share_out_of_range("a by-product", as_exact(share),
                                               "a share of the weight, above 0 and below 100 %"));
  }
  const auto worth = fields.text("worth");
  const std::string used_as = fields.text("used as").value_or("");
  if (worth.has_value() != used_as.empty()) {
    throw Failure(problems::by_product_counted_twice(name));
  }
  const SplitText parts = split_at(worth.value_or("0 per g"), " per ");
  return {name, share, read_priced(parts.before, reading).money,
          reading.amount("1 " + (parts.after.empty() ? "lb" : parts.after)).unit, used_as};
}

}  // namespace

Purchase read_purchase(yaml::Fields& buy, const Reading& reading, const Ingredient& ingredient) {
  buy.need("price", "price: 12.50");
  Delivery delivery = read_delivery(buy, reading);
  Purchase out = delivered(read_content(buy, reading, ingredient), std::move(delivery));
  out.place = buy.place();
  const auto price = buy.take<PricedSum>(
      "price", [&](const std::string& text) { return price_from(text, out, reading, ingredient); });
  if (price) {
    if (price->money <= Money()) {
      throw Failure(
          at(problems::price_of_nothing(ingredient.name), buy.place(*buy.find("price"), "price")));
    }
    out.price = price->money;
    out.written_in = price->written_in;
  }
  return out;
}

void read_store(yaml::Fields& fields, const Reading& reading, const Ingredient& ingredient,
                PriceEntry& prices) {
  read_keeping(fields, prices.keeping);
  prices.in_store = fields.read<Amount>("in store", [&](const std::string& text) {
    const Amount there = reading.amount(text);
    if (prices.purchases.empty()) return there;
    // In the measure that it is bought in, since it is taken off what is bought.
    return bought_for(there, Stage::purchased, ingredient, prices.purchases.front()).amount;
  });
  for (const yaml::Node& node : fields.list("by-products")) {
    yaml::Fields left(node, reading.context(), fields.path() + " > by-products", by_product_keys());
    left.finish(reading.problems.attempt(
        left.place(), [&] { prices.by_products.push_back(by_product(left, reading)); }));
  }
}

}  // namespace platewright::reading
