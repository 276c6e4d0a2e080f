// SPDX-License-Identifier: MIT
// A line that must not compile, and its good twin:
//   compile_case check CASE KIND COMMAND...    KIND is gnu or clang, COMMAND... compiles {source}
//   compile_case page CASE...                  prints the page that is made from the cases
//
// A case file is one program with `#ifdef BAD_LINE`, the bad line, `#else`, the good one, `#endif`,
// and comments that say what a reader of the compiler's message needs:
//   // says: WORDS            must stand in the message (any number of such lines)
//   // says to gnu: WORDS     the same, for one compiler only (or clang)
//   // never says: WORDS      must not
//   // short                  the message is ours: at most 800 bytes from g++, 2000 from clang
//   // means: TEXT            what the message means (lines are joined)
//   // do: TEXT               what to do about it

#include <algorithm>
#include <cstddef>
#include <exception>
#include <filesystem>
#include <iostream>
#include <stdexcept>
#include <string>
#include <vector>

#include "support/folder.hpp"
#include "support/process.hpp"

namespace platewright::test {
namespace {

namespace fs = std::filesystem;
using Lines = std::vector<std::string>;

struct CompileCase {
  std::string name;
  Lines says;
  Lines says_to_gnu;
  Lines says_to_clang;
  Lines never_says;
  bool is_short = false;
  std::string means;
  std::string advice;
  Lines bad;
  Lines good;
};

void append(std::string& text, const std::string& more) {
  text += (text.empty() ? "" : " ") + more;
}

CompileCase read_compile_case(const fs::path& file) {
  CompileCase out;
  out.name = file.stem().string();
  enum class Part { common, bad, good } part = Part::common;
  for (const std::string& line : lines_of(read_file(file))) {
    std::string rest;
    if (takes(line, "// says: ", rest)) out.says.push_back(rest);
    if (takes(line, "// says to gnu: ", rest)) out.says_to_gnu.push_back(rest);
    if (takes(line, "// says to clang: ", rest)) out.says_to_clang.push_back(rest);
    if (takes(line, "// never says: ", rest)) out.never_says.push_back(rest);
    if (takes(line, "// means: ", rest)) append(out.means, rest);
    if (takes(line, "// do: ", rest)) append(out.advice, rest);
    if (line == "// short") out.is_short = true;
    if (line == "#ifdef BAD_LINE") {
      part = Part::bad;
    } else if (line == "#else") {
      part = Part::good;
    } else if (line == "#endif") {
      part = Part::common;
    } else if (part != Part::common) {
      (part == Part::bad ? out.bad : out.good).push_back(line);
    }
  }
  if (out.says.empty() && out.says_to_gnu.empty()) {
    throw std::runtime_error(out.name + ": no line \"// says: ...\"");
  }
  if (out.means.empty() || out.advice.empty() || out.bad.empty() || out.good.empty()) {
    throw std::runtime_error(out.name + ": lacks its meaning, its advice, or one of the two lines");
  }
  return out;
}

Outcome compiled(Lines command, const fs::path& source, bool bad) {
  for (std::string& word : command) {
    if (word == "{source}") word = source.filename().string();
  }
  if (bad) command.emplace_back("-DBAD_LINE");
  // Quotation marks in the compiler's messages depend on the locale.
  command.insert(command.begin(), {"env", "LC_ALL=C"});
  return run(command, source.parent_path(), 120);
}

/// How much a reader has to read: without the lines that only say where in the reader's own program
/// the place is, as their length is not ours.
std::size_t size_of(const std::string& message) {
  std::size_t size = 0;
  for (const std::string& line : lines_of(message)) {
    const bool locates = line.find("In file included from ") == 0 ||
                         line.find("                 from ") == 0 ||
                         line.find(": In function ") != std::string::npos;
    if (!locates) size += line.size() + 1;
  }
  return size;
}

bool check(const fs::path& source, const std::string& kind, const Lines& command) {
  const CompileCase expected = read_compile_case(source);
  std::string complaints;
  const Outcome good = compiled(command, source, false);
  if (good.exit != 0) complaints += "the good line does not compile\n" + good.complained;

  const Outcome bad = compiled(command, source, true);
  const std::string& message = bad.complained;
  if (bad.exit == 0) complaints += "the bad line compiles\n";
  Lines must = expected.says;
  const Lines& also = kind == "gnu" ? expected.says_to_gnu : expected.says_to_clang;
  must.insert(must.end(), also.begin(), also.end());
  for (const std::string& words : must) {
    if (message.find(words) == std::string::npos) complaints += "does not say: " + words + "\n";
  }
  for (const std::string& words : expected.never_says) {
    if (message.find(words) != std::string::npos) complaints += "says: " + words + "\n";
  }
  const std::size_t limit = kind == "gnu" ? 800 : 2000;
  if (expected.is_short && size_of(message) > limit) {
    complaints +=
        std::to_string(size_of(message)) + " bytes, at most " + std::to_string(limit) + "\n";
  }
  if (complaints.empty()) return true;
  std::cout << source.string() << ":\n" << complaints << "---- the message\n" << message << "\n";
  return false;
}

std::string indented_block(const Lines& lines) {
  std::size_t indent = std::string::npos;
  for (const std::string& line : lines) indent = std::min(indent, line.find_first_not_of(' '));
  std::string out;
  for (const std::string& line : lines) out += "    " + line.substr(indent) + "\n";
  return out;
}

void print_page(const Lines& files) {
  std::cout << "# When the compiler refuses\n\n"
               "Search this page for words of the compiler's message. It is made from\n"
               "`tests/compile_fail/`, where every bad line is compiled and refused, and every\n"
               "good one compiled.\n";
  for (const std::string& file : files) {
    const CompileCase entry = read_compile_case(file);
    std::string title = entry.name;
    for (char& c : title) c = c == '_' ? ' ' : c;
    std::cout << "\n## " << title << "\n\n" << entry.means << "\n\nThe compiler says:\n\n";
    for (const Lines* words : {&entry.says, &entry.says_to_gnu, &entry.says_to_clang}) {
      for (const std::string& line : *words) std::cout << "- `" << line << "`\n";
    }
    std::cout << "\nRefused:\n\n"
              << indented_block(entry.bad) << "\nGood:\n\n"
              << indented_block(entry.good) << "\n"
              << entry.advice << "\n";
  }
}

bool run_case(const Lines& words) {
  if (words.at(0) == "check") {
    return check(words.at(1), words.at(2), {words.begin() + 3, words.end()});
  }
  if (words.at(0) != "page") throw std::runtime_error("check or page, not " + words[0]);
  print_page({words.begin() + 1, words.end()});
  return true;
}

}  // namespace
}  // namespace platewright::test

int main(int count, char** arguments) {
  try {
    return platewright::test::run_case({arguments + 1, arguments + count}) ? 0 : 1;
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 2;
  }
}
