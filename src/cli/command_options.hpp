// SPDX-License-Identifier: MIT
#pragma once
// What commands of every kind take.

#include <string>
#include <vector>

#include "cli/arguments.hpp"
#include "cli/options.hpp"

namespace platewright::cli {

using Formats = std::vector<std::string>;
const Formats& sheet_formats();

/// A command with the options of every command, those of `common`.
CLI::App* add_command(CLI::App& program, const char* name, const CommandGroup& group,
                      const char* what, CommonOptions& common,
                      const Formats& formats = sheet_formats());

/// For the commands whose sheets have kitchen measures; no other takes them.
void add_kitchen_options(CLI::App& command, CommonOptions& common);

void add_books(CLI::App& command, std::vector<std::string>& books);

/// How much is made; what is given back takes further ways to say it.
CLI::App& add_scale(CLI::App& command, ScaleOptions& scale);

void add_prices(CLI::App& command, PriceOptions& prices);

/// For the commands that show when goods come.
void add_deliveries(CLI::App& command, PriceOptions& prices);

/// What every command takes that shows a plan.
void add_changes(CLI::App& command, PriceOptions& prices);

}  // namespace platewright::cli
