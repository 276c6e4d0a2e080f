// SPDX-License-Identifier: MIT
#include "platewright/card/worksheet_sheet.hpp"

#include "card/sheets/rung_texts.hpp"
#include "card/sheets/shared.hpp"
#include "card/sheets/worksheet_answers.hpp"
#include "card/sheets/worksheet_figures.hpp"

namespace platewright {
namespace {

using card::exact_weight_cell;
using card::FigureWriter;

std::string kind_text(PartKind kind) {
  switch (kind) {
    case PartKind::usable:
      return "usable";
    case PartKind::by_product:
      return "by-product";
    case PartKind::waste:
      return "waste";
    case PartKind::cutting_loss:
      return "cutting loss";
  }
  return "";
}

/// The values are shared out so that the printed lines add up to the printed total.
Table trim_parts(const Worksheet& worksheet, const FigureWriter& writer) {
  const TrimTestResult& result = *worksheet.trim;
  const PriceList prices{worksheet.currency};
  Table table{"trim_parts",
              "Trim test",
              {words_column("part", "Part"), words_column("kind", "Kind"),
               figures_column("weight", "Weight"), figures_column("share", "Share"),
               figures_column("value_per_weight",
                              "Per " + std::string(price_weight_name(worksheet.weights))),
               figures_column("value", "Value")},
              {},
              {},
              {}};
  std::vector<Money> values;
  for (const TrimLine& line : result.lines) values.push_back(line.value);
  const std::vector<Cell> cells = card::apportioned_cells(values, prices);
  for (std::size_t i = 0; i < result.lines.size(); ++i) {
    const TrimLine& line = result.lines[i];
    const bool valued = line.kind == PartKind::usable || line.kind == PartKind::by_product;
    table.add({words(line.name), words(kind_text(line.kind)),
               exact_weight_cell(line.weight, worksheet.weights), percent_cell(line.share, 2),
               valued ? writer.price_in_column(line.value_per_weight) : Cell{},
               valued ? cells[i] : Cell{}});
  }
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const Cell alone = card::money(result.lines[i].value, prices);
    if (cells[i].text == alone.text) continue;
    table.notes.push_back(result.lines[i].name + ": " +
                          as_short_decimal(card::plain(values[i]), 4) + " is written " +
                          cells[i].text + " here, so that the column adds up.");
  }
  table.totals.push_back({words("as purchased"),
                          {},
                          exact_weight_cell(result.purchased, worksheet.weights),
                          percent_cell(1),
                          {},
                          card::money(result.total_cost, prices)});
  return table;
}

/// With a trim test in the same file also the shares of the weight as purchased, trim among them,
/// so that the column adds up to all that was paid for.
Table cooking_parts(const Worksheet& worksheet) {
  const CookingLossResult& result = *worksheet.cooking;
  const bool whole = worksheet.trim.has_value();
  Table table{"cooking_parts",
              "Cooking loss test",
              {words_column("part", "Part"), figures_column("weight", "Weight"),
               figures_column("share", "Share of oven-ready")},
              {},
              {},
              {}};
  if (whole) table.columns.push_back(figures_column("whole_share", "Share as purchased"));
  const auto row = [&](const char* part, const Mass& weight, Cell share) {
    std::vector<Cell> out{words(part), exact_weight_cell(weight, worksheet.weights),
                          std::move(share)};
    if (whole) out.push_back(percent_cell(weight / worksheet.trim->purchased, 2));
    return out;
  };
  const auto add = [&](const char* part, const Mass& weight, const Rational& share) {
    table.add(row(part, weight, percent_cell(share, 2)));
  };
  if (whole) table.add(row("trim", worksheet.trim->trim, {}));
  add("cooking loss", result.cooking_loss, result.shrink);
  add("bones and trim", result.bones_and_trim, result.bones_and_trim_share);
  add("saleable", result.saleable, result.saleable_share);
  table.totals.push_back(row("oven-ready", result.trimmed, percent_cell(1)));
  if (whole) table.totals.push_back(row("as purchased", worksheet.trim->purchased, {}));
  table.notes.push_back(result.base == CostBase::invoice
                            ? "The cost starts from the invoice: by-products are not taken off."
                            : "The cost starts net of the credits for by-products.");
  return table;
}

Table working_table(const std::string& key, const Working& working, const FigureWriter& writer) {
  Table table{key + "_working",
              "The working",
              {words_column("step", "Step"), words_column("working", "Working"),
               figures_column("result", "Result")},
              {},
              {},
              {}};
  for (const WorkingStep& step : working) {
    table.add({words(step.name), words(writer.line(step)), writer.cell(step.form, step.value)});
  }
  return table;
}

std::string deviations_text(const HandbookComparison& comparison) {
  std::string out;
  if (comparison.deviations) {
    const Rational& value = *comparison.deviations;
    out = as_decimal(value < 0 ? -value : value, 1) + " SD " + (value < 0 ? "below" : "above");
  } else {
    out = "no SD printed";
  }
  if (comparison.within_range) out += *comparison.within_range ? ", in range" : ", OUT OF RANGE";
  if (comparison.other_cut) out += ", ANOTHER CUT";
  return out;
}

void add_handbook(Sheet& sheet, const HandbookRow& row) {
  if (row.comparisons.empty()) {
    sheet.add(Paragraphs{
        "handbook", "Beside the handbook", {"No step of " + row.name + " was tested here."}});
    return;
  }
  Table table{"handbook",
              "Beside the handbook: " + row.name,
              {words_column("step", "Step"), figures_column("tested", "Tested"),
               figures_column("table", "Table"), words_column("spread", "Spread"),
               words_column("apart", "How far out")},
              {},
              {},
              {}};
  for (const HandbookComparison& comparison : row.comparisons) {
    const Rung& rung = comparison.rung;
    table.add({words(comparison.from_oven_ready ? "oven-ready to " + std::string(name_of(rung.to))
                                                : words_for(rung)),
               percent_cell(comparison.tested, 2),
               cited(sheet, percent_cell(rung.yield, 2), card::source_text(rung)),
               words(card::spread_text(rung.spread)), words(deviations_text(comparison))});
  }
  sheet.add(std::move(table));
  if (!row.has_other_cut()) return;
  std::string text = "The row is of goods bought \"" + row.bought +
                     "\". Where it says ANOTHER CUT, one of the two has the bone in its weight and "
                     "the other has not: they can't be compared.";
  if (!row.instead.empty()) text += " Hold it against the row \"" + row.instead + "\".";
  sheet.add(Box{"other_cut", "Another cut", {text}});
}

}  // namespace

