// SPDX-License-Identifier: MIT
// says: Amount
// never says: boost::
// means: An amount is a number and a unit from the beginning: there is none to be filled in later.
// do: Say what it is, `Amount salt = 10_oz`, or keep a std::optional<Amount>.
#include "platewright/quantity/amount.hpp"
#include "platewright/quantity/literals.hpp"

using namespace platewright;
using namespace platewright::literals;

std::string salt_text() {
#ifdef BAD_LINE
  Amount salt;
#else
  Amount salt = 10_oz;
#endif
  return amount_text(salt);
}
