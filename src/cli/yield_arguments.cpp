#include "cli/yield_arguments.hpp"

#include "cli/command_options.hpp"

namespace platewright::cli {

void add_yield_command(CLI::App& program, YieldArguments& parsed, CommonOptions& common) {
  CLI::App* yield = add_command(
      program, "yield", "A cut or other goods from the weight bought to the weight served", common);
  yield->add_option("name", parsed.name, "a row of yields, or an ingredient of --book")->required();
  yield->add_option("--buy", parsed.buy, "what will this weight serve?");
  yield->add_option("--guests", parsed.guests, "what to buy for so many portions?");
  yield->add_option("--portion", parsed.portion,
                    "a portion on the plate: \"6 oz\", \"2 slices of 3 oz\", \"1 rib of 7\"");
  yield->add_option("--piece", parsed.piece, "average weight of a whole piece as purchased");
  yield->add_option("--spread", parsed.spread, "standard deviation of the pieces' weight");
  yield->add_option("--sure", parsed.sure, "how sure the guests are to be covered, as 95 %");
  add_kitchen_options(*yield, common);
  yield
      ->add_option("--choose", parsed.choose,
                   "of the rows of a cut, the one of the lowest yield or the middle one")
      ->check(CLI::IsMember({"careful", "middle"}));
  yield
      ->add_flag("--any-method", parsed.any_method,
                 "with --choose: of its rows however they are cooked")
      ->needs("--choose");
  yield->add_option("--tested", parsed.tested,
                    "your own yield for a step, as \"cooked to served 70 %\"");
  add_books(*yield, parsed.books);
}

void add_worksheet_command(CLI::App& program, WorksheetArguments& parsed, CommonOptions& common) {
  CLI::App* worksheet = add_command(
      program, "worksheet", "A trim test or cooking loss test, worked line by line", common);
  auto* files = worksheet->add_option(
      "files", parsed.files,
      "a worksheet's file; several, or a folder of them, are marked as a class");
  worksheet->add_option("--purchased", parsed.purchased,
                        "without a file: \"12 lb at 10 per lb\" or \"12 lb for 120\"");
  worksheet->add_option("--labour", parsed.labour, "\"1.00 per lb\" as purchased");
  worksheet->add_option("--usable", parsed.usable, "\"4 lb\", \"loin: 4 lb\" or \"the rest\"");
  worksheet->add_option("--by-product", parsed.by_products, "\"ground: 3 lb at 2 per lb\"");
  worksheet->add_option("--waste", parsed.waste, "\"bone: 2 lb\"");
  worksheet->add_option("--cutting-loss", parsed.cutting_loss, "\"8 oz\" or \"the rest\"");
  worksheet->add_option("--portion", parsed.portion, "weight of a portion");
  worksheet->add_option("--new-price", parsed.new_price,
                        "another purchase price, as \"11 per lb\"");
  worksheet->add_option("--handbook", parsed.handbook, "a row of yields to hold it against");
  worksheet
      ->add_option("--digits", parsed.digits,
                   "decimals of a price by weight, 3 to 6, as handbooks print 5.156")
      ->check(CLI::Range(3U, 6U));
  add_books(*worksheet, parsed.books);
  // Of a file only what is in it counts; not said at each option of the help.
  worksheet->parse_complete_callback([worksheet, files] {
    if (files->count() == 0) return;
    for (const char* typed : {"--purchased", "--labour", "--usable", "--by-product", "--waste",
                              "--cutting-loss", "--portion", "--new-price", "--handbook"}) {
      if (worksheet->get_option(typed)->count() > 0) throw CLI::ExcludesError("files", typed);
    }
  });
}

void add_trials_command(CLI::App& program, TrialsArguments& parsed, CommonOptions& common) {
  CLI::App* trials = add_command(program, "trials",
                                 "Trials of one cut: both averages, and the yield to keep", common);
  trials->add_option("file", parsed.file, "a trials file")->required();
  trials->add_flag("--tables", parsed.tables,
                   "instead of the sheet, the tables file that keeps it as your own cut");
  add_books(*trials, parsed.books);
}

}  // namespace platewright::cli
