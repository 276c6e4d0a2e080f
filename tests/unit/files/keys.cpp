// SPDX-License-Identifier: MIT
// The tables of keys, from which readers, messages, page and schemas are made.

#include <map>
#include <set>
#include <string>

#include "files/file_kind.hpp"
#include "files/keys/mappings_in.hpp"
#include "platewright/files/file_schema.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

template <class Work>
void for_each_mapping(Work&& work) {
  for (const FileKind kind : reading::book_kinds) {
    for (const reading::Mapping* mapping : reading::mappings_in(kind)) work(*mapping);
  }
  for (const FileKind kind : reading::single_kinds) {
    for (const reading::Mapping* mapping : reading::mappings_in(kind)) work(*mapping);
  }
}

}  // namespace

TEST_CASE("each key has a meaning and stands once in its table") {
  for_each_mapping([](const reading::Mapping& mapping) {
    std::set<std::string> seen;
    for (const reading::Key& key : mapping.keys) {
      CAPTURE(mapping.table, mapping.name, key.name);
      CHECK(seen.insert(std::string(key.name)).second);
      CHECK(key.meaning.size() > 3);
      CHECK(key.meaning.find('\n') == std::string::npos);
    }
  });
}

TEST_CASE("no two kinds of maps have one name") {
  std::map<std::string, const reading::Mapping*> seen;
  for_each_mapping([&](const reading::Mapping& mapping) {
    CHECK(seen.emplace(mapping.name, &mapping).first->second == &mapping);
  });
}

TEST_CASE("a key that holds maps says which") {
  using reading::KeyShape;
  const std::set<KeyShape> of_maps{KeyShape::map,           KeyShape::maps,
                                   KeyShape::maps_or_texts, KeyShape::named_maps,
                                   KeyShape::named_or_text, KeyShape::named_or_maps,
                                   KeyShape::rows};
  for_each_mapping([&](const reading::Mapping& mapping) {
    for (const reading::Key& key : mapping.keys) {
      CAPTURE(mapping.name, key.name);
      CHECK((key.holds != nullptr) == (of_maps.count(key.shape) > 0));
    }
  });
}

TEST_CASE("a schema has every key of its file, with its meaning") {
  const std::string schema = file_schema(FileKind::event);
  for (const reading::Mapping* mapping : reading::mappings_in(FileKind::event)) {
    for (const reading::Key& key : mapping->keys) {
      CAPTURE(key.name);
      CHECK(schema.find("\"" + std::string(key.name) + "\": {\"description\": \"" +
                        std::string(key.meaning) + "\"") != std::string::npos);
    }
  }
}
