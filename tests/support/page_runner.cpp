// SPDX-License-Identifier: MIT
// Runs what a page shows, from the project's root:
//   page_runner commands PROGRAM ROOT PAGE       ```console blocks that run platewright
//   page_runner books PROGRAM ROOT PAGE...       ```yaml blocks that begin with "# file: NAME"
//   page_runner tutorial PROGRAM ROOT PAGE       both, one after the other, in an empty folder
//   page_runner links PROGRAM ROOT PAGE...       each file that a page links to is there
//   page_runner programs WORK PAGE COMMAND...    ```cpp blocks, compiled by COMMAND... and run
//
// The books of several pages stand in one folder, so that an event names the recipe of another
// page. In a console block a line "$ platewright ..." is a command, and the lines up to the next
// one are what it says; a line "..." stands for any lines. In a cpp block without a main the
// statements are put into one, and each line that ends in "// does not compile" is left out of the
// good program and must be refused in one of its own.

#include <algorithm>
#include <cstddef>
#include <exception>
#include <filesystem>
#include <iostream>
#include <stdexcept>
#include <string>
#include <vector>

#include "support/difference.hpp"
#include "support/folder.hpp"
#include "support/markdown.hpp"
#include "support/process.hpp"

namespace platewright::test {
namespace {

namespace fs = std::filesystem;
using Lines = std::vector<std::string>;

std::string text_of(const Lines& lines) {
  std::string out;
  for (const std::string& line : lines) out += line + "\n";
  return out;
}

/// Whether the lines are as expected, where an expected "..." stands for any number of lines.
bool alike(const Lines& expected, std::size_t i, const Lines& found, std::size_t j) {
  for (; i < expected.size(); ++i, ++j) {
    if (expected[i] == "...") {
      for (std::size_t next = j; next <= found.size(); ++next) {
        if (alike(expected, i + 1, found, next)) return true;
      }
      return false;
    }
    if (j == found.size() || expected[i] != found[j]) return false;
  }
  return j == found.size();
}

/// Runs the commands of a console block in `folder`.
bool run_block(const fs::path& program, const fs::path& folder, const fs::path& page,
               const FencedBlock& block) {
  bool good = true;
  for (std::size_t i = 0; i < block.lines.size();) {
    std::string command;
    if (!takes(block.lines[i], "$ ", command)) {
      throw std::runtime_error("a console block begins with \"$ \": " + block.lines[i]);
    }
    const std::size_t line = block.first_line + i;
    Lines expected;
    for (++i; i < block.lines.size() && block.lines[i].rfind("$ ", 0) != 0; ++i) {
      expected.push_back(block.lines[i]);
    }
    Lines words = words_of(command);
    if (words.empty() || words[0] != "platewright") {
      throw std::runtime_error("a console block runs platewright, not: " + command);
    }
    words[0] = program.string();
    const Outcome outcome = run(words, folder);
    const Lines found = lines_of(outcome.printed + outcome.complained);
    if (alike(expected, 0, found, 0)) continue;
    good = false;
    std::cout << page.string() << ":" << line << ": " << command << "\n"
              << difference(text_of(expected), text_of(found));
  }
  return good;
}

bool run_commands(const fs::path& program, const fs::path& root, const fs::path& page) {
  bool good = true;
  for (const FencedBlock& block : fenced_blocks(page)) {
    if (block.language == "console") good = run_block(program, root, page, block) && good;
  }
  return good;
}

/// The name in the first line of a yaml block.
std::string name_of_book(const fs::path& page, const FencedBlock& block) {
  std::string name;
  if (!takes(block.lines.at(0), "# file: ", name)) {
    throw std::runtime_error(page.string() + ":" + std::to_string(block.first_line) +
                             ": a yaml block begins with \"# file: NAME\"");
  }
  return name;
}

/// Step by step as a reader would: a file is written, or written anew, and commands are run on it.
bool follow_tutorial(const fs::path& program, const fs::path& page) {
  const TemporaryFolder folder;
  bool good = true;
  std::size_t commands = 0;
  for (const FencedBlock& block : fenced_blocks(page)) {
    if (block.language == "yaml") {
      write_file(folder.path() / name_of_book(page, block), text_of(block.lines));
    } else if (block.language == "console") {
      ++commands;
      good = run_block(program, folder.path(), page, block) && good;
    }
  }
  if (commands == 0) throw std::runtime_error("there is no command on this page");
  return good;
}

/// The books of a page, written into `folder`; their names.
Lines write_books(const fs::path& folder, const fs::path& page) {
  Lines names;
  for (const FencedBlock& block : fenced_blocks(page)) {
    if (block.language != "yaml" || block.lines.empty()) continue;
    const std::string name = name_of_book(page, block);
    if (fs::exists(folder / name)) {
      throw std::runtime_error(page.string() + ":" + std::to_string(block.first_line) +
                               ": a second " + name);
    }
    write_file(folder / name, text_of(block.lines));
    names.push_back(name);
  }
  return names;
}

bool check_books(const fs::path& program, const Lines& pages) {
  const TemporaryFolder folder;
  Lines words{program.string(), "check"};
  for (const std::string& page : pages) {
    const Lines names = write_books(folder.path(), page);
    words.insert(words.end(), names.begin(), names.end());
  }
  if (words.size() == 2) throw std::runtime_error("there is no book on these pages");
  const Outcome outcome = run(words, folder.path());
  if (outcome.exit == 0) return true;
  std::cout << "the books of these pages have problems\n" << outcome.printed << outcome.complained;
  return false;
}

/// Whether each file that `page` links to is there; links to other hosts are none of ours.
bool follow_links(const fs::path& page) {
  bool good = true;
  const std::string text = read_file(page);
  for (std::size_t at = text.find("]("); at != std::string::npos; at = text.find("](", at + 1)) {
    const std::size_t begin = at + 2;
    const std::string target = text.substr(begin, text.find_first_of(")#", begin) - begin);
    if (target.empty() || target.find("://") != std::string::npos) continue;
    if (fs::exists(page.parent_path() / target)) continue;
    good = false;
    std::cout << page.string() << ": there is no " << target << "\n";
  }
  return good;
}

bool follow_all_links(const Lines& pages) {
  return std::count_if(pages.begin(), pages.end(), follow_links) ==
         static_cast<std::ptrdiff_t>(pages.size());
}

struct Program {
  std::string text;
  bool must_compile = true;
};

constexpr char refused_mark[] = "// does not compile";

bool is_refused(const std::string& line) {
  const std::string mark = refused_mark;
  return line.size() >= mark.size() &&
         line.compare(line.size() - mark.size(), mark.size(), mark) == 0;
}

/// The block as a program, with its refused lines left out but for number `kept` (counted from 1).
Program program_of(const FencedBlock& block, std::size_t kept) {
  Lines head;
  Lines body;
  bool has_main = false;
  std::size_t refused = 0;
  for (const std::string& line : block.lines) {
    if (is_refused(line) && ++refused != kept) continue;
    has_main = has_main || line.find("int main(") != std::string::npos;
    (line.rfind("#include", 0) == 0 ? head : body).push_back(line);
  }
  const std::string statements =
      has_main ? text_of(body) : "int main() {\n" + text_of(body) + "}\n";
  return {text_of(head) + statements, kept == 0};
}

std::vector<Program> programs_of(const FencedBlock& block) {
  std::vector<Program> programs{program_of(block, 0)};
  std::size_t refused = 0;
  for (const std::string& line : block.lines) {
    if (is_refused(line)) programs.push_back(program_of(block, ++refused));
  }
  return programs;
}

/// `command` has one word {source} and one word {program}.
bool compile(const Program& program, const fs::path& work, const std::string& name, Lines command) {
  const fs::path source = work / (name + ".cpp");
  write_file(source, program.text);
  for (std::string& word : command) {
    if (word == "{source}") word = source.string();
    if (word == "{program}") word = (work / name).string();
  }
  const Outcome built = run(command, work, 120);
  if ((built.exit == 0) != program.must_compile) {
    std::cout << source.string() << (program.must_compile ? " does not compile\n" : " compiles\n")
              << built.complained;
    return false;
  }
  if (!program.must_compile) return true;
  const Outcome outcome = run({(work / name).string()}, work);
  if (outcome.exit == 0) return true;
  std::cout << source.string() << " ends with " << outcome.exit << "\n" << outcome.complained;
  return false;
}

bool compile_programs(const fs::path& work, const fs::path& page, const Lines& command) {
  bool good = true;
  for (const FencedBlock& block : fenced_blocks(page)) {
    if (block.language != "cpp") continue;
    std::size_t number = 0;
    for (const Program& program : programs_of(block)) {
      const std::string name = page.stem().string() + "-" + std::to_string(block.first_line) + "-" +
                               std::to_string(++number);
      good = compile(program, work, name, command) && good;
    }
  }
  return good;
}

bool run_page(const Lines& words) {
  if (words.at(0) == "programs") {
    fs::create_directories(words.at(1));
    return compile_programs(fs::canonical(words.at(1)), words.at(2),
                            {words.begin() + 3, words.end()});
  }
  if (words.at(0) == "links") return follow_all_links({words.begin() + 3, words.end()});
  const fs::path program = fs::absolute(words.at(1));
  if (words.at(0) == "commands") return run_commands(program, words.at(2), words.at(3));
  if (words.at(0) == "books") return check_books(program, {words.begin() + 3, words.end()});
  if (words.at(0) == "tutorial") return follow_tutorial(program, words.at(3));
  throw std::runtime_error("commands, books, tutorial, links or programs, not " + words[0]);
}

}  // namespace
}  // namespace platewright::test

int main(int count, char** arguments) {
  try {
    return platewright::test::run_page({arguments + 1, arguments + count}) ? 0 : 1;
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 2;
  }
}
