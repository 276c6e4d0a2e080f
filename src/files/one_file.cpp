// SPDX-License-Identifier: MIT
#include "files/one_file.hpp"

#include "files/file_kind.hpp"
#include "files/keys/keys.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "yaml/read_yaml.hpp"

namespace platewright::reading {

std::optional<BookFile> read_one_file(const std::string& file, FileKind kind, const Book& book,
                                      ProblemList& problems) {
  const auto text = yaml::read_named(file, problems);
  if (!text) return std::nullopt;
  if (!may_be_ours(*text, file, problems)) return std::nullopt;
  auto root = yaml::read_yaml(*text, file, problems);
  if (!root) return std::nullopt;
  BookFile loaded{file, std::make_shared<const yaml::Node>(std::move(*root)), kind, true,
                  book.measures};
  yaml::Fields top(loaded.root(), {loaded.file, problems}, {}, keys_of(kind));
  if (!top.is_map()) return std::nullopt;
  const std::string key(name_of(kind));
  if (top.need(key, key + ": its name") == nullptr) return std::nullopt;
  const auto measures = top.read<MeasuringSystem>(
      "measures", [](const std::string& name) { return read_system(name); });
  loaded.measures = measures.value_or(book.measures);
  return loaded;
}

}  // namespace platewright::reading
