#include "cli/arguments.hpp"

#include <CLI/CLI.hpp>
#include <sstream>

namespace platewright::cli {
namespace {

constexpr const char* footer_text =
    "Exit codes: 0 done, 1 the book has problems, 2 the command line has.";

void add_common(CLI::App& app, CommonOptions& common) {
  app.add_option("--format", common.format, "text, csv, json or markdown")
      ->check(CLI::IsMember({"text", "csv", "json", "markdown"}));
  app.add_option("--output", common.output, "write to this file, whole or not at all");
  app.add_option("--width", common.width, "columns of a text page, from 40")
      ->check(CLI::Range(40U, 400U));
  app.add_flag("--ascii", common.ascii, "no signs beyond ASCII but those of the book's own names");
  app.add_option("--measures", common.measures, "us, metric, both or book (what the book says)")
      ->check(CLI::IsMember({"us", "metric", "both", "book"}));
}

void add_scale(CLI::App& app, ScaleOptions& scale) {
  auto* group = app.add_option_group("size", "how much to make; the tested batch if none is given");
  group->add_option("--portions", scale.portions, "enough for so many portions");
  group->add_option("--pieces", scale.pieces, "so many whole pieces (roasts, birds)");
  group->add_option("--factor", scale.factor, "the tested batch times this");
  group->add_option("--on-hand", scale.on_hand, "as much as this weight of the first line gives");
  group->require_option(0, 1);
  app.add_option("--piece-weight", scale.piece_weight, "weight of one piece, if not the tested one");
}

void add_books(CLI::App& app, std::vector<std::string>& books) {
  app.add_option("--book", books, "a larder, recipe or tables file whose rows count too");
}

/// Everything that the parser fills; one member for each command.
struct Parsed {
  CardArguments card;
  YieldArguments yield;
  CostArguments cost;
  QuoteArguments quote;
  OrderArguments order;
  TimelineArguments timeline;
  CheckArguments check;
  MeasureArguments measure;
  TablesArguments tables;
};

CLI::App* add_command(CLI::App& program, const char* name, const char* what, CommonOptions& common) {
  CLI::App* app = program.add_subcommand(name, what);
  add_common(*app, common);
  app->footer(footer_text);
  return app;
}

void add_kitchen_commands(CLI::App& program, Parsed& parsed, CommonOptions& common) {
  CLI::App* card = add_command(program, "card",
                               "A recipe's card at the size wanted, or all cards of an event", common);
  card->add_option("file", parsed.card.file, "a recipe's or an event's file")->required();
  card->add_option("--recipe", parsed.card.recipe, "of several recipes, this one");
  add_scale(*card, parsed.card.scale);

  CLI::App* yield = add_command(
      program, "yield", "A cut or other goods from the weight bought to the weight served", common);
  yield->add_option("name", parsed.yield.name, "a row of yields, or an ingredient of --book")
      ->required();
  yield->add_option("--buy", parsed.yield.buy, "what will this weight serve?");
  yield->add_option("--guests", parsed.yield.guests, "what to buy for so many portions?");
  yield->add_option("--portion", parsed.yield.portion, "weight of a portion on the plate");
  yield->add_option("--piece", parsed.yield.piece, "average weight of a whole piece as purchased");
  add_books(*yield, parsed.yield.books);
}

void add_money_commands(CLI::App& program, Parsed& parsed, CommonOptions& common) {
  CLI::App* cost = add_command(program, "cost", "The plate cost, line by line", common);
  cost->add_option("file", parsed.cost.file, "a recipe's or an event's file")->required();
  cost->add_option("--recipe", parsed.cost.recipe, "of several recipes, this one");
  add_scale(*cost, parsed.cost.scale);
  add_command(program, "quote", "The price for a guest and the whole quote of an event", common)
      ->add_option("file", parsed.quote.file, "an event's file")
      ->required();
  add_command(program, "order", "What to buy for an event, in whole packs and pieces", common)
      ->add_option("file", parsed.order.file, "an event's file")
      ->required();
  add_command(program, "timeline", "The kitchen's clock, back from service", common)
      ->add_option("file", parsed.timeline.file, "an event's file")
      ->required();
}

void add_reference_commands(CLI::App& program, Parsed& parsed, CommonOptions& common) {
  add_command(program, "check", "Every problem of these files, in one run", common)
      ->add_option("files", parsed.check.files, "recipes, larders, events, tables")
      ->required();
  CLI::App* measure =
      add_command(program, "measure", "An amount in another unit, and how a kitchen measures it", common);
  measure->add_option("amount", parsed.measure.amount, "an amount, as in \"2 1/4 cups\"")->required();
  measure->add_option("unit", parsed.measure.unit, "the unit wanted; kitchen measures if none");
  measure->add_option("--of", parsed.measure.of, "of this ingredient");
  measure
      ->add_option("--system", parsed.measure.system,
                   "what a bare cup or pint means: us, imperial, metric, australian, japanese")
      ->check(CLI::IsMember({"us", "imperial", "metric", "australian", "japanese"}));
  measure->add_flag("--exact", parsed.measure.exact, "the exact figure alone");
  add_books(*measure, parsed.measure.books);
  CLI::App* tables = add_command(program, "tables", "The tables built in, with their sources", common);
  tables->add_option("table", parsed.tables.table)
      ->required()
      ->check(CLI::IsMember({"units", "densities", "pieces", "cuts", "produce", "grains", "vessels",
                             "safety", "times", "allergens"}));
  tables->add_option("words", parsed.tables.words, "only rows that hold these words");
  add_books(*tables, parsed.tables.books);
}

CommandArguments chosen(const CLI::App& program, Parsed& parsed) {
  const std::string name = program.get_subcommands().front()->get_name();
  if (name == "card") return parsed.card;
  if (name == "yield") return parsed.yield;
  if (name == "cost") return parsed.cost;
  if (name == "quote") return parsed.quote;
  if (name == "order") return parsed.order;
  if (name == "timeline") return parsed.timeline;
  if (name == "check") return parsed.check;
  if (name == "measure") return parsed.measure;
  return parsed.tables;
}

}  // namespace

CommandLine read_command_line(int count, const char* const* arguments) {
  CommandLine out;
  Parsed parsed;
  CLI::App program("Scales and costs recipes for trade use.", "platewright");
  program.set_version_flag("--version", "platewright " PLATEWRIGHT_VERSION);
  program.footer(footer_text);
  program.require_subcommand(1);
  add_kitchen_commands(program, parsed, out.common);
  add_money_commands(program, parsed, out.common);
  add_reference_commands(program, parsed, out.common);
  try {
    program.parse(count, arguments);
    const CLI::App* command = program.get_subcommands().front();
    out.common.width_given = command->get_option("--width")->count() > 0;
    out.command = chosen(program, parsed);
  } catch (const CLI::ParseError& error) {
    std::ostringstream to_user;
    std::ostringstream complaint;
    out.exit_code = program.exit(error, to_user, complaint) == 0 ? 0 : 2;
    out.message = out.exit_code == 0 ? to_user.str() : complaint.str();
  }
  return out;
}

}  // namespace platewright::cli
