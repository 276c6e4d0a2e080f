// SPDX-License-Identifier: MIT
#pragma once
// The commands, each with the options that it takes, by kind.

#include <CLI/CLI.hpp>

#include "cli/arguments.hpp"

namespace platewright::cli {

void add_card_command(CLI::App& program, CardArguments& parsed, CommonOptions& common);
void add_timeline_command(CLI::App& program, TimelineArguments& parsed, CommonOptions& common);
void add_day_command(CLI::App& program, DayArguments& parsed, CommonOptions& common);

void add_roast_command(CLI::App& program, RoastArguments& parsed, CommonOptions& common);
void add_lethality_command(CLI::App& program, LethalityArguments& parsed, CommonOptions& common);
void add_recipe_command(CLI::App& program, RecipeArguments& parsed, CommonOptions& common);

void add_cost_command(CLI::App& program, CostArguments& parsed, CommonOptions& common);
void add_plates_command(CLI::App& program, PlatesArguments& parsed, CommonOptions& common);
void add_quote_command(CLI::App& program, QuoteArguments& parsed, CommonOptions& common);
void add_budget_command(CLI::App& program, BudgetArguments& parsed, CommonOptions& common);
void add_workbook_command(CLI::App& program, WorkbookArguments& parsed, CommonOptions& common);

void add_order_command(CLI::App& program, OrderArguments& parsed, CommonOptions& common);
void add_prices_command(CLI::App& program, PricesArguments& parsed, CommonOptions& common);

void add_yield_command(CLI::App& program, YieldArguments& parsed, CommonOptions& common);
void add_worksheet_command(CLI::App& program, WorksheetArguments& parsed, CommonOptions& common);
void add_exercise_command(CLI::App& program, ExerciseArguments& parsed, CommonOptions& common);
void add_trials_command(CLI::App& program, TrialsArguments& parsed, CommonOptions& common);

void add_check_command(CLI::App& program, CheckArguments& parsed, CommonOptions& common);
void add_measure_command(CLI::App& program, MeasureArguments& parsed, CommonOptions& common);
void add_tables_command(CLI::App& program, TablesArguments& parsed, CommonOptions& common);
void add_schema_command(CLI::App& program, SchemaArguments& parsed);
void add_new_command(CLI::App& program, NewArguments& parsed);
void add_help_command(CLI::App& program, std::string& command);

void add_answer_command(CLI::App& program, AnswerArguments& parsed);
void add_completions_command(CLI::App& program, CompletionsArguments& parsed);
void add_manual_command(CLI::App& program);

}  // namespace platewright::cli
