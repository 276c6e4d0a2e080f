// SPDX-License-Identifier: MIT
// What it costs and what is charged.

#include "cli/add_commands.hpp"
#include "cli/command_options.hpp"

namespace platewright::cli {

void add_cost_command(CLI::App& program, CostArguments& parsed, CommonOptions& common) {
  CLI::App* cost =
      add_command(program, "cost", command_group::money, "The plate cost, line by line", common);
  argument(*cost, "file", placeholder::file, parsed.file, "a recipe's or an event's file");
  add_scale(*cost, parsed.scale);
  add_prices(*cost, parsed.prices);
  add_changes(*cost, parsed.prices);
  add_deliveries(*cost, parsed.prices);
  Options(*cost, group::prices)
      .flag("--round-unit-prices", parsed.prices.round_unit_prices,
            "round the price of a unit before it is multiplied: not exact");
  Options shown(*cost, group::shown);
  shown.value("--recipe", placeholder::recipe, parsed.recipe, "of several recipes, this one");
  shown.value("--q-factor", placeholder::share, parsed.q_factor,
              "share for what no one measures; that of the event's quote if none is given");
  shown.value("--at-price", placeholder::price, parsed.at_price,
              "the food cost percentage at this price of a portion, or of a guest");
  shown.value("--food-cost", placeholder::share, parsed.food_cost,
              "the price at which the food is this share of it");
  shown.value("--why", placeholder::answer, parsed.why, "how this line was worked out");
}

/// Recipes as they are written, at their first offers: neither guests nor an order is asked about.
void add_plates_command(CLI::App& program, PlatesArguments& parsed, CommonOptions& common) {
  CLI::App* plates =
      add_command(program, "plates", command_group::money,
                  "The plate cost of every recipe of a book, a row for each", common);
  argument(*plates, "files", placeholder::file, parsed.files,
           "recipes' files, or one that names them");
  Options which(*plates, group::prices);
  which.value("--prices-on", placeholder::date, parsed.prices.day,
              "the newest prices on or before this day; the event's day if none is given");
  which.flag("--round-unit-prices", parsed.prices.round_unit_prices,
             "round the price of a unit before it is multiplied: not exact");
  Options what_if(*plates, group::what_if);
  what_if.each("--price", placeholder::change, parsed.prices.changes,
               "a price that rises or falls, or is another, of a pack too");
  what_if.each("--swap", placeholder::swap, parsed.prices.swaps,
               "the same amount of something else");
}

void add_quote_command(CLI::App& program, QuoteArguments& parsed, CommonOptions& common) {
  CLI::App* quote = add_command(program, "quote", command_group::money,
                                "The price for a guest and the whole quote of an event", common);
  argument(*quote, "file", placeholder::file, parsed.file, "an event's file");
  add_prices(*quote, parsed.prices);
  add_changes(*quote, parsed.prices);
  add_deliveries(*quote, parsed.prices);
  Options what_if(*quote, group::what_if);
  what_if.value("--agreed-price", placeholder::price, parsed.agreed_price,
                "the full price of a guest is this, whatever the rule asks");
  what_if
      .value("--turn-up", placeholder::number, parsed.turn_up,
             "so many come, at the price quoted for the number expected")
      ->excludes("--guests")
      ->excludes("--agreed-price");
  Options shown(only_one_of(*quote, "question", "the quote itself if none is asked"), group::shown);
  shown.flag("--client", parsed.client, "the client's sheet: no costs, lines to sign on");
  shown.flag("--invoice", parsed.invoice, "the invoice after the event");
  shown.value("--why", placeholder::answer, parsed.why, "how this line was worked out");
  shown.each("--guest-table", placeholder::numbers, parsed.guest_table, "a row for each number")
      ->delimiter(',');
  shown.value("--movers", placeholder::share, parsed.movers,
              "the five prices and yields that move the price most, moved by this");
  shown.value("--floor", placeholder::share, parsed.floor,
              "the chance that the margin falls below this");
  Options draws(*quote, group::draws);
  draws.value("--seed", placeholder::count, parsed.seed,
              "where the draws behind --floor begin; the same seed draws the same");
  draws.value("--draws", placeholder::count, parsed.draws, "how many of them, 100 to 1000000");
}

void add_budget_command(CLI::App& program, BudgetArguments& parsed, CommonOptions& common) {
  CLI::App* budget =
      add_command(program, "budget", command_group::money,
                  "Which cuts and portions fit a price for a guest and a margin", common);
  argument(*budget, "file", placeholder::file, parsed.file, "an event's file");
  Options asked(*budget, group::asked);
  asked.value("--price", placeholder::price, parsed.price, "for a guest at the full price")
      ->required();
  asked.value("--margin", placeholder::share, parsed.margin, "on the price")->required();
  asked.value("--dish", placeholder::recipe, parsed.dish, "the dish of the menu that may change")
      ->required();
  asked.each("--cut", placeholder::name, parsed.cuts, "a cut of the larder; once for each")
      ->required();
  asked
      .each("--portion", placeholder::weight, parsed.portions,
            "its weight as served; once for each")
      ->required();
  add_prices(*budget, parsed.prices);
  add_deliveries(*budget, parsed.prices);
}

/// A workbook is a file: it is not for the screen.
void add_workbook_command(CLI::App& program, WorkbookArguments& parsed, CommonOptions& common) {
  CLI::App* workbook =
      add_command(program, "workbook", command_group::money,
                  "Cost, order and quote of an event as a spreadsheet that goes on calculating",
                  common, {"xlsx"});
  argument(*workbook, "file", placeholder::file, parsed.file, "an event's file");
  workbook->get_option("--output")->required();
  add_prices(*workbook, parsed.prices);
  add_changes(*workbook, parsed.prices);
  add_deliveries(*workbook, parsed.prices);
}

}  // namespace platewright::cli
