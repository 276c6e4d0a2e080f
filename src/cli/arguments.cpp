#include "cli/arguments.hpp"

#include <CLI/CLI.hpp>
#include <filesystem>
#include <sstream>
#include <string_view>
#include <utility>

#include "cli/command_options.hpp"
#include "cli/yield_arguments.hpp"
#include "platewright/problem/nearest.hpp"
#include "platewright/version.hpp"

namespace platewright::cli {
namespace {

CLI::Option_group* add_scale(CLI::App& app, ScaleOptions& scale) {
  auto* group = app.add_option_group("size", "how much to make; the tested batch if none is given");
  group->add_option("--portions", scale.portions, "enough for so many portions");
  group->add_option("--pieces", scale.pieces, "so many whole pieces (roasts, birds)");
  group->add_option("--factor", scale.factor, "the tested batch times this");
  group->add_option("--on-hand", scale.on_hand, "as much as this weight of the first line gives");
  group->add_option("--short", scale.short_of,
                    "as much as the one ingredient that is short allows: \"garlic: 3 lb\"");
  group->require_option(0, 1);
  app.add_option("--portion-size", scale.portion_size, "portions of another size: \"8 oz\"");
  app.add_option("--pan", scale.pan,
                 "another vessel than the recipe's, by name or size: \"half sheet\", "
                 "\"kettle of 80 L\", \"tub of 22 qt, holds 4\"");
  app.add_option("--piece-weight", scale.piece_weight,
                 "weight of one piece, if not the tested one");
  return group;
}

/// Everything that the parser fills; one member for each command.
struct Parsed {
  CardArguments card;
  YieldArguments yield;
  WorksheetArguments worksheet;
  TrialsArguments trials;
  RoastArguments roast;
  LethalityArguments lethality;
  CostArguments cost;
  QuoteArguments quote;
  BudgetArguments budget;
  OrderArguments order;
  PricesArguments prices;
  TimelineArguments timeline;
  DayArguments day;
  WorkbookArguments workbook;
  CheckArguments check;
  MeasureArguments measure;
  TablesArguments tables;
};

void add_prices(CLI::App& app, PriceOptions& prices) {
  app.add_option("--prices-on", prices.day,
                 "the newest prices on or before this day; the event's day if none is given");
  app.add_flag(
      "--cheapest", prices.cheapest,
      "of each ingredient the offer that makes the order cheapest, whole packs and pieces");
}

/// What every command takes that shows a plan. Options take one value each time they are given, so
/// that the file's name is never taken for one.
void add_changes(CLI::App& app, PriceOptions& prices) {
  app.add_option("--price", prices.changes,
                 "what if: \"lamb leg=+12 %\", -5 %, 9.40 per lb, or 4.10 for a pack")
      ->allow_extra_args(false);
  app.add_option("--swap", prices.swaps, "what if: \"lamb leg=mutton leg\", the same amount of it")
      ->allow_extra_args(false);
  app.add_option("--guests", prices.guests, "what if: so many guests of the same mix");
}

/// Whatever sizes or writes a card is of no use for labels; not said at each option of the help.
void refuse_beside(const CLI::App& card, const char* flag) {
  for (const char* other :
       {"--recipe", "--portions", "--pieces", "--factor", "--on-hand", "--short", "--portion-size",
        "--piece-weight", "--pan", "--batches", "--with-sub-recipes", "--cost", "--date",
        "--measures", "--tolerance", "--rounding"}) {
    if (card.get_option(other)->count() > 0) throw CLI::ExcludesError(flag, other);
  }
}

void add_kitchen_commands(CLI::App& program, Parsed& parsed, CommonOptions& common) {
  CLI::App* card = add_command(
      program, "card", "A recipe's card at the size wanted, or all cards of an event", common);
  card->add_option("file", parsed.card.file, "a recipe's or an event's file")->required();
  card->add_option("--recipe", parsed.card.recipe, "of several recipes, this one");
  add_kitchen_options(*card, common);
  add_scale(*card, parsed.card.scale)
      ->add_option("--batches", parsed.card.batches, "several sizes side by side: 1,2,5,10")
      ->delimiter(',');
  card->add_flag("--with-sub-recipes", parsed.card.sub_recipes, "the cards of what it uses first");
  card->add_flag("--cost", parsed.card.cost, "the food cost, in all and of a portion");
  card->add_option("--date", parsed.card.date, "the date that is printed on the card");
  auto* labels = card->add_flag("--labels", parsed.card.labels,
                                "of an event: labels for what is made and kept");
  auto* buffet =
      card->add_flag("--buffet", parsed.card.buffet, "of an event: cards that guests read");
  buffet->excludes(labels);
  card->parse_complete_callback([card, labels, buffet] {
    if (labels->count() > 0) refuse_beside(*card, "--labels");
    if (buffet->count() > 0) refuse_beside(*card, "--buffet");
  });
  add_prices(*card, parsed.card.prices);
  add_changes(*card, parsed.card.prices);
}

void add_roast_commands(CLI::App& program, Parsed& parsed, CommonOptions& common) {
  CLI::App* roast = add_command(
      program, "roast", "When a roast is likely to be done, and how it rises in the rest", common);
  add_kitchen_options(*roast, common);
  roast->add_option("--kind", parsed.roast.kind, "of food: \"whole cut\", poultry, cured")
      ->required();
  roast->add_option("--weight", parsed.roast.weight, "of one piece")->required();
  auto* across = roast->add_option_group("shape", "as thick as a ball of its weight if none");
  across->add_option("--girth", parsed.roast.girth, "of a long piece, once around");
  across->add_option("--thickness", parsed.roast.thickness, "of a flat piece");
  across->require_option(0, 1);
  roast
      ->add_option("--oven", parsed.roast.oven,
                   "\"325 F\"; before it, once for each, steps as \"450 F for 25 min\"")
      ->required()
      ->allow_extra_args(false);
  roast->add_option("--until", parsed.roast.until, "inside, when it is taken out")->required();
  roast->add_option("--start", parsed.roast.start, "inside, when it goes in; 40 F if not said");
  roast->add_option("--rest", parsed.roast.rest, "20 min if not said");
  roast->add_option("--room", parsed.roast.room, "where it rests; 70 F if not said");
  roast->add_flag("--fan", parsed.roast.fan, "the oven's fan is on");
  roast->add_option("--timed", parsed.roast.timed,
                    "your own roast of this shape, oven and end: \"5 lb in 150 min\"");
  roast->add_option("--published", parsed.roast.published,
                    "published times of this beside it, as: lamb leg");

  CLI::App* lethality = add_command(program, "lethality",
                                    "Whether a log of the core holds what the tables ask", common);
  lethality->add_option("file", parsed.lethality.file, "a CSV log: minutes,F and a line a reading")
      ->required();
  lethality->add_option("--food", parsed.lethality.food, "meat, chicken or turkey")
      ->required()
      ->check(CLI::IsMember({"meat", "chicken", "turkey"}));
  lethality->add_option("--fat", parsed.lethality.fat, "of chicken or turkey, as 12 %");
}

void add_quote_command(CLI::App& program, QuoteArguments& parsed, CommonOptions& common) {
  CLI::App* quote = add_command(program, "quote",
                                "The price for a guest and the whole quote of an event", common);
  quote->add_option("file", parsed.file, "an event's file")->required();
  add_prices(*quote, parsed.prices);
  add_changes(*quote, parsed.prices);
  quote->add_option("--agreed-price", parsed.agreed_price,
                    "what if: the full price of a guest is this, whatever the rule asks");
  quote
      ->add_option("--turn-up", parsed.turn_up,
                   "what if: so many come, at the price quoted for the number expected")
      ->excludes("--guests")
      ->excludes("--agreed-price");
  auto* asked = quote->add_option_group("question", "the quote itself if none is asked");
  asked->add_flag("--client", parsed.client, "the client's sheet: no costs, lines to sign on");
  asked->add_flag("--invoice", parsed.invoice, "the invoice after the event");
  asked->add_option("--why", parsed.why, "how this line was worked out");
  asked->add_option("--guest-table", parsed.guest_table, "a row for each number: 40,60,80")
      ->delimiter(',')
      ->allow_extra_args(false);
  asked->add_option("--movers", parsed.movers,
                    "the five prices and yields that move the price most, moved by this: \"10 %\"");
  asked->add_option("--floor", parsed.floor,
                    "the chance that the margin falls below this: \"25 %\"");
  asked->require_option(0, 1);
  quote->add_option("--seed", parsed.seed, "of the draws behind --floor");
  quote->add_option("--draws", parsed.draws, "how many of them, 100 to 1000000");
}

void add_money_commands(CLI::App& program, Parsed& parsed, CommonOptions& common) {
  CLI::App* cost = add_command(program, "cost", "The plate cost, line by line", common);
  cost->add_option("file", parsed.cost.file, "a recipe's or an event's file")->required();
  cost->add_option("--recipe", parsed.cost.recipe, "of several recipes, this one");
  add_scale(*cost, parsed.cost.scale);
  add_prices(*cost, parsed.cost.prices);
  add_changes(*cost, parsed.cost.prices);
  cost->add_flag("--round-unit-prices", parsed.cost.prices.round_unit_prices,
                 "round the price of a unit before it is multiplied: not exact");
  cost->add_option("--q-factor", parsed.cost.q_factor,
                   "share for what no one measures; that of the event's quote if none is given");
  cost->add_option("--at-price", parsed.cost.at_price,
                   "the food cost percentage at this price of a portion, or of a guest");
  cost->add_option("--food-cost", parsed.cost.food_cost,
                   "the price at which the food is this share of it: \"28 %\"");
  cost->add_option("--why", parsed.cost.why, "how this line was worked out");
  add_quote_command(program, parsed.quote, common);
  CLI::App* budget = add_command(
      program, "budget", "Which cuts and portions fit a price for a guest and a margin", common);
  budget->add_option("file", parsed.budget.file, "an event's file")->required();
  budget->add_option("--price", parsed.budget.price, "for a guest at the full price")->required();
  budget->add_option("--margin", parsed.budget.margin, "on the price")->required();
  budget->add_option("--dish", parsed.budget.dish, "the dish of the menu that may change")
      ->required();
  budget->add_option("--cut", parsed.budget.cuts, "a cut of the larder; give it once for each")
      ->required()
      ->allow_extra_args(false);
  budget->add_option("--portion", parsed.budget.portions, "its weight as served; once for each")
      ->required()
      ->allow_extra_args(false);
  add_prices(*budget, parsed.budget.prices);
  CLI::App* order = add_command(
      program, "order", "What to buy, in whole packs and pieces, for one event or several", common);
  order->add_option("files", parsed.order.files, "events' files")->required();
  add_prices(*order, parsed.order.prices);
  add_changes(*order, parsed.order.prices);
  CLI::App* prices = add_command(
      program, "prices", "A supplier's CSV price list as a file of prices for the book", common);
  prices->add_option("file", parsed.prices.file, "the file that says how to read the list")
      ->required();
  prices->add_flag("--good-rows", parsed.prices.good_rows,
                   "take in the rows that can be read, and list the others");
  add_books(*prices, parsed.prices.books);
  CLI::App* timeline =
      add_command(program, "timeline", "The kitchen's clock, back from service", common,
                  {"text", "csv", "json", "markdown", "html", "icalendar"});
  timeline->add_option("file", parsed.timeline.file, "an event's file")->required();
  add_prices(*timeline, parsed.timeline.prices);
  add_changes(*timeline, parsed.timeline.prices);
  CLI::App* day = add_command(program, "day",
                              "The plan of an event's day: which oven when, who does what", common);
  day->add_option("file", parsed.day.file, "an event's file")->required();
  add_kitchen_options(*day, common);
  add_prices(*day, parsed.day.prices);
  add_changes(*day, parsed.day.prices);
}

/// A workbook is a file: it is not for the screen.
void add_workbook_command(CLI::App& program, WorkbookArguments& parsed, CommonOptions& common) {
  CLI::App* workbook =
      add_command(program, "workbook",
                  "Cost, order and quote of an event as a spreadsheet that goes on calculating",
                  common, {"xlsx"});
  workbook->add_option("file", parsed.file, "an event's file")->required();
  workbook->get_option("--output")->required();
  add_prices(*workbook, parsed.prices);
  add_changes(*workbook, parsed.prices);
}

void add_reference_commands(CLI::App& program, Parsed& parsed, CommonOptions& common) {
  add_command(program, "check", "Every problem of these files, in one run", common)
      ->add_option("files", parsed.check.files, "files of a book, worksheets, trials, price lists")
      ->required();
  CLI::App* measure = add_command(
      program, "measure", "An amount in another unit, and how a kitchen measures it", common);
  add_kitchen_options(*measure, common);
  measure->add_option("amount", parsed.measure.amount, "an amount, as in \"2 1/4 cups\"")
      ->required();
  measure->add_option("unit", parsed.measure.unit, "the unit wanted; kitchen measures if none");
  measure->add_option("--of", parsed.measure.of, "of this ingredient");
  measure
      ->add_option("--system", parsed.measure.system,
                   "what a bare cup or pint means: us, imperial, metric, australian, japanese")
      ->check(CLI::IsMember({"us", "imperial", "metric", "australian", "japanese"}));
  measure->add_flag("--exact", parsed.measure.exact, "the exact figure alone");
  add_books(*measure, parsed.measure.books);
  CLI::App* tables =
      add_command(program, "tables", "The tables built in, with their sources", common);
  tables->add_option("table", parsed.tables.table)
      ->required()
      ->check(CLI::IsMember({"units", "densities", "pieces", "cuts", "produce", "grains", "vessels",
                             "safety", "steps", "times", "allergens"}));
  tables->add_option("words", parsed.tables.words, "only rows that hold these words");
  add_books(*tables, parsed.tables.books);
}

/// The format that the ending of the output's name stands for; text where it stands for none.
std::string format_by_ending(const std::string& output) {
  const std::string ending = std::filesystem::path(output).extension().string();
  if (ending == ".csv") return "csv";
  if (ending == ".json") return "json";
  if (ending == ".md") return "markdown";
  if (ending == ".html" || ending == ".htm") return "html";
  if (ending == ".ics") return "icalendar";
  if (ending == ".xlsx") return "xlsx";
  return "text";
}

CommandArguments chosen(const CLI::App& program, Parsed& parsed) {
  const std::string name = program.get_subcommands().front()->get_name();
  if (name == "card") return parsed.card;
  if (name == "yield") return parsed.yield;
  if (name == "worksheet") return parsed.worksheet;
  if (name == "trials") return parsed.trials;
  if (name == "roast") return parsed.roast;
  if (name == "lethality") return parsed.lethality;
  if (name == "cost") return parsed.cost;
  if (name == "quote") return parsed.quote;
  if (name == "budget") return parsed.budget;
  if (name == "order") return parsed.order;
  if (name == "prices") return parsed.prices;
  if (name == "timeline") return parsed.timeline;
  if (name == "day") return parsed.day;
  if (name == "workbook") return parsed.workbook;
  if (name == "check") return parsed.check;
  if (name == "measure") return parsed.measure;
  return parsed.tables;
}

/// The parser itself only says that a command is required.
std::string unknown_command(const CLI::App& program, std::string_view word) {
  std::vector<std::string> known;
  for (const CLI::App* command : program.get_subcommands({})) known.push_back(command->get_name());
  const std::string near = did_you_mean(word, known);
  return "no command called " + in_quotes(word) + (near.empty() ? "" : "; " + near) +
         "\nRun with --help for more information.\n";
}

/// Which commands take this option.
std::string takers_of(const CLI::App& program, const std::string& option) {
  std::string out;
  for (const CLI::App* command : program.get_subcommands({})) {
    if (command->get_option_no_throw(option) == nullptr) continue;
    out += (out.empty() ? "" : ", ") + command->get_name();
  }
  return out;
}

/// The options of a command, those in its groups included.
std::vector<std::string> options_of(const CLI::App& command) {
  std::vector<std::string> out;
  for (const CLI::Option* own : command.get_options()) {
    for (const std::string& name : own->get_lnames()) out.push_back("--" + name);
  }
  for (const CLI::App* group : command.get_subcommands({})) {
    for (std::string& name : options_of(*group)) out.push_back(std::move(name));
  }
  return out;
}

/// An option that this command does not take: the nearest of its own, and which commands take it.
std::string unknown_option(const CLI::App& program, const CLI::App& command,
                           const std::string& word) {
  const std::string option = word.substr(0, word.find('='));
  std::string out = "`" + command.get_name() + "` does not take " + in_quotes(option);
  if (const std::string near = did_you_mean(option, options_of(command)); !near.empty()) {
    out += "; " + near;
  }
  if (const std::string takers = takers_of(program, option); !takers.empty()) {
    out += "; it is an option of " + takers;
  }
  return out + "\nRun with --help for more information.\n";
}

/// The first option among what the parser could not place; empty where there is none.
std::string first_option(const CLI::App& program) {
  for (const std::string& word : program.remaining(true)) {
    if (word.size() > 2 && word.substr(0, 2) == "--") return word;
  }
  return {};
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
  add_yield_command(program, parsed.yield, out.common);
  add_worksheet_command(program, parsed.worksheet, out.common);
  add_trials_command(program, parsed.trials, out.common);
  add_roast_commands(program, parsed, out.common);
  add_money_commands(program, parsed, out.common);
  add_workbook_command(program, parsed.workbook, out.common);
  add_reference_commands(program, parsed, out.common);
  try {
    program.parse(count, arguments);
    const CLI::App* command = program.get_subcommands().front();
    out.common.width_given = command->get_option("--width")->count() > 0;
    if (command->get_option("--format")->count() == 0) {
      out.common.format = format_by_ending(out.common.output);
    }
    out.command = chosen(program, parsed);
  } catch (const CLI::ParseError& error) {
    std::ostringstream to_user;
    std::ostringstream complaint;
    out.exit_code = program.exit(error, to_user, complaint) == 0 ? 0 : 2;
    out.message = out.exit_code == 0 ? to_user.str() : complaint.str();
    const bool word_first = count > 1 && arguments[1][0] != '-';
    const bool named = !program.get_subcommands().empty();
    if (out.exit_code != 0 && word_first && !named) {
      out.message = unknown_command(program, arguments[1]);
    }
    const std::string option = out.exit_code != 0 && named ? first_option(program) : "";
    if (!option.empty()) {
      out.message = unknown_option(program, *program.get_subcommands().front(), option);
    }
  }
  return out;
}

}  // namespace platewright::cli
