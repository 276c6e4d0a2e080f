// SPDX-License-Identifier: MIT
#include "support/case_file.hpp"

#include <cstddef>
#include <stdexcept>

#include "support/folder.hpp"

namespace platewright::test {

namespace {

std::string unescaped(const std::string& line) {
  std::string out;
  for (std::size_t i = 0; i < line.size(); ++i) {
    if (line[i] != '\\' || i + 1 == line.size()) {
      out += line[i];
      continue;
    }
    switch (line[++i]) {
      case 'n':
        out += '\n';
        break;
      case 'r':
        out += '\r';
        break;
      case 't':
        out += '\t';
        break;
      case '\\':
        out += '\\';
        break;
      case 'x':
        out += static_cast<char>(std::stoi(line.substr(i + 1, 2), nullptr, 16));
        i += 2;
        break;
      default:
        throw std::runtime_error("unknown escape in: " + line);
    }
  }
  return out;
}

class Reader {
 public:
  explicit Reader(const std::filesystem::path& file)
      : name_(file.string()), lines_(lines_of(read_file(file))) {}

  CaseFile read() {
    CaseFile out;
    for (; at_ < lines_.size(); ++at_) {
      const std::size_t first = at_;
      read_line(out);
      if (!out.steps.empty()) continue;
      for (std::size_t i = first; i <= at_; ++i) out.head += lines_[i] + "\n";
    }
    if (out.about.empty()) throw std::runtime_error(name_ + ": no line \"about: ...\"");
    if (out.steps.empty()) throw std::runtime_error(name_ + ": no line \"run: ...\"");
    return out;
  }

 private:
  [[noreturn]] void wrong(const std::string& what) const {
    throw std::runtime_error(name_ + ":" + std::to_string(at_ + 1) + ": " + what);
  }

  Step& last_step(CaseFile& out) const {
    if (out.steps.empty()) wrong("stands before the first \"run:\"");
    return out.steps.back();
  }

  void read_line(CaseFile& out) {
    const std::string& line = lines_[at_];
    std::string rest;
    if (line.empty() || line[0] == '#') return;
    if (takes(line, "about: ", rest)) {
      out.about = rest;
    } else if (takes(line, "file ", rest)) {
      if (!out.steps.empty()) wrong("a file after the first \"run:\"");
      out.inputs.push_back(input(rest));
    } else if (takes(line, "run: ", rest)) {
      out.steps.push_back(Step{rest, 0, {}, {}, {}});
    } else if (takes(line, "exit: ", rest)) {
      last_step(out).exit = std::stoi(rest);
    } else if (takes(line, "writes: ", rest)) {
      last_step(out).writes.push_back(rest);
    } else if (line == "prints:") {
      last_step(out).prints = block("end");
    } else if (line == "complains:") {
      last_step(out).complains = block("end");
    } else {
      wrong("not understood: " + line);
    }
  }

  CaseInput input(std::string name) {
    if (name.empty() || name.back() != ':') wrong("a file's line ends in a colon");
    name.pop_back();
    const std::string escaped = " escaped";
    if (name.size() <= escaped.size() ||
        name.compare(name.size() - escaped.size(), escaped.size(), escaped) != 0) {
      return {name, block("end of file")};
    }
    name.resize(name.size() - escaped.size());
    std::string text;
    for (const std::string& line : lines_of(block("end of file"))) {
      std::string rest;
      if (takes(line, "repeat ", rest)) {
        const std::string piece = unescaped(rest.substr(rest.find(": ") + 2));
        for (int count = std::stoi(rest); count > 0; --count) text += piece;
      } else {
        text += unescaped(line);
      }
    }
    return {name, text};
  }

  std::string block(const std::string& end) {
    std::string text;
    for (++at_; at_ < lines_.size(); ++at_) {
      if (lines_[at_] == end) return text;
      text += lines_[at_] + "\n";
    }
    wrong("no line \"" + end + "\"");
  }

  std::string name_;
  std::vector<std::string> lines_;
  std::size_t at_ = 0;
};

}  // namespace

CaseFile read_case(const std::filesystem::path& file) {
  return Reader(file).read();
}

std::string write_case(const CaseFile& test_case) {
  std::string out = test_case.head;
  for (const Step& step : test_case.steps) {
    if (&step != &test_case.steps.front()) out += "\n";
    out += "run: " + step.command + "\n";
    out += "exit: " + std::to_string(step.exit) + "\n";
    if (!step.prints.empty()) out += "prints:\n" + step.prints + "end\n";
    if (!step.complains.empty()) out += "complains:\n" + step.complains + "end\n";
    for (const std::string& name : step.writes) out += "writes: " + name + "\n";
  }
  return out;
}

}  // namespace platewright::test
