// SPDX-License-Identifier: MIT
// Books, and their recipes scaled and costed.

#include "c/reply.hpp"
#include "platewright/costing/current_prices.hpp"
#include "platewright/costing/plate_cost.hpp"
#include "platewright/event/safety_warnings.hpp"
#include "platewright/files/read_book.hpp"

namespace platewright::c {
namespace {

ScalePlan plan_asked(const Recipe& recipe, const RecipeBook& book, platewright_size by,
                     const char* number) {
  const Rational size = number_typed("number", number);
  switch (by) {
    case PLATEWRIGHT_BY_PORTIONS:
      return plan_for_portions(recipe, size, book);
    case PLATEWRIGHT_BY_PIECES:
      return plan_for_pieces(recipe, size, book);
    case PLATEWRIGHT_BY_FACTOR:
      break;
  }
  return plan_for_factor(recipe, size, book);
}

/// The recipe at its size; what there is to be warned of joins the problems.
ScaledRecipe scaled_as_asked(const Book& book, const char* name, platewright_size by,
                             const char* number, ProblemList& problems) {
  const Recipe& recipe = recipe_asked(book, name);
  ScaledRecipe out = scale(recipe, plan_asked(recipe, book.recipes, by, number), book.recipes);
  problems.add_all(safety_warnings(out, book.recipes, book.tables.safety));
  problems.add_all(safety_warnings(book.recipes, book.tables.safety));
  return out;
}

void keep(const ScaledRecipe& scaled, platewright_reply& reply) {
  for (const ScaledLine& line : scaled.lines) {
    reply.scaled_lines.push_back({kept(reply, line.line->name), kept(reply, line.line->part),
                                  kept(reply, line.amount.low()), kept(reply, line.amount.high()),
                                  kept(reply, line.start.low()), kept(reply, line.factor)});
  }
  reply.scaled =
      platewright_scaled{kept(reply, scaled.recipe->name),  kept(reply, scaled.plan.factor),
                         kept(reply, scaled.plan.portions), kept(reply, scaled.plan.pieces),
                         reply.scaled_lines.size(),         reply.scaled_lines.data()};
}

std::optional<Rational> units_of(const std::optional<Money>& sum) {
  if (!sum) return std::nullopt;
  return sum->in(units::currency_unit);
}

void keep(const PlateCost& cost, const Currency& currency, platewright_reply& reply) {
  for (const CostLine& line : cost.lines) {
    reply.cost_lines.push_back({kept(reply, line.name), kept(reply, line.part),
                                kept(reply, line.used), kept(reply, line.purchased),
                                kept(reply, line.supplier), kept(reply, line.cost)});
  }
  reply.cost = platewright_cost{kept(reply, cost.recipe),
                                kept(reply, currency.code()),
                                kept(reply, cost.total),
                                kept(reply, cost.portions),
                                kept(reply, units_of(cost.per_portion)),
                                reply.cost_lines.size(),
                                reply.cost_lines.data()};
}

}  // namespace
}  // namespace platewright::c

using namespace platewright;

extern "C" {

platewright_reply* platewright_read_book(const char* const* files, size_t count) {
  if (files == nullptr) return c::wrong_call("files");
  for (size_t i = 0; i < count; ++i) {
    if (files[i] == nullptr) return c::wrong_call("a file's name");
  }
  return c::answered([&](platewright_reply& reply, ProblemList& problems) {
    auto book = read_book({files, files + count}, problems);
    if (book) reply.book = platewright_book{std::move(*book)};
  });
}

platewright_reply* platewright_scale_recipe(const platewright_book* book, const char* recipe,
                                            platewright_size by, const char* number) {
  if (book == nullptr) return c::wrong_call("book");
  if (number == nullptr) return c::wrong_call("number");
  return c::answered([&](platewright_reply& reply, ProblemList& problems) {
    c::keep(c::scaled_as_asked(book->value, recipe, by, number, problems), reply);
  });
}

platewright_reply* platewright_cost_recipe(const platewright_book* book, const char* recipe,
                                           platewright_size by, const char* number) {
  if (book == nullptr) return c::wrong_call("book");
  if (number == nullptr) return c::wrong_call("number");
  return c::answered([&](platewright_reply& reply, ProblemList& problems) {
    const Book& asked = book->value;
    const ScaledRecipe scaled = c::scaled_as_asked(asked, recipe, by, number, problems);
    const auto day = asked.events.empty() ? std::nullopt : day_of(asked.events.front());
    const PriceList prices = current_prices(asked.prices, day);
    c::keep(plate_cost(scaled, asked.recipes, prices), prices.currency, reply);
  });
}

}  // extern "C"
