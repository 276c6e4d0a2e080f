// SPDX-License-Identifier: MIT
#include "workbook/prices_page.hpp"

#include "platewright/costing/by_products.hpp"

namespace platewright::pages {
namespace {

struct PriceColumn {
  enum : unsigned {
    name,
    supplier,
    pack,
    holds,
    unit,
    price,
    priced_by,
    times,
    currency,
    rate,
    pack_cost,
    deposit,
    credit
  };
};

/// The rates of foreign currencies, one cell each.
std::map<std::string, CellPlace> write_rates(Page& page, const PriceList& prices,
                                             const std::set<std::string>& goods) {
  std::map<std::string, CellPlace> out;
  for (const std::string& ingredient : goods) {
    const auto& foreign = prices.find(ingredient)->purchases.front().written_in;
    if (!foreign || out.count(foreign->currency.code()) > 0) continue;
    if (out.empty()) {
      page.headings({"Exchange rates", "whose", "", "", "", prices.currency.code() + " for 1"});
    }
    page.words(PriceColumn::name, foreign->currency.code());
    page.words(PriceColumn::supplier, foreign->source);
    out.emplace(foreign->currency.code(),
                page.input(PriceColumn::price, foreign->rate, CellLook::price));
    page.next();
  }
  if (!out.empty()) page.next();
  return out;
}

/// What is left of the goods and is credited: its worth is a price of its own. By the ingredient,
/// the terms whose sum is the credit for one unit of its content.
std::map<std::string, std::string> write_by_products(Page& page, const PriceList& prices,
                                                     const std::set<std::string>& goods) {
  std::map<std::string, std::string> out;
  for (const std::string& ingredient : goods) {
    const PriceEntry& entry = *prices.find(ingredient);
    const Unit& bought_in = entry.purchases.front().content.unit;
    for (const ByProduct& by_product : entry.by_products) {
      if (!by_product.used_as.empty()) continue;
      if (out.empty()) {
        page.headings({"By-products credited", "of", "", "Share", "", "Worth", "for", "times"});
      }
      const Rational units = in_unit(Amount{1, bought_in}, by_product.unit).number;
      page.words(PriceColumn::name, by_product.name);
      page.words(PriceColumn::supplier, ingredient);
      const auto share = page.number(PriceColumn::holds, by_product.share, CellLook::share);
      const auto worth = page.input(PriceColumn::price, plain(by_product.worth), CellLook::price);
      page.words(PriceColumn::priced_by, by_product.unit.symbol_for(1));
      const auto each = page.number(PriceColumn::times, units);
      std::string& sum = out[ingredient];
      sum += (sum.empty() ? "" : "+") + page.at(share) + "*" + page.at(worth) + "*" + page.at(each);
      page.next();
    }
  }
  if (!out.empty()) page.next();
  return out;
}

/// Goods by the piece have the price of a unit, all others that of a pack.
Amount priced_amount(const Purchase& purchase) {
  return purchase.by_the_piece ? Amount{1, trade_unit(purchase.content.unit)} : purchase.content;
}

/// The price as it is offered, and the cost of a pack that follows from it.
CellPlace write_price(Page& page, const Purchase& purchase, const PriceList& prices,
                      const std::map<std::string, CellPlace>& rates) {
  const Amount priced = priced_amount(purchase);
  const Rational units = in_unit(purchase.content, priced.unit).number / priced.number;
  const Rational foreign = purchase.written_in ? purchase.written_in->rate : Rational(1);
  const auto offered =
      page.input(PriceColumn::price, plain(purchase.price) / units / foreign, CellLook::price);
  page.words(PriceColumn::priced_by, purchase.by_the_piece ? priced.unit.symbol_for(1) : "a pack");
  const auto many = page.number(PriceColumn::times, units);
  const std::string code =
      purchase.written_in ? purchase.written_in->currency.code() : prices.currency.code();
  page.words(PriceColumn::currency, code);
  std::string cost = page.at(offered) + "*" + page.at(many);
  if (purchase.written_in) {
    const auto in_use =
        page.formula(PriceColumn::rate, page.at(rates.at(code)), foreign, CellLook::price);
    cost += "*" + page.at(in_use);
  }
  return page.formula(PriceColumn::pack_cost, cost, purchase.price, CellLook::price);
}

GoodsPlaces write_goods(Page& page, const std::string& ingredient, const PriceList& prices,
                        const std::map<std::string, CellPlace>& rates, const std::string& credit) {
  const PriceEntry& entry = *prices.find(ingredient);
  const Purchase& purchase = entry.purchases.front();
  page.words(PriceColumn::name, ingredient);
  page.words(PriceColumn::supplier, purchase.supplier);
  page.words(PriceColumn::pack, purchase.by_the_piece ? "a piece, about" : purchase.pack_text);
  GoodsPlaces out;
  out.holds = page.number(PriceColumn::holds, purchase.content.number);
  page.words(PriceColumn::unit, purchase.content.unit.symbol_for(purchase.content.number));
  out.pack_cost = write_price(page, purchase, prices, rates);
  if (purchase.deposit > Money()) {
    out.deposit = page.input(PriceColumn::deposit, plain(purchase.deposit), CellLook::money);
  }
  if (!credit.empty()) {
    const Money of_one = by_product_credit(entry, Amount{1, purchase.content.unit});
    out.credit = page.formula(PriceColumn::credit, credit, of_one, CellLook::price);
  }
  page.next();
  return out;
}

/// Of those that the goods come from, whoever asks for a least or for a charge.
std::map<std::string, SupplierPlaces> write_suppliers(Page& page, const PriceList& prices,
                                                      const std::set<std::string>& goods) {
  std::set<std::string> asked;
  for (const std::string& ingredient : goods) {
    asked.insert(prices.find(ingredient)->purchases.front().supplier);
  }
  std::map<std::string, SupplierPlaces> out;
  for (const auto& [who, terms] : prices.suppliers) {
    if (asked.count(who) == 0) continue;
    if (terms.minimum == Money() && terms.delivery_charge == Money()) continue;
    if (out.empty()) page.headings({"Suppliers", "", "", "", "", "Least order", "A delivery"});
    page.words(PriceColumn::name, who);
    SupplierPlaces& places = out[who];
    if (terms.minimum > Money()) {
      places.minimum = page.input(PriceColumn::price, plain(terms.minimum), CellLook::money);
    }
    if (terms.delivery_charge > Money()) {
      places.delivery_charge =
          page.input(PriceColumn::priced_by, plain(terms.delivery_charge), CellLook::money);
    }
    page.next();
  }
  if (!out.empty()) page.next();
  return out;
}

}  // namespace

PricePlaces write_prices(Page& page, const Event& event, const PriceList& prices,
                         const std::set<std::string>& goods) {
  page.begin("Prices: " + event.name,
             {"Change the coloured cells: cost, order and quote follow. All sums in " +
                  prices.currency.code() + " where no other currency is named.",
              "Amounts, numbers of guests, offers and whole pieces are those of the plan and do "
              "not follow: change them in the book."});
  PricePlaces out;
  const auto rates = write_rates(page, prices, goods);
  auto credits = write_by_products(page, prices, goods);
  page.headings({"Goods", "from", "Pack", "holds", "", "PRICE", "for", "times", "in", "at",
                 "A pack costs", "Deposit", "By-products of 1"});
  for (const std::string& ingredient : goods) {
    out.goods.emplace(ingredient,
                      write_goods(page, ingredient, prices, rates, credits[ingredient]));
  }
  page.next();
  out.suppliers = write_suppliers(page, prices, goods);
  if (event.has_terms) out.terms = write_terms(page, event, prices.currency);
  return out;
}

}  // namespace platewright::pages
