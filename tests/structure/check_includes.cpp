// SPDX-License-Identifier: MIT
// Walks the #include lines and reports each that runs up the house or reaches for a library that
// lives on another floor: `check_includes ROOT`, or `check_includes` alone for its own test.

#include <algorithm>
#include <array>
#include <cstddef>
#include <exception>
#include <filesystem>
#include <iostream>
#include <string>
#include <vector>

#include "support/folder.hpp"

namespace platewright::test {
namespace {

namespace fs = std::filesystem;
using Lines = std::vector<std::string>;

/// From the ground up. Each floor includes itself and the floors before it, but no other of the
/// same height: what reads files and what writes sheets know nothing of each other.
struct Floor {
  const char* name;
  int height;
};
constexpr std::array<Floor, 18> floors{{{"problem", 0},
                                        {"number", 1},
                                        {"quantity", 2},
                                        {"kitchen", 3},
                                        {"safety", 4},
                                        {"yield", 5},
                                        {"worksheet", 6},
                                        {"heat", 7},
                                        {"recipe", 8},
                                        {"costing", 9},
                                        {"event", 10},
                                        {"day", 11},
                                        {"book", 12},
                                        {"files", 13},
                                        {"card", 13},
                                        {"workbook", 13},
                                        {"c", 14},
                                        {"cli", 14}}};

struct Room {
  const char* owned;
  /// The only places, from the root, that may include it.
  std::vector<std::string> places;
};

const std::vector<Room>& rooms() {
  static const std::vector<Room> list{
      {"boost/units/", {"include/platewright/quantity/"}},
      {"boost/mpl/", {"include/platewright/quantity/"}},
      {"boost/multiprecision/", {"include/platewright/number/"}},
      {"yaml-cpp/", {"src/files/"}},
      {"date/", {"src/files/"}},
      {"nlohmann/", {"src/card/"}},
      {"utf8proc.h", {"src/card/", "src/files/yaml/"}},
      {"CLI/", {"src/cli/"}},
      {"xlsxwriter", {"src/workbook/"}},
      {"iostream", {"src/cli/", "src/generate/"}},
  };
  return list;
}

bool begins(const std::string& text, const std::string& prefix) {
  return text.compare(0, prefix.size(), prefix) == 0;
}

/// The floor of a file named from the root, or `floors.size()` if it stands on none.
std::size_t floor_of(const std::string& file) {
  for (std::size_t i = 0; i < floors.size(); ++i) {
    const std::string name = floors[i].name;
    const bool here = begins(file, "include/platewright/" + name + "/") ||
                      file == "include/platewright/" + name + ".hpp" ||
                      begins(file, "src/" + name + "/");
    if (here) return i;
  }
  return floors.size();
}

/// The file that an include line names, from the root, or nothing for a header of another project.
std::string resolved(const fs::path& root, const fs::path& file, const std::string& named) {
  // What the generator writes stands in quantity/, though not in the source tree.
  if (begins(named, "platewright/quantity/")) return "include/" + named;
  for (const std::string& folder : {file.parent_path().string(), std::string("include"),
                                    std::string("src"), std::string("src/files")}) {
    const fs::path candidate = (fs::path(folder) / named).lexically_normal();
    if (fs::is_regular_file(root / candidate)) return candidate.string();
  }
  return {};
}

/// What stands between the quotes or brackets of an include line; nothing for another line.
std::string included(const std::string& line) {
  std::size_t at = line.find_first_not_of(' ');
  if (at == std::string::npos || line[at] != '#') return {};
  at = line.find_first_not_of(' ', at + 1);
  if (at == std::string::npos || line.compare(at, 7, "include") != 0) return {};
  const std::size_t open = line.find_first_of("\"<", at);
  const std::size_t close = line.find_first_of("\">", open + 1);
  if (open == std::string::npos || close == std::string::npos) return {};
  return line.substr(open + 1, close - open - 1);
}

/// Why `file` may not include `named`; nothing if it may.
std::string objection(const fs::path& root, const std::string& file, const std::string& named) {
  for (const Room& room : rooms()) {
    const bool at_home = std::any_of(room.places.begin(), room.places.end(),
                                     [&](const std::string& place) { return begins(file, place); });
    if (begins(named, room.owned) && !at_home) return std::string(room.owned) + " lives elsewhere";
  }
  const std::string target = resolved(root, file, named);
  if (target.empty()) {
    return begins(named, "platewright/") ? "there is no such header" : std::string();
  }
  const std::size_t there = floor_of(target);
  if (begins(file, "include/") && begins(target, "src/"))
    return "a public header includes a private one";
  // The YAML reader and the generator are built before the tables are there.
  if (begins(file, "src/files/yaml/") || begins(file, "src/generate/")) {
    const std::size_t highest = begins(file, "src/generate/") ? 2 : 1;
    const bool good =
        there <= highest || begins(target, "src/files/yaml/") || begins(target, "src/generate/");
    return good ? std::string() : std::string("stands above what is built first");
  }
  if (begins(target, "src/generate/")) return "the generator is a program of its own";
  const std::size_t here = floor_of(file);
  if (here == floors.size() || there == floors.size() || there == here) return {};
  if (floors[there].height < floors[here].height) return {};
  const char* where =
      floors[there].height == floors[here].height ? " stands beside " : " stands below ";
  return std::string(floors[here].name) + where + floors[there].name;
}

Lines violations(const fs::path& root) {
  Lines found;
  for (const char* top : {"include", "src"}) {
    if (!fs::is_directory(root / top)) continue;
    for (const auto& entry : fs::recursive_directory_iterator(root / top)) {
      const std::string extension = entry.path().extension().string();
      if (extension != ".hpp" && extension != ".cpp") continue;
      const std::string file = fs::relative(entry.path(), root).string();
      std::size_t number = 0;
      for (const std::string& line : lines_of(read_file(entry.path()))) {
        ++number;
        const std::string named = included(line);
        const std::string why = named.empty() ? std::string() : objection(root, file, named);
        if (!why.empty()) {
          std::string place = file;
          place.append(":").append(std::to_string(number)).append(": ");
          found.push_back(place.append(named).append(" (").append(why).append(")"));
        }
      }
    }
  }
  std::sort(found.begin(), found.end());
  return found;
}

/// Plants one fault of each kind and one good line of each kind beside it.
bool finds_planted_faults() {
  struct Planted {
    const char* file;
    const char* line;
    bool is_fault;
  };
  const std::vector<Planted> planted{
      {"include/platewright/number/a.hpp", "#include \"platewright/yield/b.hpp\"", true},
      {"include/platewright/yield/b.hpp", "#include \"platewright/number/a.hpp\"", false},
      {"include/platewright/yield/c.hpp", "#  include <boost/units/dimension.hpp>", true},
      {"include/platewright/quantity/d.hpp", "#include <boost/units/dimension.hpp>", false},
      {"include/platewright/event/e.hpp", "#include \"platewright/book/f.hpp\"", true},
      {"include/platewright/book/f.hpp", "#include \"yaml/node.hpp\"", true},
      {"src/files/g.cpp", "#include \"yaml/node.hpp\"", false},
      {"src/files/yaml/node.hpp", "#include \"platewright/yield/b.hpp\"", true},
      {"src/book/h.cpp", "#include \"platewright/card/i.hpp\"", true},
      {"src/card/q.cpp", "#include \"platewright/files/s.hpp\"", true},
      {"src/files/r.cpp", "#include \"platewright/card/i.hpp\"", true},
      {"include/platewright/files/s.hpp", "#include \"platewright/book/f.hpp\"", false},
      {"include/platewright/yield.hpp", "#include \"platewright/recipe/o.hpp\"", true},
      {"include/platewright/card/i.hpp", "#include \"platewright/book/f.hpp\"", false},
      {"src/card/j.cpp", "#include <yaml-cpp/eventhandler.h>", true},
      {"include/platewright/event/t.hpp", "#include <date/tz.h>", true},
      {"src/files/u.cpp", "#include <date/tz.h>", false},
      {"src/card/k.cpp", "#include <nlohmann/json.hpp>", false},
      {"src/cli/l.cpp", "#include <nlohmann/json.hpp>", true},
      {"src/cli/m.cpp", "#include <CLI/CLI.hpp>", false},
      {"src/card/v.cpp", "#include <xlsxwriter.h>", true},
      {"src/workbook/w.cpp", "#include <xlsxwriter.h>", false},
      {"src/workbook/x.cpp", "#include \"platewright/card/i.hpp\"", true},
      {"src/c/y.cpp", "#include \"platewright/files/s.hpp\"", false},
      {"src/files/z.cpp", "#include \"c/y.hpp\"", true},
      {"src/c/y.hpp", "#include \"platewright/files/s.hpp\"", false},
      {"src/generate/n.cpp", "#include \"platewright/yield/b.hpp\"", true},
      {"include/platewright/heat/q.hpp", "#include \"platewright/recipe/p.hpp\"", true},
      {"include/platewright/heat/r.hpp", "#include \"platewright/yield/b.hpp\"", false},
      {"include/platewright/recipe/o.hpp", "#include \"platewright/recipe/gone.hpp\"", true},
      {"include/platewright/recipe/p.hpp", "// #include \"platewright/book/f.hpp\"", false},
  };
  const TemporaryFolder folder;
  for (const Planted& file : planted)
    write_file(folder.path() / file.file, std::string(file.line) + "\n");
  const Lines found = violations(folder.path());
  bool good = true;
  for (const Planted& file : planted) {
    const bool reported = std::any_of(found.begin(), found.end(), [&](const std::string& text) {
      return begins(text, std::string(file.file) + ":1: ");
    });
    if (reported == file.is_fault) continue;
    good = false;
    std::cout << file.file << ": " << file.line
              << (reported ? " is reported\n" : " is not found\n");
  }
  return good;
}

}  // namespace
}  // namespace platewright::test

int main(int count, char** arguments) {
  try {
    if (count == 1) return platewright::test::finds_planted_faults() ? 0 : 1;
    const auto found = platewright::test::violations(arguments[1]);
    for (const std::string& line : found) std::cout << line << "\n";
    return found.empty() ? 0 : 1;
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 2;
  }
}
