// SPDX-License-Identifier: MIT
#include "card/sheets/yield_sure.hpp"

#include "platewright/card/figures.hpp"

namespace platewright::card {
namespace {

std::string joined(const std::vector<std::string>& names) {
  std::string out;
  for (const std::string& name : names) out += (out.empty() ? "" : ", ") + name;
  return out;
}

void add_cannot_tell(Sheet& sheet, const std::vector<std::string>& unknown) {
  sheet.add(Paragraphs{"how_sure",
                       "How sure",
                       {"This can't be told: no spread is published for " + joined(unknown) +
                        ". Keep trials of your own, or buy by the lowest yield."}});
}

void add_method(Sheet& sheet, const YieldAnswer& answer) {
  std::string text =
      "Normal approximation: the spread of each rung counts once for the roasts of the day and "
      "once for the samples behind its average";
  if (answer.up->sure_pieces) {
    text += answer.question.piece_spread
                ? ", and the spread of the pieces with them"
                : "; the pieces are taken as all alike, since no spread of theirs is given";
  } else {
    text += "; all is taken as one roast, the careful case";
  }
  sheet.add(Paragraphs{"how_sure_method", "", {text + "."}});
}

}  // namespace

void add_how_sure(Sheet& sheet, const YieldAnswer& answer, const KitchenView& view) {
  const YieldUp& up = *answer.up;
  if (up.sure && !up.sure->can_tell()) return add_cannot_tell(sheet, up.sure->unknown);
  if (up.sure_pieces && !up.sure_pieces->can_tell()) {
    return add_cannot_tell(sheet, up.sure_pieces->unknown);
  }
  if (!up.sure && !up.sure_pieces) return;
  Facts facts{"how_sure", "How sure", {}};
  facts.add("probability", "To cover the guests with", percent_cell(*answer.question.probability));
  if (up.sure) {
    facts.add("sure_purchased", "BUY", view.weight(*up.sure->purchased, Rounding::up));
    facts.add("average_purchased", "At the average",
              view.weight(up.sure->average.purchased, Rounding::up));
    facts.add("sure_extra", "More, to be that sure",
              view.weight(*up.sure->purchased - up.sure->average.purchased, Rounding::up));
  } else {
    const PiecesToBuy& sure = *up.sure_pieces->sure;
    const PiecesToBuy& average = up.sure_pieces->average;
    facts.add("sure_pieces", "BUY, whole pieces", figure(Rational(sure.pieces), sure.pieces.str()));
    facts.add("sure_purchased", "They weigh", view.weight(sure.purchased, Rounding::half_up));
    facts.add("average_pieces", "At the average, pieces",
              figure(Rational(average.pieces), average.pieces.str()));
    facts.add("average_purchased", "They weigh", view.weight(average.purchased, Rounding::half_up));
  }
  sheet.add(std::move(facts));
  add_method(sheet, answer);
}

}  // namespace platewright::card
