// SPDX-License-Identifier: MIT
#include "cli/arguments.hpp"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <exception>
#include <filesystem>
#include <optional>
#include <span>
#include <type_traits>

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
  AnswerArguments answer;
  CompletionsArguments completions;
  std::string help_of;
};

/// One table by itself is CSV where nothing else is said.
void choose_format_of_section(CommonOptions& common) {
  if (common.section.empty()) return;
  if (!common.format_given && common.format == "text") common.format = "csv";
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
  if (ending == ".jsonld") return "json-ld";
  if (ending == ".xlsx") return "xlsx";
  return "text";
}

/// A command: what declares its options, and where its arguments are found once they are read.
struct Command {
  const char* name;
  void (*add)(CLI::App&, Parsed&, CommonOptions&);
  CommandArguments (*arguments)(const Parsed&);  ///< null where the table of arguments answers
};

template <auto Member, auto Add>
constexpr Command filled_by(const char* name) {
  return {name,
          [](CLI::App& program, Parsed& parsed, CommonOptions& common) {
            if constexpr (std::is_invocable_v<decltype(Add), CLI::App&, decltype(parsed.*Member),
                                              CommonOptions&>) {
              Add(program, parsed.*Member, common);
            } else {
              Add(program, parsed.*Member);
            }
          },
          [](const Parsed& parsed) { return CommandArguments(parsed.*Member); }};
}

/// In the order of the help.
constexpr Command every_command[] = {
    filled_by<&Parsed::card, add_card_command>("card"),
    filled_by<&Parsed::timeline, add_timeline_command>("timeline"),
    filled_by<&Parsed::day, add_day_command>("day"),
    filled_by<&Parsed::roast, add_roast_command>("roast"),
    filled_by<&Parsed::lethality, add_lethality_command>("lethality"),
    filled_by<&Parsed::recipe, add_recipe_command>("recipe"),
    filled_by<&Parsed::cost, add_cost_command>("cost"),
    filled_by<&Parsed::plates, add_plates_command>("plates"),
    filled_by<&Parsed::quote, add_quote_command>("quote"),
    filled_by<&Parsed::budget, add_budget_command>("budget"),
    filled_by<&Parsed::workbook, add_workbook_command>("workbook"),
    filled_by<&Parsed::order, add_order_command>("order"),
    filled_by<&Parsed::prices, add_prices_command>("prices"),
    filled_by<&Parsed::yield, add_yield_command>("yield"),
    filled_by<&Parsed::worksheet, add_worksheet_command>("worksheet"),
    filled_by<&Parsed::exercise, add_exercise_command>("exercise"),
    filled_by<&Parsed::trials, add_trials_command>("trials"),
    filled_by<&Parsed::check, add_check_command>("check"),
    filled_by<&Parsed::measure, add_measure_command>("measure"),
    filled_by<&Parsed::tables, add_tables_command>("tables"),
    filled_by<&Parsed::schema, add_schema_command>("schema"),
    filled_by<&Parsed::starter, add_new_command>("new"),
    {"help",
     [](CLI::App& program, Parsed& parsed, CommonOptions&) {
       add_help_command(program, parsed.help_of);
     },
     nullptr},
    filled_by<&Parsed::answer, add_answer_command>("answer"),
    filled_by<&Parsed::completions, add_completions_command>("completions"),
    {"manual", [](CLI::App& program, Parsed&, CommonOptions&) { add_manual_command(program); },
     nullptr},
};

/// The command of that name; null where there is none.
const Command* find_command(const std::string& name) {
  const auto* found = std::find_if(std::begin(every_command), std::end(every_command),
                                   [&](const Command& one) { return one.name == name; });
  return found == std::end(every_command) ? nullptr : found;
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
    out.common.format_given = format->count() > 0;
    if (!out.common.format_given) out.common.format = format_by_ending(out.common.output);
    choose_format_of_section(out.common);
  }
  out.command = find_command(used.get_name())->arguments(parsed);
}

/// The number of the first word that is empty; the program itself is number 0. The parser takes
/// such a word for none, and looks for an end that does not come where an unknown option follows.
std::optional<int> empty_word(int count, const char* const* arguments) {
  for (int number = 1; number < count; ++number) {
    if (*arguments[number] == '\0') return number;
  }
  return std::nullopt;
}

/// These say something of all commands.
bool needs_no_other(const std::string& name) {
  return name != "help" && name != "completions" && name != "manual";
}

/// Some commands, and what is read for them.
class Parser {
 public:
  explicit Parser(std::span<const Command> with) {
    program_.set_version_flag("--version", "platewright " PLATEWRIGHT_VERSION);
    program_.set_help_flag("-h,--help", "this page");
    program_.formatter(std::make_shared<Pages>(program_));
    program_.require_subcommand(1);
    for (const Command& one : with) one.add(program_, parsed_, out_.common);
  }
  Parser(const Parser&) = delete;
  Parser& operator=(const Parser&) = delete;

  /// False where it is a mistake, or asks for help.
  bool read(int count, const char* const* arguments) {
    try {
      program_.parse(count, arguments);
      understand(program_, parsed_, out_);
      return true;
    } catch (const CLI::ParseError&) {
      error_ = std::current_exception();
      return false;
    }
  }

  CommandLine understood() { return std::move(out_); }

  CommandLine not_understood(const std::string& first) {
    try {
      std::rethrow_exception(error_);
    } catch (const CLI::ParseError& error) {
      std::ostringstream to_user;
      std::ostringstream complaint;
      out_.exit_code = program_.exit(error, to_user, complaint) == 0 ? 0 : 2;
      out_.message = out_.exit_code == 0 ? to_user.str() : mistake_text(program_, error, first);
    }
    return std::move(out_);
  }

 private:
  Parsed parsed_;
  CommandLine out_;
  CLI::App program_{"scales and costs recipes for trade use", "platewright"};
  std::exception_ptr error_;
};

}  // namespace

CommandLine read_command_line(int count, const char* const* arguments) {
  CommandLine out;
  if (const auto number = empty_word(count, arguments)) {
    out.exit_code = 2;
    out.message = empty_word_text(*number);
    return out;
  }
  const std::string first = count > 1 ? arguments[1] : "";
  // Declaring all commands takes longer than many of them take to run.
  if (const Command* named = find_command(first); named != nullptr && needs_no_other(first)) {
    Parser parser(std::span(named, 1));
    if (parser.read(count, arguments)) return parser.understood();
  }
  Parser parser(every_command);
  if (parser.read(count, arguments)) return parser.understood();
  return parser.not_understood(first);
}

}  // namespace platewright::cli
