// SPDX-License-Identifier: MIT
#include "yaml/line_slips.hpp"

#include <algorithm>

#include "platewright/problem/catalogue/files.hpp"
#include "yaml/open_marks.hpp"
#include "yaml/text_line.hpp"

namespace platewright::yaml {
namespace {

using Lines = std::vector<TextLine>;

std::string in_marks(std::string_view value) {
  const bool doubled = value.find('"') != std::string_view::npos;
  const std::string mark = doubled ? "'" : "\"";
  return mark + std::string(value) + mark;
}

/// The line with its value between quotation marks, without the spaces that it begins with.
std::string with_marks(const TextLine& line) {
  std::string_view before = std::string_view(line.text).substr(
      line.indent, static_cast<std::size_t>(line.column_of(line.value)) - 1 - line.indent);
  return std::string(before) + in_marks(line.value);
}

class Slips {
 public:
  Slips(const Lines& lines, const std::string& file, int line)
      : lines_(lines), file_(file), number_(line) {}

  std::optional<Problem> swallowing_quote() const {
    const auto mark = first_open_mark(lines_);
    if (!mark || !is_quote(mark->opened)) return std::nullopt;
    return problem_of(*mark);
  }

  std::optional<Problem> find() const {
    if (auto slip = tab()) return slip;
    if (auto slip = open_mark()) return slip;
    if (number_ > static_cast<int>(lines_.size())) return std::nullopt;
    for (const auto look : {&Slips::behind_marks, &Slips::first_sign, &Slips::list_in_value,
                            &Slips::second_colon, &Slips::no_colon_before, &Slips::indentation}) {
      if (auto slip = (this->*look)()) return slip;
    }
    return std::nullopt;
  }

 private:
  const TextLine& here() const { return lines_[static_cast<std::size_t>(number_) - 1]; }

  Problem placed(Problem problem, int line, int column) const {
    return at(std::move(problem), Place{file_, line, column, {}});
  }

  /// The last line before `number` that holds anything; 0 where there is none.
  int line_before(int number) const {
    while (--number > 0 && lines_[static_cast<std::size_t>(number) - 1].blank()) {
    }
    return number;
  }

  std::optional<Problem> tab() const {
    for (int i = std::min(number_, static_cast<int>(lines_.size())); i > 0; --i) {
      const TextLine& line = lines_[static_cast<std::size_t>(i) - 1];
      const std::size_t at = line.text.substr(0, line.indent).find('\t');
      if (at == std::string_view::npos || line.blank()) continue;
      std::string spaces;
      for (const char c : line.text.substr(0, line.indent)) spaces += c == '\t' ? "  " : " ";
      return placed(problems::not_yaml(
                        "a tab before the text of the line", "spaces at the beginning of a line",
                        "write two spaces for each tab, as in " +
                            typed(spaces + std::string(line.text.substr(line.indent)))),
                    i, static_cast<int>(at) + 1);
    }
    return std::nullopt;
  }

  /// A quotation mark, a bracket or a brace that is not closed, or closed by another.
  std::optional<Problem> open_mark() const {
    const auto mark = first_open_mark(lines_);
    if (!mark || mark->line > number_) return std::nullopt;
    return problem_of(*mark);
  }

  Problem problem_of(const OpenMark& found) const {
    const OpenMark* mark = &found;
    const TextLine& line = lines_[static_cast<std::size_t>(mark->line) - 1];
    const std::string whole(line.text.substr(line.indent));
    if (is_quote(mark->opened)) {
      return placed(problems::quote_left_open(mark->reached, remedy_of_open_quote(line, *mark)),
                    mark->line, mark->column);
    }
    const std::string wanted(1, mark->opened == '[' ? ']' : '}');
    if (mark->met_at) {
      const std::size_t met = static_cast<std::size_t>(mark->met_at->second) - 1;
      const TextLine& last = lines_[static_cast<std::size_t>(mark->met_at->first) - 1];
      std::string mended(last.text);
      mended.insert(met, wanted);
      return placed(problems::not_yaml(
                        "`" + std::string(1, last.text[met]) + "` where the `" +
                            std::string(1, mark->opened) + "` of line " +
                            std::to_string(mark->line) + " is still open",
                        "`" + wanted + "` for that `" + std::string(1, mark->opened) + "` first",
                        "write " + typed(trimmed_spaces(mended))),
                    mark->met_at->first, mark->met_at->second);
    }
    return placed(problems::not_yaml("`" + std::string(1, mark->opened) + "` that is not closed",
                                     "`" + wanted + "` behind the last value of it",
                                     "write " + typed(whole + wanted)),
                  mark->line, mark->column);
  }

