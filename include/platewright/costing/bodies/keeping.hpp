// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/keeping.hpp.

#include "platewright/costing/keeping.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string_view name_of(Storage storage) {
  switch (storage) {
    case Storage::dry:
      return "dry";
    case Storage::chilled:
      return "chilled";
    case Storage::frozen:
      return "frozen";
  }
  return {};
}

PLATEWRIGHT_BODY std::string_view where_kept(Storage storage) {
  switch (storage) {
    case Storage::dry:
      return "in the dry store";
    case Storage::chilled:
      return "in the cold room";
    case Storage::frozen:
      return "in the freezer";
  }
  return {};
}

}  // namespace platewright
