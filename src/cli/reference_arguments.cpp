// SPDX-License-Identifier: MIT
#include "cli/add_commands.hpp"
#include "cli/command_options.hpp"

namespace platewright::cli {

void add_check_command(CLI::App& program, CheckArguments& parsed, CommonOptions& common) {
  CLI::App* check = add_command(program, "check", command_group::reference,
                                "Every problem of these files, in one run", common);
  argument(*check, "files", placeholder::file, parsed.files,
           "files of a book, worksheets, trials, price lists");
}

void add_measure_command(CLI::App& program, MeasureArguments& parsed, CommonOptions& common) {
  CLI::App* measure =
      add_command(program, "measure", command_group::reference,
                  "An amount in another unit, and how a kitchen measures it", common);
  argument(*measure, "amount", placeholder::amount, parsed.amount, "what is to be measured");
  argument(*measure, "unit", placeholder::unit, parsed.unit,
           "the unit wanted; kitchen measures if none")
      ->required(false);
  Options asked(*measure, group::asked);
  asked.value("--of", placeholder::name, parsed.of, "of this ingredient");
  asked.one_of("--system", "WHICH", {"us", "imperial", "metric", "australian", "japanese"},
               parsed.system, "whose cups and pints a bare cup or pint means; us if not said");
  asked.flag("--exact", parsed.exact, "the exact figure alone");
  add_kitchen_options(*measure, common);
  add_books(*measure, parsed.books);
}

void add_tables_command(CLI::App& program, TablesArguments& parsed, CommonOptions& common) {
  CLI::App* tables = add_command(program, "tables", command_group::reference,
                                 "The tables built in, with their sources", common);
  argument_of(*tables, "table", "TABLE",
              {"units", "densities", "pieces", "cuts", "produce", "grains", "vessels", "safety",
               "steps", "times", "allergens"},
              parsed.table, "which of them");
  argument(*tables, "words", placeholder::words, parsed.words, "only rows that hold these words")
      ->required(false);
  add_books(*tables, parsed.books);
}

void add_schema_command(CLI::App& program, SchemaArguments& parsed) {
  CLI::App* schema =
      program
          .add_subcommand("schema",
                          "The keys of a kind of file as JSON Schema, for an editor or a program")
          ->group(command_group::reference.title);
  argument_of(*schema, "kind", "KIND",
              {"recipe", "larder", "event", "tables", "prices", "worksheet", "trials", "price-list",
               "sheet"},
              parsed.kind, "what the file is; a sheet is what --format json writes");
}

void add_new_command(CLI::App& program, NewArguments& parsed) {
  CLI::App* starter =
      program.add_subcommand("new", "A folder of files to begin with, full of remarks")
          ->group(command_group::begin.title);
  argument_of(*starter, "kind", "KIND", {"event"}, parsed.kind, "what it is of");
  argument(*starter, "folder", placeholder::folder, parsed.folder,
           "made if it is not there; it must hold nothing yet");
}

void add_answer_command(CLI::App& program, AnswerArguments&) {
  program
      .add_subcommand("answer",
                      "Answers of JSON to jobs from standard input, a line each, for programs")
      ->group(command_group::terminal.title);
}

void add_completions_command(CLI::App& program, CompletionsArguments& parsed) {
  CLI::App* completions =
      program.add_subcommand("completions", "What a shell needs to finish what you type")
          ->group(command_group::terminal.title);
  argument_of(*completions, "what", "WHAT", {"bash", "zsh", "fish", "commands", "cuts", "recipes"},
              parsed.what, "a shell's script, or the names that it offers");
  argument(*completions, "file", placeholder::file, parsed.file, "whose recipes")->required(false);
}

void add_manual_command(CLI::App& program) {
  program.add_subcommand("manual", "The pages of this help as a manual page, for man")
      ->group(command_group::terminal.title);
}

void add_help_command(CLI::App& program, std::string& command) {
  CLI::App* help = program.add_subcommand("help", "What a command takes, with examples")
                       ->group(command_group::begin.title);
  argument(*help, "command", placeholder::command, command, "the command; all of them if none")
      ->required(false);
}

}  // namespace platewright::cli
