// SPDX-License-Identifier: MIT
#include "cli/command_options.hpp"

namespace platewright::cli {
namespace {

void add_common(CLI::App& command, CommonOptions& common, const Formats& formats) {
  Options output(command, group::output);
  output.value("--output", placeholder::file, common.output,
               "write to this file, whole or not at all; its ending names the format");
  output.one_of("--format", "FORMAT", formats, common.format,
                "by the ending of --output if not said, else text");
  output.value("--section", placeholder::section, common.section,
               "one table of the sheet by itself: CSV with one heading line, or JSON if said so");
  Options printed(command, group::printed);
  printed.between("--width", 40, 400, common.width,
                  "columns of a text page, 40 to 400; the terminal's if not said, else 80");
  printed.flag("--large", common.large, "large print: fewer columns, capitals, more space");
  printed.between("--page-lines", 20, 1000, common.page_lines,
                  "lines of a page, 20 to 1000, with a foot that says page n of m");
  printed.flag("--ascii", common.ascii, "no signs beyond ASCII but those of the book's own names");
}

}  // namespace

const Formats& sheet_formats() {
  static const Formats formats{"text", "csv", "json", "markdown", "html"};
  return formats;
}

CLI::App* add_command(CLI::App& program, const char* name, const CommandGroup& group,
                      const char* what, CommonOptions& common, const Formats& formats) {
  CLI::App* command = program.add_subcommand(name, what)->group(group.title);
  add_common(*command, common, formats);
  return command;
}

void add_kitchen_options(CLI::App& command, CommonOptions& common) {
  Options kitchen(command, group::kitchen);
  kitchen.one_of("--measures", "WHICH", {"us", "metric", "both", "book"}, common.measures,
                 "book, which is what the book says, if nothing is said");
  kitchen.value("--tolerance", placeholder::share, common.tolerance,
                "how far kitchen measures may be off; 2 % if nothing is said");
  kitchen.value("--rounding", placeholder::rounding, common.rounding,
                "how amounts are rounded to what a kitchen measures");
}

void add_books(CLI::App& command, std::vector<std::string>& books) {
  Options(command, group::books)
      .value("--book", placeholder::file, books,
             "a larder, recipe or tables file whose rows count too");
}

CLI::App& add_scale(CLI::App& command, ScaleOptions& scale) {
  CLI::App& one = only_one_of(command, "size", "the tested batch if none is given");
  Options size(one, group::size);
  size.value("--portions", placeholder::number, scale.portions, "enough for so many portions");
  size.value("--pieces", placeholder::number, scale.pieces, "so many whole pieces (roasts, birds)");
  size.value("--factor", placeholder::number, scale.factor, "the tested batch times this");
  size.value("--on-hand", placeholder::weight, scale.on_hand,
             "as much as this weight of the first line gives");
  size.value("--short", placeholder::short_of, scale.short_of,
             "as much as the one ingredient that is short allows");
  Options pieces(command, group::pieces);
  pieces.value("--portion-size", placeholder::amount, scale.portion_size,
               "portions of another size");
  pieces.value("--pan", placeholder::vessel, scale.pan,
               "another vessel than the recipe's, by name or size");
  pieces.value("--piece-weight", placeholder::weight, scale.piece_weight,
               "weight of one piece, if not the tested one");
  return one;
}

void add_prices(CLI::App& command, PriceOptions& prices) {
  Options which(command, group::prices);
  which.value("--prices-on", placeholder::date, prices.day,
              "the newest prices on or before this day; the event's day if none is given");
  which.flag("--cheapest", prices.cheapest,
             "of each ingredient the offer that makes the order cheapest, whole packs and pieces");
}

void add_deliveries(CLI::App& command, PriceOptions& prices) {
  Options(command, group::what_if)
      .flag("--one-delivery", prices.one_delivery,
            "all of a supplier's goods on the earliest of their days");
}

void add_changes(CLI::App& command, PriceOptions& prices) {
  Options what_if(command, group::what_if);
  what_if.each("--price", placeholder::change, prices.changes,
               "a price that rises or falls, or is another, of a pack too");
  what_if.each("--swap", placeholder::swap, prices.swaps, "the same amount of something else");
  what_if.value("--guests", placeholder::number, prices.guests, "so many guests of the same mix");
}

}  // namespace platewright::cli
