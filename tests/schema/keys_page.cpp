// SPDX-License-Identifier: MIT
// What is made from the tables of keys:
//   keys_page page           the page examples/KEYS.md
//   keys_page schema KIND    the schema of a kind of file, as in `keys_page schema "price list"`
//   keys_page kinds          the kinds of files

#include <algorithm>
#include <array>
#include <exception>
#include <iostream>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include "files/file_kind.hpp"
#include "files/keys/mappings_in.hpp"
#include "platewright/files/file_schema.hpp"

namespace platewright::test {
namespace {

using reading::Mapping;

constexpr std::string_view head = R"(# Keys

Every key that a file may have, by kind of file. `*` marks a key that can't be left out. The page
is made from the tables by which files are read (build the target `renew_keys`). For an editor,
`schema` beside it has the same as JSON Schema. What is more to say of a key stands on the pages
that [README.md](README.md) lists.
)";

std::vector<FileKind> kinds() {
  std::vector<FileKind> out(reading::book_kinds.begin(), reading::book_kinds.end());
  out.insert(out.end(), reading::single_kinds.begin(), reading::single_kinds.end());
  return out;
}

/// Each kind of map once: those of one table stand together, those of no one kind of file last.
std::vector<const Mapping*> in_order() {
  std::vector<const Mapping*> all;
  std::vector<std::string_view> tables;
  for (const FileKind kind : kinds()) {
    tables.push_back(reading::keys_of(kind).table);
    for (const Mapping* mapping : reading::mappings_in(kind)) {
      if (std::find(all.begin(), all.end(), mapping) == all.end()) all.push_back(mapping);
    }
  }
  const auto rank = [&](const Mapping* mapping) {
    return std::find(tables.begin(), tables.end(), mapping->table) - tables.begin();
  };
  std::stable_sort(all.begin(), all.end(),
                   [&](const Mapping* a, const Mapping* b) { return rank(a) < rank(b); });
  return all;
}

/// A bar would end the cell.
std::string cell(std::string_view text) {
  std::string out;
  for (const char c : text) out += c == '|' ? std::string("\\|") : std::string(1, c);
  return out;
}

void write_table(const Mapping& mapping) {
  std::cout << "\n## " << mapping.what << "\n\n";
  if (!mapping.others.empty()) std::cout << "First " << mapping.others << "; then:\n\n";
  std::cout << "| key | | what it says | as in |\n|---|---|---|---|\n";
  for (const reading::Key& key : mapping.keys) {
    std::string meaning = cell(key.meaning);
    if (key.holds != nullptr) meaning += " (see _" + std::string(key.holds().what) + "_";
    if (key.or_holds != nullptr) meaning += ", _" + std::string(key.or_holds().what) + "_";
    if (key.holds != nullptr) meaning += ")";
    std::cout << "| `" << key.name << "` | " << (key.need == reading::KeyNeed::needed ? "*" : "")
              << " | " << meaning << " | "
              << (key.example.empty() ? std::string() : "`" + cell(key.example) + "`") << " |\n";
  }
}

FileKind kind_called(std::string_view name) {
  for (const FileKind kind : kinds()) {
    if (name_of(kind) == name) return kind;
  }
  throw std::runtime_error("no kind of file is called " + std::string(name));
}

void print(const std::vector<std::string>& words) {
  if (words.at(0) == "page") {
    std::cout << head;
    for (const Mapping* mapping : in_order()) write_table(*mapping);
  } else if (words.at(0) == "schema") {
    std::cout << file_schema(kind_called(words.at(1)));
  } else if (words.at(0) == "kinds") {
    for (const FileKind kind : kinds()) std::cout << name_of(kind) << "\n";
  } else {
    throw std::runtime_error("page, schema or kinds, not " + words[0]);
  }
}

}  // namespace
}  // namespace platewright::test

int main(int count, char** arguments) {
  try {
    platewright::test::print({arguments + 1, arguments + count});
    return 0;
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 2;
  }
}
