// SPDX-License-Identifier: MIT
// Whether each floor's umbrella header has all of it, all its bodies are compiled and read where
// all is in the headers, no two headers of different floors have one name, and the version is the
// package's: `check_umbrellas ROOT VERSION`.

#include <algorithm>
#include <exception>
#include <filesystem>
#include <iostream>
#include <map>
#include <stdexcept>
#include <string>

#include "support/folder.hpp"

namespace platewright::test {
namespace {

namespace fs = std::filesystem;

bool has_line(const std::string& text, const std::string& line) {
  const auto lines = lines_of(text);
  return std::find(lines.begin(), lines.end(), line) != lines.end();
}

/// Bodies are headers in name alone: they stand beside the headers whose functions they have.
bool has_bodies(const fs::path& inside) {
  return std::find(inside.begin(), inside.end(), "bodies") != inside.end();
}

/// Every bodies/X.hpp of the floor stands in `source`, which compiles it, and in X.hpp.
bool check_bodies(const fs::path& floor, const fs::path& source) {
  bool good = true;
  if (!fs::is_directory(floor / "bodies")) return good;
  for (const auto& entry : fs::recursive_directory_iterator(floor / "bodies")) {
    if (entry.is_directory()) continue;
    const std::string name = fs::relative(entry.path(), floor / "bodies").generic_string();
    const std::string line =
        "#include \"platewright/" + floor.filename().string() + "/bodies/" + name + "\"";
    for (const fs::path& reader : {source, floor / name}) {
      if (fs::is_regular_file(reader) && has_line(read_file(reader), line)) continue;
      good = false;
      std::cout << reader.string() << ": no line " << line << "\n";
    }
  }
  return good;
}

/// Every header of the floor, those of its `detail` left out, stands in FLOOR.hpp.
bool check_floor(const fs::path& floor) {
  const fs::path umbrella = floor.string() + ".hpp";
  if (!fs::is_regular_file(umbrella)) {
    std::cout << umbrella.string() << " is not there\n";
    return false;
  }
  const std::string text = read_file(umbrella);
  bool good = true;
  for (const auto& entry : fs::recursive_directory_iterator(floor)) {
    const fs::path inside = fs::relative(entry.path(), floor);
    if (entry.path().extension() != ".hpp" || *inside.begin() == "detail") continue;
    if (has_bodies(inside)) continue;
    const std::string line = "#include \"platewright/" + floor.filename().string() + "/" +
                             inside.generic_string() + "\"";
    if (has_line(text, line)) continue;
    good = false;
    std::cout << umbrella.string() << ": no line " << line << "\n";
  }
  return good;
}

/// Whoever reads `#include "platewright/.../tables.hpp"` must not wonder which one.
bool check_names(const fs::path& root) {
  std::map<std::string, std::string> known;
  bool good = true;
  for (const char* top : {"include", "src"}) {
    for (const auto& entry : fs::recursive_directory_iterator(root / top)) {
      const std::string place = fs::relative(entry.path(), root).string();
      if (entry.path().extension() != ".hpp" || has_bodies(place)) continue;
      const auto [first, is_new] = known.emplace(entry.path().filename().string(), place);
      // An umbrella and a header of the floor may share a name: `book.hpp`, `book/book.hpp`.
      const bool umbrella =
          place.find('/', std::string("include/platewright/").size()) == std::string::npos ||
          first->second.find('/', std::string("include/platewright/").size()) == std::string::npos;
      if (is_new || umbrella) continue;
      good = false;
      std::cout << place << " has the name of " << first->second << "\n";
    }
  }
  return good;
}

bool check(const fs::path& root, const std::string& version) {
  const fs::path headers = root / "include/platewright";
  bool good = check_names(root);
  for (const auto& entry : fs::directory_iterator(headers)) {
    // The interface for C is one header, and no C++.
    if (entry.path().filename() == "c") continue;
    if (!entry.is_directory()) continue;
    if (!check_floor(entry.path())) good = false;
    const fs::path source = root / "src/core" / (entry.path().filename().string() + ".cpp");
    if (!check_bodies(entry.path(), source)) good = false;
  }
  const std::string line = "#define PLATEWRIGHT_VERSION \"" + version + "\"";
  if (!has_line(read_file(headers / "version.hpp"), line)) {
    good = false;
    std::cout << "version.hpp: no line " << line << "\n";
  }
  return good;
}

}  // namespace
}  // namespace platewright::test

int main(int count, char** arguments) {
  try {
    if (count != 3) throw std::runtime_error("check_umbrellas ROOT VERSION");
    return platewright::test::check(arguments[1], arguments[2]) ? 0 : 1;
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 2;
  }
}
