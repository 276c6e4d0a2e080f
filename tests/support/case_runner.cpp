// SPDX-License-Identifier: MIT
// Runs golden case files: `case_runner --program PATH --examples DIR [--renew] FILE...`.
// With --renew each file is rewritten with what the program says now; read the difference.

#include <algorithm>
#include <exception>
#include <filesystem>
#include <iostream>
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

#include "support/case_file.hpp"
#include "support/difference.hpp"
#include "support/folder.hpp"
#include "support/process.hpp"

namespace platewright::test {
namespace {

namespace fs = std::filesystem;

struct Options {
  fs::path program;
  fs::path examples;
  bool renew = false;
  std::vector<fs::path> files;
};

/// Every file below `folder` with its contents; the link to the examples is not followed.
std::map<std::string, std::string> contents(const fs::path& folder) {
  std::map<std::string, std::string> found;
  for (const auto& entry : fs::recursive_directory_iterator(folder)) {
    const std::string name = fs::relative(entry.path(), folder).string();
    if (!entry.is_symlink()) found[name] = entry.is_regular_file() ? read_file(entry.path()) : "";
  }
  return found;
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at)) {
    text.replace(at, from.size(), to);
    at += to.size();
  }
  return text;
}

/// Whole lines, so that the text can stand in a case file; a missing last line end is said.
std::string whole_lines(std::string text) {
  if (!text.empty() && text.back() != '\n') text += "\n(no line end)\n";
  return text;
}

Step carry_out(const Step& step, const fs::path& folder, const Options& options) {
  std::vector<std::string> words = words_of(replaced(step.command, "{examples}", "examples"));
  if (words.empty() || words[0] != "platewright") {
    throw std::runtime_error("a case runs platewright, not: " + step.command);
  }
  words[0] = options.program.string();
  const auto before = contents(folder);
  std::string input = "/dev/null";
  if (words.size() > 2 && words[words.size() - 2] == "<") {
    input = words.back();
    words.resize(words.size() - 2);
  }
  const Outcome outcome = run(words, folder, 60, input);
  const auto after = contents(folder);

  const auto tidy = [&](const std::string& text) {
    return whole_lines(replaced(replaced(text, folder.string(), "{folder}"),
                                options.examples.string(), "{examples}"));
  };
  Step found{step.command, outcome.exit, tidy(outcome.printed), tidy(outcome.complained), {}};
  for (const auto& [name, text] : after) {
    const auto old = before.find(name);
    if (old == before.end() || old->second != text) found.writes.push_back(name);
  }
  for (const auto& [name, text] : before) {
    if (after.count(name) == 0) found.writes.push_back(name + " (removed)");
  }
  return found;
}

std::string joined(std::vector<std::string> names) {
  std::sort(names.begin(), names.end());
  std::string out;
  for (const std::string& name : names) out += name + "\n";
  return out;
}

std::string complaint(const Step& expected, const Step& found) {
  std::string out;
  const auto add = [&out](const std::string& what, const std::string& lines) {
    if (!lines.empty()) out += " " + what + ":\n" + lines;
  };
  add("exit", difference(std::to_string(expected.exit) + "\n", std::to_string(found.exit) + "\n"));
  add("prints", difference(expected.prints, found.prints));
  add("complains", difference(expected.complains, found.complains));
  add("writes", difference(joined(expected.writes), joined(found.writes)));
  return out.empty() ? out : "run: " + expected.command + "\n" + out;
}

bool check(const fs::path& file, const Options& options) {
  CaseFile test_case = read_case(file);
  const TemporaryFolder folder;
  fs::create_directory_symlink(options.examples, folder.path() / "examples");
  for (const CaseInput& input : test_case.inputs)
    write_file(folder.path() / input.name, input.text);

  std::string complaints;
  for (Step& step : test_case.steps) {
    Step found = carry_out(step, folder.path(), options);
    complaints += complaint(step, found);
    step = std::move(found);
  }
  if (complaints.empty()) return true;
  std::cout << file.string() << ": " << test_case.about << "\n" << complaints;
  if (options.renew) write_file(file, write_case(test_case));
  return options.renew;
}

Options options_from(const std::vector<std::string>& arguments) {
  Options options;
  for (std::size_t i = 0; i < arguments.size(); ++i) {
    if (arguments[i] == "--program") {
      options.program = fs::absolute(arguments.at(++i));
    } else if (arguments[i] == "--examples") {
      options.examples = fs::absolute(arguments.at(++i));
    } else if (arguments[i] == "--renew") {
      options.renew = true;
    } else {
      options.files.emplace_back(arguments[i]);
    }
  }
  if (options.files.empty()) throw std::runtime_error("no case file named");
  return options;
}

}  // namespace
}  // namespace platewright::test

int main(int count, char** arguments) {
  try {
    const auto options = platewright::test::options_from({arguments + 1, arguments + count});
    bool good = true;
    for (const auto& file : options.files) good = platewright::test::check(file, options) && good;
    return good ? 0 : 1;
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 2;
  }
}