Sheet worksheet_sheet(const Worksheet& worksheet, std::optional<unsigned> price_digits) {
  const FigureWriter writer(worksheet, price_digits);
  Sheet sheet(SheetKind::worksheet);
  sheet.title = "Worksheet: " + worksheet.name;
  sheet.subtitles = {"Money in " + worksheet.currency.code() +
                     ". Every step goes on from exact figures; "
                     "only what is written is rounded."};
  if (worksheet.trim) {
    sheet.add(trim_parts(worksheet, writer));
    sheet.add(working_table("trim", worksheet.trim_working, writer));
    card::add_answers(sheet, "trim", worksheet.trim_answers, worksheet.trim_working, worksheet,
                      writer);
  }
  if (worksheet.cooking) {
    sheet.add(cooking_parts(worksheet));
    sheet.add(working_table("cooking", worksheet.cooking_working, writer));
    card::add_answers(sheet, "cooking", worksheet.cooking_answers, worksheet.cooking_working,
                      worksheet, writer);
  }
  if (worksheet.handbook) add_handbook(sheet, *worksheet.handbook);
  if (worksheet.new_price) {
    sheet.add(Paragraphs{"note",
                         "",
                         {"A factor takes for granted that by-products and labour move with the "
                          "purchase price."}});
  }
  return sheet;
}

}  // namespace platewright
