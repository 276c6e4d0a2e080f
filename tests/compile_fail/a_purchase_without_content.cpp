// SPDX-License-Identifier: MIT
// says: Purchase
// never says: boost::
// means: A pack that holds nothing has no price for a pound of it: there is none to be filled in
// means: later.
// do: Begin with what the pack holds and what it costs, `Purchase{25_lb, price}`.
#include "platewright/costing/purchase.hpp"
#include "platewright/quantity/literals.hpp"

using namespace platewright;
using namespace platewright::literals;

Purchase sack(const Money& price) {
#ifdef BAD_LINE
  Purchase flour;
  flour.price = price;
#else
  Purchase flour{25_lb, price};
#endif
  return flour;
}
