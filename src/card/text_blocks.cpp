// SPDX-License-Identifier: MIT
#include "card/text_blocks.hpp"

#include <algorithm>
#include <cstddef>

#include "card/text_bands.hpp"
#include "card/text_table.hpp"
#include "platewright/card/display.hpp"
#include "platewright/number/round.hpp"

namespace platewright::detail {

void print_block(TextPage& page, const Facts& facts) {
  page.heading(facts.title);
  unsigned label_width = 0;
  unsigned value_width = 0;
  bool all_figures = facts.kind == ColumnKind::figures;
  for (const Fact& fact : facts.facts) {
    label_width = std::max(label_width, display_width(page.prepared(fact.label)));
    value_width = std::max(value_width, display_width(page.prepared(fact.value)));
    all_figures = all_figures && fact.value.exact.has_value();
  }
  constexpr unsigned between = 3;
  label_width = std::clamp(label_width, 2U, page.width() * 2 / 5);
  const unsigned room = page.width() - label_width - between;
  const Band values = all_figures && value_width <= room ? Band{ColumnKind::figures, value_width}
                                                         : Band{ColumnKind::words, room};
  for (const Fact& fact : facts.facts) {
    print_bands(page, {{ColumnKind::words, label_width}, values},
                {page.prepared(fact.label), page.prepared(fact.value)}, between, 0);
    if (page.large()) page.gap();
  }
}

void print_block(TextPage& page, const Table& table) {
  print_table(page, table);
}

void print_block(TextPage& page, const Paragraphs& paragraphs) {
  page.heading(paragraphs.title);
  bool first = true;
  for (const std::string& text : paragraphs.texts) {
    if (!first) page.gap();
    page.text(page.prepared(text));
    first = false;
  }
}

namespace {

/// The widest of the cells that `cell_of` gives for the lines of a step; 0 where all are empty.
template <class CellOf>
unsigned widest(const TextPage& page, const Step& step, CellOf&& cell_of) {
  unsigned out = 0;
  for (const StepLine& line : step.lines) {
    out = std::max(out, display_width(page.prepared(cell_of(line))));
  }
  return out;
}

/// What a step uses, the amounts in line with each other.
void print_step_lines(TextPage& page, const Step& step, unsigned margin) {
  constexpr unsigned between = 2;
  const unsigned amount = widest(page, step, [](const StepLine& line) { return line.amount; });
  const unsigned beside = widest(page, step, [](const StepLine& line) { return line.beside; });
  const unsigned most = beside == 0 ? page.width() / 3 : page.width() / 4;
  std::vector<Band> bands;
  unsigned room = page.width() - margin;
  for (const unsigned width : {amount, beside}) {
    if (width == 0) continue;
    bands.push_back({ColumnKind::figures, std::clamp(width, 2U, most)});
    room -= bands.back().width + between;
  }
  bands.push_back({ColumnKind::words, room});
  for (std::size_t i = 0; i < step.lines.size(); ++i) {
    const StepLine& line = step.lines[i];
    std::vector<std::string> texts;
    if (amount != 0) texts.push_back(page.prepared(line.amount));
    if (beside != 0) texts.push_back(page.prepared(line.beside));
    texts.push_back(page.prepared(line.text));
    print_bands(page, bands, texts, between, margin, i + 1 < step.lines.size());
  }
}

}  // namespace

void print_block(TextPage& page, const Steps& steps) {
  page.heading(steps.title);
  const std::size_t digits = std::to_string(steps.steps.size()).size();
  const auto margin = static_cast<unsigned>(digits) + 2;
  for (std::size_t i = 0; i < steps.steps.size(); ++i) {
    const Step& step = steps.steps[i];
    std::string text = page.prepared(step.text);
    if (!step.takes.text.empty())
      text += " " + held_together("(" + page.prepared(step.takes) + ")");
    const Band number{ColumnKind::figures, margin - 1};
    const Band words{ColumnKind::words, page.width() - margin};
    print_bands(page, {number, words}, {std::to_string(i + 1) + ".", text}, 1, 0,
                !step.lines.empty());
    print_step_lines(page, step, margin + 2);
    page.gap();
  }
}

namespace {

/// A bar of `width` signs, filled in proportion to the longest.
std::string drawn_bar(const TextPage& page, const Rational& share, const Rational& longest,
                      unsigned width) {
  unsigned filled = 0;
  if (longest > 0 && share > 0) {
    filled =
        static_cast<unsigned>(steps_of(share / longest * width, Rational(1), Rounding::half_up));
  }
  return repeated(page.signs().bar, filled) + repeated(page.signs().rest_of_bar, width - filled);
}

}  // namespace

void print_block(TextPage& page, const Bars& bars) {
  page.heading(bars.title);
  unsigned label_width = 2;
  unsigned value_width = 2;
  unsigned share_width = 0;
  Rational longest;
  for (const Bar& bar : bars.bars) {
    label_width = std::max(label_width, display_width(page.prepared(bar.label)));
    value_width = std::max(value_width, display_width(page.prepared(bar.value)));
    share_width = std::max(share_width, display_width(page.prepared(bar.share_text)));
    longest = std::max(longest, bar.share);
  }
  label_width = std::min(label_width, page.width() / 3);
  value_width = std::min(value_width, page.width() / 4);
  share_width = share_width == 0 ? 0 : std::clamp(share_width, 2U, page.width() / 6);
  constexpr unsigned between = 2;
  unsigned texts_width = label_width + value_width + 2 * between;
  if (share_width > 0) texts_width += share_width + between;
  const unsigned bar_width = std::min(40U, page.width() - texts_width);
  std::vector<Band> bands{{ColumnKind::words, label_width},
                          {ColumnKind::words, bar_width},
                          {ColumnKind::figures, value_width}};
  if (share_width > 0) bands.push_back({ColumnKind::figures, share_width});
  for (const Bar& bar : bars.bars) {
    const std::vector<std::string> texts{page.prepared(bar.label),
                                         drawn_bar(page, bar.share, longest, bar_width),
                                         page.prepared(bar.value), page.prepared(bar.share_text)};
    print_bands(page, bands, texts, between, 0);
  }
}

void print_block(TextPage& page, const Part& part) {
  page.gap();
  page.gap();
  page.text(page.prepared(part.title), 0, true);
  page.line(repeated(page.signs().double_rule, page.width()), true);
}

}  // namespace platewright::detail
