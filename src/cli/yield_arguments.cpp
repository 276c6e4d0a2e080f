// SPDX-License-Identifier: MIT
#include "cli/add_commands.hpp"
#include "cli/command_options.hpp"

namespace platewright::cli {

void add_yield_command(CLI::App& program, YieldArguments& parsed, CommonOptions& common) {
  CLI::App* yield =
      add_command(program, "yield", command_group::yields,
                  "A cut or other goods from the weight bought to the weight served", common);
  argument(*yield, "name", placeholder::cut, parsed.name,
           "a row of yields, or an ingredient of --book");
  Options asked(*yield, group::asked);
  asked.value("--buy", placeholder::weight, parsed.buy, "what will this weight serve?");
  asked.value("--guests", placeholder::number, parsed.guests, "what to buy for so many portions?");
  asked.value("--portion", placeholder::portion, parsed.portion, "a portion on the plate");
  asked.value("--piece", placeholder::weight, parsed.piece,
              "average weight of a whole piece as purchased");
  asked.value("--spread", placeholder::weight, parsed.spread,
              "standard deviation of the pieces' weight");
  asked.value("--sure", placeholder::share, parsed.sure,
              "how sure the guests are to be covered, as \"95 %\"");
  asked.one_of("--choose", "WHICH", {"careful", "middle"}, parsed.choose,
               "of the rows of a cut, the one of the lowest yield or the middle one");
  asked.flag("--any-method", parsed.any_method, "of its rows however they are cooked")
      ->needs("--choose");
  asked.value("--tested", placeholder::step, parsed.tested, "your own yield for a step");
  add_kitchen_options(*yield, common);
  add_books(*yield, parsed.books);
}

void add_worksheet_command(CLI::App& program, WorksheetArguments& parsed, CommonOptions& common) {
  CLI::App* worksheet =
      add_command(program, "worksheet", command_group::yields,
                  "A trim test or cooking loss test, worked line by line", common);
  auto* files = argument(*worksheet, "files", placeholder::file, parsed.files,
                         "a worksheet's file; several, or a folder of them, are marked as a class")
                    ->required(false);
  Options typed(*worksheet, group::typed);
  typed.value("--purchased", placeholder::purchase, parsed.purchased, "what was bought");
  typed.value("--labour", placeholder::rate, parsed.labour, "of the weight as purchased");
  typed.value("--usable", placeholder::part, parsed.usable, "what is used, with a name or without");
  typed.value("--by-product", placeholder::by_product, parsed.by_products,
              "what is used otherwise, and what it is worth");
  typed.value("--waste", placeholder::part, parsed.waste, "what is thrown away");
  typed.value("--cutting-loss", placeholder::part, parsed.cutting_loss,
              "what stays on the board and in the saw");
  typed.value("--portion", placeholder::weight, parsed.portion, "weight of a portion");
  typed.value("--new-price", placeholder::rate, parsed.new_price, "another purchase price");
  typed.value("--handbook", placeholder::cut, parsed.handbook,
              "a row of yields to hold it against");
  Options(*worksheet, group::printed)
      .between("--digits", 3, 6, parsed.digits,
               "decimals of a price by weight, 3 to 6, as handbooks print 5.156");
  add_books(*worksheet, parsed.books);
  // Of a file only what is in it counts; not said at each option of the help.
  worksheet->parse_complete_callback([worksheet, files] {
    if (files->count() == 0) return;
    for (const char* beside : {"--purchased", "--labour", "--usable", "--by-product", "--waste",
                               "--cutting-loss", "--portion", "--new-price", "--handbook"}) {
      if (worksheet->get_option(beside)->count() > 0) throw CLI::ExcludesError("files", beside);
    }
  });
}

void add_exercise_command(CLI::App& program, ExerciseArguments& parsed, CommonOptions& common) {
  CLI::App* exercise =
      add_command(program, "exercise", command_group::yields,
                  "A new trim and cooking loss test to work, drawn for a number", common);
  argument(*exercise, "number", placeholder::number, parsed.number,
           "any whole number; the same number is the same exercise for everyone");
  Options(*exercise, group::shown)
      .flag("--solution", parsed.solution,
            "instead of the file to fill in, the sheet worked line by line");
  Options(*exercise, group::asked)
      .one_of("--measures", "WHICH", {"us", "metric"}, parsed.measures, "pounds or kilograms");
  add_books(*exercise, parsed.books);
}

void add_trials_command(CLI::App& program, TrialsArguments& parsed, CommonOptions& common) {
  CLI::App* trials = add_command(program, "trials", command_group::yields,
                                 "Trials of one cut: both averages, and the yield to keep", common);
  argument(*trials, "file", placeholder::file, parsed.file, "a trials file");
  Options(*trials, group::shown)
      .flag("--tables", parsed.tables,
            "instead of the sheet, the tables file that keeps it as your own cut");
  add_books(*trials, parsed.books);
}

}  // namespace platewright::cli
