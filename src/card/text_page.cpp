// SPDX-License-Identifier: MIT
#include "card/text_page.hpp"

#include <algorithm>
#include <utility>

#include "platewright/card/display.hpp"

namespace platewright::detail {

namespace {

constexpr Signs drawn_signs{"\u2550", "\u2501", "\u2500", "\u250F", "\u2513",
                            "\u2517", "\u251B", "\u2503", "\u2588", "\u2591"};
constexpr Signs ascii_signs{"=", "=", "-", "+", "+", "+", "+", "|", "#", "."};

constexpr std::string_view no_break_space = "\u00A0";

/// As it goes out: spaces that held words together become plain, those at the end go.
std::string trimmed(std::string text) {
  for (std::size_t i = text.find(no_break_space); i != std::string::npos;
       i = text.find(no_break_space, i)) {
    text.replace(i, no_break_space.size(), " ");
  }
  text.erase(text.find_last_not_of(' ') + 1);
  return text;
}

}  // namespace

std::string repeated(std::string_view sign, unsigned times) {
  std::string out;
  for (unsigned i = 0; i < times; ++i) out += sign;
  return out;
}

std::string held_together(std::string_view text) {
  std::string out;
  for (const char c : text) {
    if (c == ' ') {
      out += no_break_space;
    } else {
      out += c;
    }
  }
  return out;
}

TextPage::TextPage(const TextOptions& options)
    : width_(std::clamp(options.width, 40U, 1000U)),
      ascii_(options.ascii),
      large_(options.large),
      lines_per_page_(options.lines_per_page == 0 ? 0
                                                  : std::clamp(options.lines_per_page, 20U, 1000U)),
      signs_(options.ascii ? ascii_signs : drawn_signs) {}

std::string TextPage::prepared(std::string_view data) const {
  return ascii_ ? in_ascii_signs(on_one_line(data)) : on_one_line(data);
}

std::string TextPage::marker(unsigned footnote) {
  return footnote == 0 ? "" : "[" + std::to_string(footnote) + "]";
}

std::string TextPage::prepared(const Cell& cell) const {
  std::string out = prepared(cell.text);
  if (cell.footnote != 0) out += " " + marker(cell.footnote);
  return out;
}

void TextPage::line(const std::string& text, bool keep_with_next) {
  lines_.push_back({trimmed(text), keep_with_next, running_heading_});
}

void TextPage::gap() {
  if (!lines_.empty() && !lines_.back().text.empty()) lines_.push_back({});
}

void TextPage::text(std::string_view prepared_text, unsigned hanging, bool keep_with_next) {
  const std::vector<std::string> lines = wrapped(prepared_text, width_ - hanging);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const std::string indent(i == 0 ? 0 : hanging, ' ');
    line(indent + lines[i], keep_with_next || i + 1 < lines.size());
  }
}

void TextPage::heading(const std::string& title) {
  gap();
  if (title.empty()) return;
  const std::string shown = prepared(large_ ? in_capitals(title) : title);
  text(shown, 0, true);
  line(repeated(signs_.heavy_rule, std::min(width_, display_width(shown))), true);
}

void TextPage::begin_running_heading(std::vector<std::string> heading) {
  running_heading_ = 0;
  if (heading.empty()) return;
  for (std::string& one : heading) one = trimmed(std::move(one));
  running_heading_ = running_headings_.size();
  running_headings_.push_back(std::move(heading));
}

std::string TextPage::finished(const std::string& title) const {
  if (lines_per_page_ != 0) return in_pages(title);
  std::string out;
  for (const PageLine& one : lines_) out += one.text + "\n";
  return out;
}

}  // namespace platewright::detail
