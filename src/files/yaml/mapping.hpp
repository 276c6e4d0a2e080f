// SPDX-License-Identifier: MIT
#pragma once
// Which keys a map of a file takes, and what each of them means: one table for the reader, its
// messages, the page of keys and the schemas.

#include <span>
#include <string_view>

namespace platewright::yaml {

/// What stands behind a key.
enum class KeyShape {
  text,           ///< one value: an amount, a name, a share
  answer,         ///< `yes` or `no`
  texts,          ///< one value, or a list of values
  list,           ///< a list of values
  pairs,          ///< names of the user's own, a value behind each
  pairs_or_text,  ///< the same, or one value
  map,            ///< a map with keys of its own
  maps,           ///< a list of such maps
  maps_or_texts,  ///< a list in which each is such a map or one value
  named_maps,     ///< names of the user's own, such a map behind each
  named_or_text,  ///< the same, where one value may stand in place of a map
  named_or_maps,  ///< the same, where a list of maps may stand in place of one
  named_texts,    ///< names of the user's own, one value or a list of values behind each
  pairs_in_list,  ///< a list in which each is a name and a value, or a name
  rows,           ///< a list in which each is one value, a list of values or such a map
  anything,       ///< not looked at
};

struct Mapping;

enum class KeyNeed { optional, needed };

/// A key, and its meaning in one line.
struct Key {
  std::string_view name;
  KeyShape shape;
  KeyNeed need;
  std::string_view meaning;
  std::string_view example = {};           ///< a value as a cook types it
  const Mapping& (*holds)() = nullptr;     ///< the maps behind it, where there are any
  const Mapping& (*or_holds)() = nullptr;  ///< another kind of map that may stand there
};

/// The keys of one kind of map.
struct Mapping {
  std::string_view name;  ///< `step`: no two have one name
  std::string_view what;  ///< `a step of the method`
  std::span<const Key> keys;
  std::string_view table = {};   ///< the source with these keys, for whoever adds one
  std::string_view others = {};  ///< what its other keys are, where those are the user's own

  bool lists(std::string_view key) const {
    for (const Key& known : keys) {
      if (known.name == key) return true;
    }
    return false;
  }
};

/// Of maps that are no user's: the rows of the built-in tables.
inline const Mapping& any_keys() {
  static constexpr Mapping any{"any", "a row of the built-in tables", {}, {}, "any"};
  return any;
}

}  // namespace platewright::yaml
