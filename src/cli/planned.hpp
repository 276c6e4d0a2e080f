// SPDX-License-Identifier: MIT
#pragma once
// The plan that the options of a command ask for. Every command that shows a plan takes them all.

#include <optional>

#include "cli/arguments.hpp"
#include "platewright/book/book.hpp"
#include "platewright/card/sheet.hpp"
#include "platewright/day/plan_day.hpp"
#include "platewright/event/dish_notices.hpp"
#include "platewright/event/event_plan.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright::cli {

/// The prices that count on the day asked for, or on the event's. Throws WrongArgument.
PriceList prices_for(const PriceOptions& options, const Book& book, const Event* event);

/// So many guests of the same mix. Throws WrongArgument, which names the option.
void change_guests_asked(const char* option, const std::string& number, Event& event);

/// What is changed of an occasion: prices, swaps, guests. What the changed recipes have to be
/// warned of joins the problems. Throws WrongArgument.
void apply_changes(const PriceOptions& options, const Book& book, Occasion& occasion,
                   ProblemList& problems);

/// `--cheapest`: the offers by what the event makes it buy.
void choose_offers(const PriceOptions& options, Occasion& occasion);

/// The event, or no event, with the book's recipes and its prices, changed as asked; its offers are
/// not chosen yet. Throws WrongArgument.
Occasion occasion_asked(const PriceOptions& options, const Book& book, const Event* event,
                        ProblemList& problems);

/// The plan of an event with all that the options ask. Throws Failure and WrongArgument.
EventPlan plan_asked(const PriceOptions& options, const Book& book, const Event& event,
                     ProblemList& problems);

/// The plan of the day in the book's kitchen; nothing where the book says of none what it has.
/// Throws Failure as `plan_day` does.
std::optional<DayPlan> day_of_plan(const EventPlan& plan, const Book& book);

/// The timeline, with the day's plan in it where there is one. Throws Failure as `make_timeline`
/// does.
Timeline planned_timeline(const EventPlan& plan, const Book& book);

/// What is to be said of each dish's allergens and temperatures.
std::vector<DishNotice> notices_of(const EventPlan& plan, const Book& book);

/// The book with the recipes and the prices of an occasion, for the sheets.
Book book_of(const Book& book, const Occasion& occasion);

bool changes_anything(const PriceOptions& options);

/// What was changed, a line each: `what if: 90 guests`.
std::vector<std::string> changes_said(const PriceOptions& options);

/// What the sheet says on top where something was changed.
void say_changes(const PriceOptions& options, Sheet& sheet);

}  // namespace platewright::cli
