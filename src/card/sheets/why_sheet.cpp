// SPDX-License-Identifier: MIT
// Why a line of a quote or of a plate cost is what it is.

#include "card/sheets/reasons.hpp"
#include "platewright/card/cost_sheet.hpp"
#include "platewright/card/quote_sheet.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/folded_name.hpp"

namespace platewright {
namespace {

bool is_called(const card::Reason& reason, const std::string& folded) {
  for (const std::string& name : reason.names) {
    if (platewright::folded_name(name) == folded) return true;
  }
  return false;
}

Facts answer(card::Reason reason, std::size_t number) {
  Facts facts{"line_" + std::to_string(number), reason.names.front(), {}, ColumnKind::words};
  unsigned inputs = 0;
  for (Fact& fact : reason.inputs) {
    fact.key = "input_" + std::to_string(++inputs);
    facts.facts.push_back(std::move(fact));
  }
  facts.add("formula", "formula", words(reason.formula));
  facts.add("result", "comes to", reason.result);
  return facts;
}

/// Every line of that name, since an ingredient may stand in several dishes.
Sheet answers(std::vector<card::Reason> reasons, const std::string& line,
              const std::string& subtitle) {
  const std::string wanted = platewright::folded_name(line);
  Sheet sheet(SheetKind::why);
  sheet.title = "Why: " + line;
  sheet.subtitles = {subtitle};
  std::vector<std::string> names;
  for (card::Reason& reason : reasons) {
    names.insert(names.end(), reason.names.begin(), reason.names.end());
    if (is_called(reason, wanted)) sheet.add(answer(std::move(reason), sheet.blocks.size() + 1));
  }
  if (!sheet.blocks.empty()) return sheet;
  throw Failure(problems::name_unknown("line with a reason", line, names,
                                       "name a line as the quote or a plate cost prints it"));
}

}  // namespace

Sheet why_sheet(const Event& event, const EventCost& cost, const Quote& quote,
                const std::string& line, const PriceList& prices) {
  return answers(card::reasons_of_quote(cost, quote, prices), line, event.name);
}

Sheet why_sheet(const Event& event, const EventCost& cost, const std::string& line,
                const PriceList& prices) {
  std::vector<card::Reason> reasons;
  for (const PlateCost& dish : cost.dishes) {
    for (card::Reason& reason : card::reasons_of_plate(dish, prices)) {
      reasons.push_back(std::move(reason));
    }
  }
  return answers(std::move(reasons), line, event.name);
}

Sheet why_sheet(const PlateCost& cost, const std::string& line, const PriceList& prices) {
  return answers(card::reasons_of_plate(cost, prices), line, cost.recipe);
}

}  // namespace platewright
