// SPDX-License-Identifier: MIT
#pragma once
// The sheet on which every price and every term of the quote stands, each in one cell.

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "platewright/costing/price_list.hpp"
#include "platewright/event/event.hpp"
#include "workbook/page.hpp"

namespace platewright::pages {

/// Of one of the goods, by its offer.
struct GoodsPlaces {
  CellPlace holds;      ///< content of a pack, in the pack's unit
  CellPlace pack_cost;  ///< in the book's currency
  std::optional<CellPlace> deposit;
  std::optional<CellPlace> credit;  ///< for the by-products of one unit of the content
};

/// What a supplier asks for; a place for what the book says.
struct SupplierPlaces {
  std::optional<CellPlace> minimum;
  std::optional<CellPlace> delivery_charge;
};

struct LabourPlaces {
  CellPlace rate;
  CellPlace benefits;
};

/// The cells of the price steps, from the fewest guests to the most.
struct StepPlaces {
  CellPlace first_from;
  CellPlace last_from;
  CellPlace first_off;
  CellPlace last_off;
};

/// What the book does not say has no place.
struct TermPlaces {
  std::vector<LabourPlaces> labour;  ///< in the order of the terms
  std::vector<CellPlace> extras;     ///< likewise
  CellPlace q_factor;
  CellPlace overhead;
  CellPlace overhead_of_event;
  std::optional<CellPlace> contingency;
  CellPlace rule_share;
  CellPlace price_step;
  std::optional<StepPlaces> steps;
  std::map<std::string, CellPlace> own_prices;  ///< of guests, by kind
  std::optional<CellPlace> minimum_charge;
  std::optional<CellPlace> minimum_price;
  std::optional<CellPlace> agreed_price;
  std::vector<CellPlace> discounts;  ///< each a share or a sum, in the order of the terms
  std::optional<CellPlace> service;
  std::optional<CellPlace> gratuity;
  std::vector<CellPlace> tax;               ///< of each rate
  std::optional<CellPlace> deposit;         ///< a share of the total, or a sum
  std::optional<CellPlace> second_deposit;  ///< likewise
};

struct PricePlaces {
  std::map<std::string, GoodsPlaces> goods;
  std::map<std::string, SupplierPlaces> suppliers;
  std::optional<TermPlaces> terms;
};

/// The sheet `Prices`; `goods` are the names of all that the other sheets buy.
PricePlaces write_prices(Page& page, const Event& event, const PriceList& prices,
                         const std::set<std::string>& goods);

/// The terms of the event's quote, below the prices.
TermPlaces write_terms(Page& page, const Event& event, const Currency& currency);

}  // namespace platewright::pages
