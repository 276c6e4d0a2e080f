// SPDX-License-Identifier: MIT
#include "card/sheets/order_amounts.hpp"
#include "card/sheets/shared.hpp"
#include "platewright/card/order_sheet.hpp"

namespace platewright {
namespace {

/// `50 lb at 52.00 from the mill`.
std::string offer_text(const Purchase& offer, const PriceList& prices) {
  const std::string pack =
      offer.by_the_piece ? card::amount_cell(offer.content, Rounding::half_up, 3).text + " a piece"
                         : offer.pack_text;
  return pack + " at " + card::money(offer.price, prices).text +
         (offer.supplier.empty() ? "" : " from " + offer.supplier);
}

}  // namespace

Box cheaper_offers_box(const CheaperOffers& cheaper, const PriceList& prices) {
  Box box{"cheaper_offers", "Cheaper for this order", {}};
  if (cheaper.too_many) {
    box.lines = {"The book has too many offers to compare them for so large an order."};
  }
  if (cheaper.others.empty()) return box;
  for (const OtherOffer& other : cheaper.others) {
    box.lines.push_back(other.ingredient + ": " + offer_text(other.instead, prices) + ", not " +
                        offer_text(other.now, prices));
  }
  box.lines.push_back("Together they save " + card::money(cheaper.saves, prices).text +
                      ", minimums and deliveries counted; `--cheapest` orders so.");
  if (cheaper.bound) {
    box.lines.push_back("Not all choices were looked at; none costs less than " +
                        card::money(*cheaper.bound, prices).text + ".");
  }
  return box;
}

}  // namespace platewright
