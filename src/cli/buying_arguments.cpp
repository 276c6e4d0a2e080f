// SPDX-License-Identifier: MIT
#include "cli/add_commands.hpp"
#include "cli/command_options.hpp"

namespace platewright::cli {

void add_order_command(CLI::App& program, OrderArguments& parsed, CommonOptions& common) {
  CLI::App* order =
      add_command(program, "order", command_group::buying,
                  "What to buy, in whole packs and pieces, for one event or several", common);
  argument(*order, "files", placeholder::file, parsed.files, "events' files");
  add_prices(*order, parsed.prices);
  add_changes(*order, parsed.prices);
  add_deliveries(*order, parsed.prices);
  Options shown(*order, group::shown);
  shown.value("--supplier", placeholder::supplier, parsed.supplier, "what goes to this one alone");
  shown.flag("--delivery-notes", parsed.delivery_notes,
             "for each delivery a note to take it in by");
  shown.value("--ordered", placeholder::moment, parsed.ordered,
              "when the order is given: says what is too late for that");
}

void add_prices_command(CLI::App& program, PricesArguments& parsed, CommonOptions& common) {
  CLI::App* prices =
      add_command(program, "prices", command_group::buying,
                  "A supplier's CSV price list as a file of prices for the book", common);
  argument(*prices, "file", placeholder::file, parsed.file,
           "the file that says how to read the list");
  Options(*prices, group::shown)
      .flag("--good-rows", parsed.good_rows,
            "take in the rows that can be read, and list the others");
  add_books(*prices, parsed.books);
}

}  // namespace platewright::cli
