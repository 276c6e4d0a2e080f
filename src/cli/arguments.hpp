#pragma once
// What stands on the command line, as plain values. CLI11 is used behind this header and nowhere else.

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace platewright::cli {

/// Options of every command.
struct CommonOptions {
  std::string format = "text";
  std::string output;
  unsigned width = 80;
  bool width_given = false;
  bool ascii = false;
  std::string measures = "book";  ///< which measures a sheet prints: us, metric, both, or the book's
};

/// How far a recipe is scaled; at most one of the four is given.
struct ScaleOptions {
  std::string portions;
  std::string pieces;
  std::string factor;
  std::string on_hand;
  std::string piece_weight;
};

struct CardArguments {
  std::string file;
  std::string recipe;
  ScaleOptions scale;
};
struct YieldArguments {
  std::string name;
  std::string buy;
  std::string guests;
  std::string portion;
  std::string piece;
  std::vector<std::string> books;
};
struct CostArguments {
  std::string file;
  std::string recipe;
  ScaleOptions scale;
};
struct QuoteArguments {
  std::string file;
};
struct OrderArguments {
  std::string file;
};
struct TimelineArguments {
  std::string file;
};
struct CheckArguments {
  std::vector<std::string> files;
};
struct MeasureArguments {
  std::string amount;
  std::string unit;
  std::string of;
  std::string system = "us";
  bool exact = false;
  std::vector<std::string> books;
};
struct TablesArguments {
  std::string table;
  std::vector<std::string> words;
  std::vector<std::string> books;
};

using CommandArguments =
    std::variant<CardArguments, YieldArguments, CostArguments, QuoteArguments, OrderArguments,
                 TimelineArguments, CheckArguments, MeasureArguments, TablesArguments>;

/// A command line that was understood, or what to print and the exit code instead.
struct CommandLine {
  CommonOptions common;
  std::optional<CommandArguments> command;
  std::string message;  ///< help, version, or what is wrong
  int exit_code = 0;
};

CommandLine read_command_line(int count, const char* const* arguments);

}  // namespace platewright::cli
