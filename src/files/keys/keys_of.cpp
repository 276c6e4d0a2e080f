// SPDX-License-Identifier: MIT
#include "files/keys/keys.hpp"

namespace platewright::reading {

const Mapping& keys_of(FileKind kind) {
  switch (kind) {
    case FileKind::recipe:
      return recipe_keys();
    case FileKind::larder:
      return larder_keys();
    case FileKind::event:
      return event_keys();
    case FileKind::tables:
      return own_tables_keys();
    case FileKind::prices:
      return prices_keys();
    case FileKind::worksheet:
      return worksheet_keys();
    case FileKind::trials:
      return trials_keys();
    case FileKind::price_list:
      return price_list_keys();
  }
  return yaml::any_keys();
}

}  // namespace platewright::reading
