// SPDX-License-Identifier: MIT
#pragma once
// Every recipe or ingredient of a book changed in turn.

#include <utility>

#include "platewright/recipe/by_name.hpp"

namespace platewright::test {

template <class Value, class Work>
void change_each(ByName<Value>& all, Work&& work) {
  const ByName<Value> before = all;
  for (const auto& [name, value] : before) all.change(name, work);
}

}  // namespace platewright::test
