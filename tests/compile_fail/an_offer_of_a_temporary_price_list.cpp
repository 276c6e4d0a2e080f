// SPDX-License-Identifier: MIT
// says: preferred_purchase
// says: PriceList
// says: delete
// never says: boost::
// means: The offer lives in the price list, and the list is gone as soon as the line is over.
// do: Keep the list under a name for as long as its offers are used.
#include "platewright/costing/bought_line.hpp"

using namespace platewright;

PriceList prices_of_today();

Money price_of_flour() {
#ifdef BAD_LINE
  const Purchase* offer = preferred_purchase("flour", prices_of_today(), {});
#else
  const PriceList prices = prices_of_today();
  const Purchase* offer = preferred_purchase("flour", prices, {});
#endif
  return offer->price;
}
