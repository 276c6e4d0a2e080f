// SPDX-License-Identifier: MIT
#include "platewright/card/yield_sheet.hpp"

#include "card/sheets/rung_texts.hpp"
#include "card/sheets/yield_rows.hpp"
#include "card/sheets/yield_sure.hpp"
#include "platewright/card/figures.hpp"

namespace platewright {
namespace {

Table rung_table(Sheet& sheet, const Ladder& ladder) {
  Table table{
      "rungs",
      "The ladder",
      {words_column("from", "From"), words_column("to", "To"), figures_column("yield", "Yield"),
       words_column("holds", "Holds"), words_column("spread", "Spread")},
      {},
      {},
      {}};
  for (const Rung& rung : ladder.rungs()) {
    table.add({words(std::string(name_of(rung.from))), words(std::string(name_of(rung.to))),
               cited(sheet, percent_cell(rung.yield, 2), card::source_text(rung)),
               words(card::losses_text(rung)), words(card::spread_text(rung.spread))});
  }
  table.totals.push_back({words(std::string(name_of(ladder.first()))),
                          words(std::string(name_of(ladder.last()))),
                          percent_cell(ladder.yield(), 2),
                          {},
                          {}});
  return table;
}

Bars walk_bars(const std::vector<LadderStep>& walk, const KitchenView& view, std::string key,
               std::string title) {
  Bars bars{std::move(key), std::move(title), {}};
  for (const LadderStep& step : walk) {
    const std::string stage(name_of(step.stage));
    // What is bought has one figure on the sheet: the one that covers.
    const Rounding rounding = step.stage == Stage::purchased ? Rounding::up : Rounding::half_up;
    bars.bars.push_back(
        {stage, stage, step.share, view.weight(step.mass, rounding), percent_cell(step.share)});
  }
  return bars;
}

Cell count_cell(const Integer& count, const std::string& unit) {
  return figure(Rational(count), count.str(), unit);
}

/// `2 slices of 3 oz`, beside the weight of the portion.
std::string portion_text(const PortionSize& size, const KitchenView& view) {
  if (const auto* slices = std::get_if<SlicePortion>(&size)) {
    std::string out = as_short_decimal(slices->slices, 2) + " slices of ";
    if (slices->thickness) {
      out += as_mixed(slices->thickness->in(units::inch)) + " in, ";
    }
    return out + view.weight(slices->slice, Rounding::half_up).text;
  }
  if (const auto* ribs = std::get_if<RibPortion>(&size)) {
    return as_short_decimal(ribs->ribs, 2) + " of " + as_short_decimal(ribs->of, 2) + " ribs";
  }
  return "";
}

void add_portion(Facts& facts, const YieldAnswer& answer, const KitchenView& view) {
  facts.add("portion", "Portion" + card::with_what_is_held(answer.ladder),
            view.weight(*answer.portion, Rounding::half_up));
  const std::string served_as = portion_text(*answer.question.portion, view);
  if (!served_as.empty()) facts.add("portion_as", "Served as", words(served_as));
}

void add_down(Sheet& sheet, const YieldAnswer& answer, const KitchenView& view) {
  const YieldDown& down = *answer.down;
  const Mass& buy = *answer.question.buy;
  sheet.add(walk_bars(down.walk, view, "down",
                      "Down: what " + view.weight(buy, Rounding::half_up).text + " serves"));
  Facts facts{"serves", "", {}};
  if (down.serves) {
    add_portion(facts, answer, view);
    facts.add("portions", "PORTIONS, rounded down", count_cell(down.serves->portions, ""));
    facts.add("left_over", "Left over, served",
              view.weight(down.serves->left_over, Rounding::down));
  }
  if (down.portion_each) {
    facts.add("guests", "Guests", number_cell(*answer.question.guests, 2));
    facts.add("portion_each", "PORTION FOR EACH", view.weight(*down.portion_each, Rounding::down));
  }
  if (!facts.facts.empty()) sheet.add(std::move(facts));
}

void add_up(Sheet& sheet, const YieldAnswer& answer, const KitchenView& view) {
  const YieldUp& up = *answer.up;
  sheet.add(walk_bars(up.walk, view, "up",
                      "Up: what to buy for " + as_short_decimal(up.need.portions, 2) +
                          " portions of " + view.weight(up.need.portion, Rounding::half_up).text));
  Facts facts{"buy", "", {}};
  if (!answer.down) add_portion(facts, answer, view);
  facts.add("served", "On the plates", view.weight(up.need.served, Rounding::half_up));
  facts.add("purchased", "WEIGHT TO BUY", view.weight(up.need.purchased, Rounding::up));
  if (up.pieces) {
    facts.add("pieces", "WHOLE PIECES, rounded up",
              count_cell(up.pieces->pieces,
                         "of " + view.weight(up.pieces->piece, Rounding::half_up).text));
    facts.add("pieces_weight", "They weigh", view.weight(up.pieces->purchased, Rounding::half_up));
    facts.add("pieces_serve", "They serve", count_cell(up.pieces->serves, "portions"));
    facts.add("surplus", "Beyond the need, served",
              view.weight(up.pieces->surplus_served, Rounding::down));
  }
  sheet.add(std::move(facts));
  card::add_how_sure(sheet, answer, view);
}

}  // namespace

Sheet yield_sheet(const ChosenRow& chosen, const YieldAnswer& answer, const KitchenView& view,
                  bool choose) {
  Sheet sheet(SheetKind::yield);
  sheet.title = "Yield: " + chosen.row.name;
  sheet.add(rung_table(sheet, answer.ladder));
  card::add_still_held(sheet, chosen, answer.ladder);
  card::add_still_raw(sheet, chosen, answer.ladder);
  if (chosen.among.size() > 1 && (choose || lies_far_apart(chosen))) card::add_rows(sheet, chosen);
  if (answer.down) add_down(sheet, answer, view);
  if (answer.up) add_up(sheet, answer, view);
  sheet.add(Paragraphs{"note",
                       "",
                       {"Averages of a table or of your own test: weigh what you buy, and keep the "
                        "result as your own yield."}});
  return sheet;
}

}  // namespace platewright