  static std::string remedy_of_open_quote(const TextLine& line, const OpenMark& mark) {
    const std::string closed = std::string(line.text.substr(line.indent)) + mark.opened;
    const bool between = line.text.find_first_of("]}") != std::string_view::npos;
    if (between) return "close it behind the value, before the comma, ] or }";
    return "write " + typed(closed);
  }

  /// `'Don't burn it'`.
  std::optional<Problem> behind_marks() const {
    const std::string_view value = here().value;
    if (value.empty() || !is_quote(value.front())) return std::nullopt;
    const std::size_t end = behind_quotation(value, 0);
    if (end == std::string_view::npos || trimmed_spaces(value.substr(end)).empty()) {
      return std::nullopt;
    }
    const std::string_view rest = value.substr(end);
    const bool apostrophe = value.front() == '\'' && value.back() == '\'';
    std::string inside(apostrophe ? value.substr(1, value.size() - 2) : value);
    const std::string before(here().text.substr(
        here().indent, static_cast<std::size_t>(here().column_of(value)) - 1 - here().indent));
    return placed(problems::not_yaml(in_quotes(rest) + " behind the closing quotation mark",
                                     "the whole value between quotation marks, and no mark of the "
                                     "same kind in it",
                                     "write " + typed(before + in_marks(inside))),
                  number_, here().column_of(rest));
  }

  /// A value that begins with a sign which YAML keeps for itself.
  std::optional<Problem> first_sign() const {
    const TextLine& line = here();
    const bool in_key = line.colon && line.key.find_first_of("@`*&%!") == 0;
    const std::string_view part = in_key ? line.key : line.value;
    if (part.empty() || part.find_first_of("@`*&%!,|>?]}") != 0) return std::nullopt;
    const std::string whole = in_key ? std::string(line.dash ? "- " : "") + in_marks(part) + ": " +
                                           std::string(line.value)
                                     : with_marks(line);
    return placed(
        problems::not_yaml("a text that begins with `" + std::string(1, part.front()) + "`",
                           "such a text between quotation marks", "write " + typed(whole)),
        number_, line.column_of(part));
  }

  /// `notes: - keep warm`.
  std::optional<Problem> list_in_value() const {
    const TextLine& line = here();
    if (!line.colon || line.value.substr(0, 2) != "- ") return std::nullopt;
    const std::string key(line.text.substr(
        0, static_cast<std::size_t>(line.column_of(line.key)) - 1 + line.key.size()));
    return placed(problems::not_yaml("a list on the line of its key",
                                     "each item on a line of its own below the key",
                                     "write\n" + escaped(key) + ":\n" +
                                         std::string(line.indent + 2, ' ') + escaped(line.value)),
                  number_, line.column_of(line.value));
  }

  /// `do: Melt: slowly.`
  std::optional<Problem> second_colon() const {
    const TextLine& line = here();
    if (!line.colon || line.value.empty() || is_quote(line.value.front())) return std::nullopt;
    const std::size_t colon = key_colon(line.value);
    if (colon == std::string_view::npos) return std::nullopt;
    return placed(problems::not_yaml("a second colon on the line, behind " +
                                         in_quotes(line.value.substr(0, colon)),
                                     "a value with a colon in it between quotation marks",
                                     "write " + typed(with_marks(line))),
                  number_, line.column_of(line.value.substr(colon)));
  }

