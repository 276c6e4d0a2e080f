// SPDX-License-Identifier: MIT
#include "files/keys/mappings_in.hpp"

#include <algorithm>

namespace platewright::reading {

std::vector<const Mapping*> mappings_in(FileKind kind) {
  std::vector<const Mapping*> out{&keys_of(kind)};
  const auto add = [&](const Mapping& (*mapping)()) {
    if (mapping == nullptr) return;
    if (std::find(out.begin(), out.end(), &mapping()) == out.end()) out.push_back(&mapping());
  };
  // The list grows while it is walked.
  for (std::size_t i = 0; i < out.size(); ++i) {
    for (const Key& key : out[i]->keys) {
      add(key.holds);
      add(key.or_holds);
    }
  }
  return out;
}

}  // namespace platewright::reading
