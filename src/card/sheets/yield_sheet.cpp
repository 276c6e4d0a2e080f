#include "platewright/card/yield_sheet.hpp"

#include "card/sheets/shared.hpp"

namespace platewright {
namespace {

std::string spread_text(const Spread& spread) {
  std::string out;
  if (spread.samples) out += "n " + std::to_string(*spread.samples);
  if (spread.standard_deviation) {
    out += (out.empty() ? "" : ", ") + std::string("SD ") +
           as_short_decimal(*spread.standard_deviation * 100, 2) + " points";
  }
  if (spread.low && spread.high) {
    out += (out.empty() ? "" : ", ") + as_short_decimal(*spread.low * 100, 1) + " to " +
           as_short_decimal(*spread.high * 100, 1) + " %";
  }
  return out;
}

std::string source_text(const Rung& rung) {
  std::string out = rung.source.text;
  if (!rung.source.row.empty()) out += ": " + rung.source.row;
  return rung.own ? out + " (own test)" : out;
}

Table rung_table(Sheet& sheet, const Ladder& ladder) {
  Table table{"rungs", "The ladder",
              {words_column("from", "From"), words_column("to", "To"),
               figures_column("yield", "Yield"), words_column("holds", "Holds"),
               words_column("spread", "Spread")},
              {}, {}, {}};
  for (const Rung& rung : ladder.rungs()) {
    std::string holds;
    for (const Loss loss : rung.holds) {
      holds += (holds.empty() ? "" : ", ") + std::string(name_of(loss));
    }
    table.add({words(std::string(name_of(rung.from))), words(std::string(name_of(rung.to))),
               cited(sheet, percent_cell(rung.yield, 2), source_text(rung)), words(holds),
               words(spread_text(rung.spread))});
  }
  table.totals.push_back({words(std::string(name_of(ladder.first()))),
                          words(std::string(name_of(ladder.last()))),
                          percent_cell(ladder.yield(), 2), {}, {}});
  return table;
}

Bars walk_bars(const Ladder& ladder, const Mass& purchased, const KitchenView& view,
               const std::string& key, const std::string& title) {
  Bars bars{key, title, {}};
  for (const LadderStep& step : ladder.walk(purchased)) {
    const std::string stage(name_of(step.stage));
    bars.bars.push_back({stage, stage, step.share, view.weight(step.mass), percent_cell(step.share)});
  }
  return bars;
}

Cell count_cell(const Integer& count, const std::string& unit) {
  return figure(Rational(count), count.str(), unit);
}

void add_walk_down(Sheet& sheet, const Ladder& ladder, const YieldQuestion& question,
                   const KitchenView& view) {
  const Mass& buy = *question.buy;
  sheet.add(walk_bars(ladder, buy, view, "down", "Down: what " + view.weight(buy).text + " serves"));
  if (!question.portion) return;
  const PortionsServed served = portions_from(ladder, buy, *question.portion);
  Facts facts{"serves", "", {}};
  facts.add("portion", "Portion", view.weight(*question.portion));
  facts.add("portions", "PORTIONS, rounded down", count_cell(served.portions, ""));
  facts.add("left_over", "Left over, served", view.weight(served.left_over));
  sheet.add(std::move(facts));
}

void add_walk_up(Sheet& sheet, const Ladder& ladder, const YieldQuestion& question,
                 const KitchenView& view) {
  const WeightToBuy need = weight_to_buy(ladder, *question.guests, *question.portion);
  sheet.add(walk_bars(ladder, need.purchased, view, "up",
                      "Up: what to buy for " + as_short_decimal(*question.guests, 2) + " portions of " +
                          view.weight(*question.portion).text));
  Facts facts{"buy", "", {}};
  facts.add("served", "On the plates", view.weight(need.served));
  facts.add("purchased", "WEIGHT TO BUY", view.weight(need.purchased));
  if (question.piece) {
    const PiecesToBuy pieces = pieces_to_buy(ladder, need, *question.piece);
    facts.add("pieces", "WHOLE PIECES, rounded up",
              count_cell(pieces.pieces, "of " + view.weight(pieces.piece).text));
    facts.add("pieces_weight", "They weigh", view.weight(pieces.purchased));
    facts.add("pieces_serve", "They serve", count_cell(pieces.serves, "portions"));
    facts.add("surplus", "Beyond the need, served", view.weight(pieces.surplus_served));
  }
  sheet.add(std::move(facts));
}

}  // namespace

Sheet yield_sheet(const std::string& name, const Ladder& ladder, const YieldQuestion& question,
                  const KitchenView& view) {
  Sheet sheet;
  sheet.kind = "yield";
  sheet.title = "Yield: " + name;
  sheet.add(rung_table(sheet, ladder));
  if (question.buy) add_walk_down(sheet, ladder, question, view);
  if (question.guests && question.portion) add_walk_up(sheet, ladder, question, view);
  sheet.add(Paragraphs{"note", "",
                       {"Averages of a table or of your own test: weigh what you buy, and keep the "
                        "result as your own yield."}});
  return sheet;
}

}  // namespace platewright