  /// A line without its colon, which YAML takes together with the next one.
  std::optional<Problem> no_colon_before() const {
    const int before = line_before(number_);
    if (before == 0 || !here().colon) return std::nullopt;
    const TextLine& line = lines_[static_cast<std::size_t>(before) - 1];
    if (line.colon || line.value.empty()) return std::nullopt;
    if (here().dash || (line.dash && here().indent <= line.indent)) return std::nullopt;
    return placed(problems::not_yaml(typed(line.value) + " without a colon", "a key and its value",
                                     "write " + typed(with_colon(line))),
                  before, line.column_of(line.value));
  }

  /// `- beef 9 lb` is an ingredient, `- Rub all over.` a step, `recipe a soup` a key and its value.
  static std::string with_colon(const TextLine& line) {
    const std::string value(line.value);
    const std::size_t digit = value.find_first_of("0123456789");
    if (line.dash && digit != std::string::npos && digit > 0) {
      return "- " + std::string(trimmed_spaces(value.substr(0, digit))) + ": " +
             value.substr(digit);
    }
    if (line.dash) return "- do: " + value;
    const std::size_t space = value.find(' ');
    if (space == std::string::npos) return value + ":";
    return value.substr(0, space) + ": " + std::string(trimmed_spaces(value.substr(space)));
  }

  /// A line that begins neither where its list or its keys do, nor where those around it do.
  std::optional<Problem> indentation() const {
    const TextLine& line = here();
    if (line.blank() || (!line.dash && !line.colon)) return std::nullopt;
    for (int i = line_before(number_); i > 0; i = line_before(i)) {
      const TextLine& other = lines_[static_cast<std::size_t>(i) - 1];
      if (line.dash && other.dash) return stands_elsewhere(other.indent, i);
      if (!line.dash && other.dash && other.indent == line.indent) return dash_missing(i);
      if (!line.dash && other.dash && other.colon && other.indent < line.indent) {
        return stands_elsewhere(key_indent(other), i);
      }
      if (!line.dash && !other.dash && other.colon && !other.value.empty() &&
          other.indent != line.indent) {
        return stands_elsewhere(other.indent, i);
      }
    }
    return std::nullopt;
  }

  /// Where the keys of an item stand: behind its dash.
  static std::size_t key_indent(const TextLine& line) {
    return static_cast<std::size_t>(line.column_of(line.key)) - 1;
  }

  /// `indent`: where the keys or the dashes of line `number` stand.
  std::optional<Problem> stands_elsewhere(std::size_t indent, int number) const {
    if (indent == here().indent) return std::nullopt;
    const std::string mended =
        std::string(indent, ' ') + std::string(here().text.substr(here().indent));
    return placed(
        problems::not_yaml("a line that begins behind " + spaces(here().indent) + ", where line " +
                               std::to_string(number) + " begins behind " + spaces(indent),
                           "lines of one list, and keys of one thing, exactly below each other",
                           "write " + typed(mended) + ", behind " + spaces(indent)),
        number_, static_cast<int>(here().indent) + 1);
  }

  std::optional<Problem> dash_missing(int number) const {
    const std::string line(here().text.substr(here().indent));
    const std::size_t further = key_indent(lines_[static_cast<std::size_t>(number) - 1]);
    return placed(
        problems::not_yaml(
            "a line without a dash, below the dashes of a list",
            "a dash before every line of the list; what belongs to the line above stands 2 spaces "
            "further in",
            "write " + typed(std::string(further, ' ') + line) + ", behind " + spaces(further) +
                ", where it belongs to line " + std::to_string(number) + "; else " +
                typed("- " + line) + " below the dash of that line"),
        number_, static_cast<int>(here().indent) + 1);
  }

  static std::string spaces(std::size_t count) {
    return count == 1 ? "1 space" : std::to_string(count) + " spaces";
  }

  const Lines& lines_;
  const std::string& file_;
  int number_;
};

}  // namespace

std::optional<Problem> slip_before(std::string_view text, const std::string& file, int line) {
  const Lines lines = text_lines(text);
  return Slips(lines, file, line).find();
}

std::optional<Problem> quote_over_lines(std::string_view text, const std::string& file) {
  const Lines lines = text_lines(text);
  return Slips(lines, file, 0).swallowing_quote();
}

}  // namespace platewright::yaml
