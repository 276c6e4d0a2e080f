// SPDX-License-Identifier: MIT
#include "cli/arguments.hpp"

#include <CLI/CLI.hpp>
#include <filesystem>
#include <optional>

#include "cli/add_commands.hpp"
#include "cli/command_mistakes.hpp"
#include "cli/completions.hpp"
#include "cli/help_text.hpp"
#include "cli/manual_page.hpp"
#include "cli/terminal.hpp"
#include "platewright/version.hpp"

namespace platewright::cli {
namespace {

/// Everything that the parser fills; one member for each command.
struct Parsed {
  CardArguments card;
  YieldArguments yield;
  WorksheetArguments worksheet;
  ExerciseArguments exercise;
  TrialsArguments trials;
  RoastArguments roast;
  LethalityArguments lethality;
  CostArguments cost;
  PlatesArguments plates;
  QuoteArguments quote;
  BudgetArguments budget;
  OrderArguments order;
  PricesArguments prices;
  TimelineArguments timeline;
  DayArguments day;
  WorkbookArguments workbook;
  RecipeArguments recipe;
  CheckArguments check;
  MeasureArguments measure;
  TablesArguments tables;
  SchemaArguments schema;
  NewArguments starter;
  CompletionsArguments completions;
  std::string help_of;
};

/// One table by itself is CSV where nothing else is said.
void choose_format_of_section(bool said, CommonOptions& common) {
  if (common.section.empty()) return;
  if (!said && common.format == "text") common.format = "csv";
  if (common.format != "csv" && common.format != "json") {
    throw CLI::ValidationError("--section", "is written as csv or json alone");
  }
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
  if (name == "exercise") return parsed.exercise;
  if (name == "trials") return parsed.trials;
  if (name == "roast") return parsed.roast;
  if (name == "lethality") return parsed.lethality;
  if (name == "cost") return parsed.cost;
  if (name == "plates") return parsed.plates;
  if (name == "quote") return parsed.quote;
  if (name == "budget") return parsed.budget;
  if (name == "order") return parsed.order;
  if (name == "prices") return parsed.prices;
  if (name == "timeline") return parsed.timeline;
  if (name == "day") return parsed.day;
  if (name == "workbook") return parsed.workbook;
  if (name == "recipe") return parsed.recipe;
  if (name == "check") return parsed.check;
  if (name == "measure") return parsed.measure;
  if (name == "schema") return parsed.schema;
  if (name == "new") return parsed.starter;
  if (name == "completions") return parsed.completions;
  return parsed.tables;
}

unsigned help_width() {
  return columns_for(80);
}

/// Help as the program's own pages have it, not as the parser would write it.
class Pages : public CLI::FormatterBase {
 public:
  explicit Pages(const CLI::App& program) : program_(program) {}

  std::string make_help(const CLI::App* app, std::string, CLI::AppFormatMode) const override {
    const ProgramPage page = describe(program_);
    const CommandPage* command = find_command(page, app->get_name());
    return command == nullptr ? program_help(page, help_width())
                              : command_help(*command, help_width());
  }

 private:
  const CLI::App& program_;
};

void add_commands(CLI::App& program, Parsed& parsed, CommonOptions& common) {
  add_card_command(program, parsed.card, common);
  add_timeline_command(program, parsed.timeline, common);
  add_day_command(program, parsed.day, common);
  add_roast_command(program, parsed.roast, common);
  add_lethality_command(program, parsed.lethality, common);
  add_recipe_command(program, parsed.recipe, common);
  add_cost_command(program, parsed.cost, common);
  add_plates_command(program, parsed.plates, common);
  add_quote_command(program, parsed.quote, common);
  add_budget_command(program, parsed.budget, common);
  add_workbook_command(program, parsed.workbook, common);
  add_order_command(program, parsed.order, common);
  add_prices_command(program, parsed.prices, common);
  add_yield_command(program, parsed.yield, common);
  add_worksheet_command(program, parsed.worksheet, common);
  add_exercise_command(program, parsed.exercise, common);
  add_trials_command(program, parsed.trials, common);
  add_check_command(program, parsed.check, common);
  add_measure_command(program, parsed.measure, common);
  add_tables_command(program, parsed.tables, common);
  add_schema_command(program, parsed.schema);
  add_new_command(program, parsed.starter);
  add_help_command(program, parsed.help_of);
  add_completions_command(program, parsed.completions);
  add_manual_command(program);
}

void answer_help(const ProgramPage& page, const std::string& name, CommandLine& out) {
  const CommandPage* command = find_command(page, name);
  out.exit_code = command == nullptr && !name.empty() ? 2 : 0;
  out.message = out.exit_code != 0   ? unknown_command(page, name)
                : command == nullptr ? program_help(page, help_width())
                                     : command_help(*command, help_width());
}

/// What needs nothing but the table of arguments; false where the command needs more.
bool answered_from_the_table(const CLI::App& program, const Parsed& parsed, CommandLine& out) {
  const std::string name = program.get_subcommands().front()->get_name();
  const ProgramPage page = describe(program);
  const std::string& shell = parsed.completions.what;
  if (name == "help") {
    answer_help(page, parsed.help_of, out);
  } else if (name == "manual") {
    out.message = manual_page(page);
  } else if (name == "completions" && shell == "bash") {
    out.message = bash_completions(page);
  } else if (name == "completions" && shell == "zsh") {
    out.message = zsh_completions(page);
  } else if (name == "completions" && shell == "fish") {
    out.message = fish_completions(page);
  } else if (name == "completions" && shell == "commands") {
    for (const CommandPage& command : page.commands) out.message += command.name + "\n";
  } else {
    return false;
  }
  return true;
}

void understand(const CLI::App& program, Parsed& parsed, CommandLine& out) {
  const CLI::App& used = *program.get_subcommands().front();
  if (answered_from_the_table(program, parsed, out)) return;
  if (const CLI::Option* format = used.get_option_no_throw("--format")) {
    out.common.width_given = used.get_option("--width")->count() > 0;
    if (format->count() == 0) out.common.format = format_by_ending(out.common.output);
    choose_format_of_section(format->count() > 0, out.common);
  }
  out.command = chosen(program, parsed);
}

/// The number of the first word that is empty; the program itself is number 0. The parser takes
/// such a word for none, and looks for an end that does not come where an unknown option follows.
std::optional<int> empty_word(int count, const char* const* arguments) {
  for (int number = 1; number < count; ++number) {
    if (*arguments[number] == '\0') return number;
  }
  return std::nullopt;
}

}  // namespace

CommandLine read_command_line(int count, const char* const* arguments) {
  CommandLine out;
  if (const auto number = empty_word(count, arguments)) {
    out.exit_code = 2;
    out.message = empty_word_text(*number);
    return out;
  }
  Parsed parsed;
  CLI::App program("scales and costs recipes for trade use", "platewright");
  program.set_version_flag("--version", "platewright " PLATEWRIGHT_VERSION);
  program.set_help_flag("-h,--help", "this page");
  program.formatter(std::make_shared<Pages>(program));
  program.require_subcommand(1);
  add_commands(program, parsed, out.common);
  try {
    program.parse(count, arguments);
    understand(program, parsed, out);
  } catch (const CLI::ParseError& error) {
    std::ostringstream to_user;
    std::ostringstream complaint;
    out.exit_code = program.exit(error, to_user, complaint) == 0 ? 0 : 2;
    out.message = out.exit_code == 0 ? to_user.str()
                                     : mistake_text(program, error, count > 1 ? arguments[1] : "");
  }
  return out;
}

}  // namespace platewright::cli
