#pragma once
// Purchases, plate costs and quotes.

#include "platewright/costing/bought_line.hpp"
#include "platewright/costing/by_products.hpp"
#include "platewright/costing/cost_of_food.hpp"
#include "platewright/costing/current_prices.hpp"
#include "platewright/costing/day_text.hpp"
#include "platewright/costing/make_quote.hpp"
#include "platewright/costing/plate_cost.hpp"
#include "platewright/costing/plate_price.hpp"
#include "platewright/costing/price_list.hpp"
#include "platewright/costing/purchase.hpp"
#include "platewright/costing/purchase_builders.hpp"
#include "platewright/costing/quote.hpp"
#include "platewright/costing/quote_checks.hpp"
#include "platewright/costing/quote_terms.hpp"
#include "platewright/costing/round_money.hpp"
#include "platewright/costing/unit_price.hpp"
