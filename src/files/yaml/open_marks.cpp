// SPDX-License-Identifier: MIT
#include "yaml/open_marks.hpp"

#include <algorithm>

namespace platewright::yaml {
namespace {

bool opens(char c) {
  return c == '[' || c == '{';
}

bool closes(char c) {
  return c == ']' || c == '}';
}

/// Walks the lines as YAML would, and remembers nothing but what is open.
class Marks {
 public:
  explicit Marks(const std::vector<TextLine>& lines) : lines_(lines) {}

  std::optional<OpenMark> first() {
    for (line_ = 0; line_ < lines_.size(); ++line_) {
      const TextLine& line = lines_[line_];
      if (line.blank()) continue;
      if (!open_.empty() && is_of_the_file(line, open_.front())) return open_.back();
      if (open_.empty() && is_block(line)) {
        skip_block();
        continue;
      }
      const std::string_view part = open_.empty() ? line.value : line.text.substr(line.indent);
      if (auto found = walk(part)) return found;
    }
    if (open_.empty()) return std::nullopt;
    return open_.back();
  }

 private:
  /// A text that goes on over several lines stands further in than the line that it began on.
  bool is_of_the_file(const TextLine& line, const OpenMark& mark) const {
    const TextLine& begun = lines_[static_cast<std::size_t>(mark.line) - 1];
    return line.indent <= begun.indent && !closes(line.text[line.indent]);
  }

  static bool is_block(const TextLine& line) {
    return !line.value.empty() && (line.value.front() == '|' || line.value.front() == '>') &&
           line.value.size() <= 3;
  }

  void skip_block() {
    const std::size_t indent = lines_[line_].indent;
    while (line_ + 1 < lines_.size() &&
           (lines_[line_ + 1].blank() || lines_[line_ + 1].indent > indent)) {
      ++line_;
    }
  }

  std::optional<OpenMark> walk(std::string_view part) {
    bool at_start = true;
    for (std::size_t i = 0; i < part.size(); ++i) {
      const char c = part[i];
      if (at_start && is_quote(c)) {
        const std::size_t end = behind_quotation(part, i);
        if (end == std::string_view::npos) return after_open_quote(part, i);
        i = end - 1;
        at_start = false;
      } else if ((at_start && opens(c)) || (!open_.empty() && opens(c))) {
        open_.push_back(mark_at(part, i));
      } else if (!open_.empty() && closes(c)) {
        if ((open_.back().opened == '[') != (c == ']')) {
          OpenMark out = open_.back();
          out.met_at = {static_cast<int>(line_) + 1, lines_[line_].column_of(part.substr(i))};
          return out;
        }
        open_.pop_back();
        at_start = false;
      } else if (c == '#' && (i == 0 || part[i - 1] == ' ')) {
        return std::nullopt;
      } else if (c != ' ') {
        const bool before_space = i + 1 == part.size() || part[i + 1] == ' ';
        at_start = !open_.empty() && (c == ',' || (c == ':' && before_space));
      }
      if (open_.empty() && !at_start) return std::nullopt;
    }
    return std::nullopt;
  }

  OpenMark mark_at(std::string_view part, std::size_t at) const {
    OpenMark out;
    out.opened = part[at];
    out.line = static_cast<int>(line_) + 1;
    out.column = lines_[line_].column_of(part.substr(at));
    return out;
  }

  /// Goes to where the quotation ends; what it swallowed on the way tells whether it was meant to.
  std::optional<OpenMark> after_open_quote(std::string_view part, std::size_t at) {
    OpenMark mark = mark_at(part, at);
    bool swallowed = false;
    const std::string sign(1, mark.opened);
    while (++line_ < lines_.size()) {
      const TextLine& line = lines_[line_];
      if (line.blank()) continue;
      swallowed = swallowed || is_of_the_file(line, mark);
      mark.reached = std::string(trimmed_spaces(line.text));
      const std::size_t end = behind_quotation(sign + std::string(line.text), 0);
      if (end == std::string_view::npos) continue;
      if (swallowed) return mark;
      return walk_on(line.text.substr(end - 1));
    }
    return mark;
  }

  std::optional<OpenMark> walk_on(std::string_view rest) {
    if (open_.empty()) return std::nullopt;
    return walk(rest);
  }

  const std::vector<TextLine>& lines_;
  std::size_t line_ = 0;
  std::vector<OpenMark> open_;
};

}  // namespace

std::optional<OpenMark> first_open_mark(const std::vector<TextLine>& lines) {
  return Marks(lines).first();
}

}  // namespace platewright::yaml
