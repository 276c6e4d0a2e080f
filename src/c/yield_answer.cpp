// SPDX-License-Identifier: MIT
// Cuts, produce and grains walked from the weight bought to the plate.

#include "platewright/yield/yield_answer.hpp"

#include "c/reply.hpp"
#include "platewright/problem/catalogue/recipes.hpp"
#include "platewright/quantity/read_amount.hpp"
#include "platewright/yield/chosen_row.hpp"

namespace platewright::c {
namespace {

/// What is asked, and the unit that its weights are given in.
struct Asked {
  YieldQuestion question;
  std::optional<Unit> unit;
};

Amount weight_typed(std::string_view argument, const char* text, const Book& book) {
  return of_argument(argument, [&] {
    Amount weight = read_amount(text, book.tables.units, book.measures);
    if (to_mass(weight) <= Mass()) throw Failure(problems::number_not_positive("a weight", text));
    return weight;
  });
}

Asked question_of(const Book& book, const char* buy, const char* portion, const char* guests) {
  Asked out;
  if (portion != nullptr) {
    const auto read = [&] { return read_portion_size(portion, book.tables.units, book.measures); };
    out.question.portion = of_argument("portion", read);
    if (buy == nullptr) out.unit = weight_typed("portion", portion, book).unit;
  }
  if (buy != nullptr) {
    const Amount weight = weight_typed("buy", buy, book);
    out.question.buy = to_mass(weight);
    out.unit = weight.unit;
  }
  if (guests != nullptr) out.question.guests = number_typed("guests", guests);
  if (guests != nullptr && buy == nullptr && portion == nullptr) {
    throw Failure(problems::portion_missing());
  }
  return out;
}

YieldRow row_asked(const Book& book, const char* name) {
  if (const Ingredient* own = book.recipes.find_ingredient(name)) {
    return {own->name, YieldKind::cut, own->ladder};
  }
  return of_argument("name", [&] { return row_named(book.tables.yields, name).row; });
}

/// The weights of the walk asked for; where none was, the shares alone.
void keep_steps(const Ladder& ladder, const YieldAnswer& answer, const std::optional<Unit>& unit,
                platewright_reply& reply) {
  const bool weighed = answer.down || answer.up;
  const std::vector<LadderStep> walk = answer.down ? answer.down->walk
                                       : answer.up ? answer.up->walk
                                                   : ladder.walk(Mass::of(1, units::gram));
  for (const LadderStep& step : walk) {
    std::optional<Amount> weight;
    if (weighed) weight = to_amount(step.mass, *unit);
    reply.yield_steps.push_back({kept(reply, std::string(name_of(step.stage))), kept(reply, weight),
                                 kept(reply, step.share),
                                 kept(reply, step.rung ? step.rung->source.text : std::string())});
  }
}

void keep(const YieldRow& row, const YieldAnswer& answer, const std::optional<Unit>& unit,
          platewright_reply& reply) {
  keep_steps(row.ladder, answer, unit, reply);
  std::optional<Rational> portions;
  if (answer.down && answer.down->serves) portions = Rational(answer.down->serves->portions);
  std::optional<Amount> to_buy;
  if (answer.up) to_buy = to_amount(answer.up->need.purchased, *unit);
  reply.yield = platewright_yield{kept(reply, row.name),    kept(reply, row.ladder.yield()),
                                  kept(reply, portions),    kept(reply, to_buy),
                                  reply.yield_steps.size(), reply.yield_steps.data()};
}

}  // namespace
}  // namespace platewright::c

using namespace platewright;

extern "C" {

platewright_reply* platewright_ask_yield(const platewright_book* book, const char* name,
                                         const char* buy, const char* portion, const char* guests) {
  if (name == nullptr) return c::wrong_call("name");
  return c::answered([&](platewright_reply& reply, ProblemList&) {
    const Book tables = book == nullptr ? Book() : book->value;
    const YieldRow row = c::row_asked(tables, name);
    const c::Asked asked = c::question_of(tables, buy, portion, guests);
    c::keep(row, answer(row.ladder, asked.question), asked.unit, reply);
  });
}

}  // extern "C"
