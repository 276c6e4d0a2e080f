// SPDX-License-Identifier: MIT
#pragma once
// What stands on the command line, as plain values. CLI11 is used behind this header and nowhere
// else.

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace platewright::cli {

/// Options of every command.
struct CommonOptions {
  std::string format = "text";
  std::string output;
  std::string section;  ///< one table of the sheet, in CSV or JSON
  unsigned width = 80;
  bool width_given = false;
  bool format_given = false;  ///< else `format` follows from the ending of `output`
  bool ascii = false;
  bool large = false;
  unsigned page_lines = 0;
  std::string tolerance;  ///< of kitchen measures: `2 %`
  std::string rounding;   ///< `army card`, `nearest 5 g`
  std::string measures =
      "book";  ///< which measures a sheet prints: us, metric, both, or the book's
};

/// How far a recipe is scaled; of portions, pieces, factor, on hand and short at most one is given.
struct ScaleOptions {
  std::string portions;
  std::string portion_size;
  std::string pieces;
  std::string factor;
  std::string on_hand;
  std::string short_of;  ///< `garlic: 3 lb`
  std::string piece_weight;
  std::string pan;
};

/// Which prices count, and what is changed before anything is worked out.
struct PriceOptions {
  std::string day;        ///< the newest prices on or before it; the event's day if empty
  bool cheapest = false;  ///< the offers with which the order is cheapest
  bool round_unit_prices = false;
  bool one_delivery = false;         ///< of every supplier
  std::vector<std::string> changes;  ///< `lamb leg=+12 %`
  std::vector<std::string> swaps;    ///< `lamb leg=mutton leg`
  std::string guests;
};

struct CardArguments {
  std::string file;
  std::string recipe;
  ScaleOptions scale;
  std::vector<std::string> batches;  ///< factors, one for each column
  bool sub_recipes = false;
  bool cost = false;
  bool labels = false;
  bool buffet = false;
  std::string date;
  PriceOptions prices;
};
struct YieldArguments {
  std::string name;
  std::string buy;
  std::string guests;
  std::string portion;
  std::string piece;
  std::string spread;
  std::string sure;
  std::string choose;
  bool any_method = false;
  std::vector<std::string> tested;
  std::vector<std::string> books;
};
/// A worksheet's file, those of a class, or a simple trim test typed in.
struct WorksheetArguments {
  std::vector<std::string> files;  ///< and folders
  std::string purchased;
  std::string labour;
  std::vector<std::string> usable;
  std::vector<std::string> by_products;
  std::vector<std::string> waste;
  std::vector<std::string> cutting_loss;
  std::string portion;
  std::string new_price;
  std::string handbook;
  std::optional<unsigned> digits;  ///< of prices by weight
  std::vector<std::string> books;
};
struct ExerciseArguments {
  std::uint64_t number = 0;
  bool solution = false;
  std::string measures = "us";
  std::vector<std::string> books;
};
struct TrialsArguments {
  std::string file;
  bool tables = false;
  std::vector<std::string> books;
};
/// A roast to be worked out.
struct RoastArguments {
  std::string kind;  ///< of food: `whole cut`
  std::string weight;
  std::string girth;
  std::string thickness;
  std::vector<std::string> oven;  ///< `450 F for 25 min`, `325 F`
  std::string until;
  std::string start = "40 F";
  std::string room = "70 F";
  std::string rest = "20 min";
  bool fan = false;
  std::string timed;                   ///< `5 lb in 150 min`
  std::vector<std::string> published;  ///< words of a row of times
};
/// The log of a roast.
struct LethalityArguments {
  std::string file;
  std::string food;
  std::string fat;
};
struct CostArguments {
  std::string file;
  std::string recipe;
  ScaleOptions scale;
  PriceOptions prices;
  std::string q_factor;   ///< of the event's quote if empty
  std::string at_price;   ///< of a portion, or of a guest
  std::string food_cost;  ///< wanted, as a share of the price
  std::string why;
};
struct PlatesArguments {
  std::vector<std::string> files;
  PriceOptions prices;
};
/// At most one of the questions is asked; none is the quote itself.
struct QuoteArguments {
  std::string file;
  PriceOptions prices;
  bool client = false;
  bool invoice = false;
  std::string why;
  std::string agreed_price;
  std::string turn_up;  ///< so many come, at the price quoted
  std::vector<std::string> guest_table;
  std::string movers;  ///< by which share everything is moved
  std::string floor;   ///< of the margin
  std::uint64_t seed = 1;
  std::int64_t draws = 10000;
};
struct BudgetArguments {
  std::string file;
  PriceOptions prices;
  std::string price;
  std::string margin;
  std::string dish;
  std::vector<std::string> cuts;
  std::vector<std::string> portions;
};
struct OrderArguments {
  std::vector<std::string> files;
  PriceOptions prices;
  std::string ordered;   ///< when the order is given: `2027-10-05 10:00`
  std::string supplier;  ///< of this one alone
  bool delivery_notes = false;
};
/// A supplier's list to take in.
struct PricesArguments {
  std::string file;
  bool good_rows = false;  ///< take in these, and list the others
  std::vector<std::string> books;
};
/// A recipe of schema.org to take in.
struct RecipeArguments {
  std::string file;
  std::vector<std::string> books;
};
struct TimelineArguments {
  std::string file;
  PriceOptions prices;
};
/// Cost, order and quote of an event, to go on calculating with.
struct WorkbookArguments {
  std::string file;
  PriceOptions prices;
};
struct DayArguments {
  std::string file;
  PriceOptions prices;
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

/// What an editor needs to know of a kind of file.
struct SchemaArguments {
  std::string kind;
};

/// Jobs from standard input; nothing is said of all of them.
struct AnswerArguments {};

/// A folder to begin with.
struct NewArguments {
  std::string kind;  ///< `event`
  std::string folder;
};

/// What a shell's completion asks for: its script, or names that it offers.
struct CompletionsArguments {
  std::string what;
  std::string file;
};

using CommandArguments =
    std::variant<CardArguments, YieldArguments, CostArguments, PlatesArguments, QuoteArguments,
                 BudgetArguments, OrderArguments, PricesArguments, TimelineArguments, DayArguments,
                 CheckArguments, MeasureArguments, TablesArguments, WorksheetArguments,
                 ExerciseArguments, TrialsArguments, RoastArguments, LethalityArguments,
                 NewArguments, CompletionsArguments, WorkbookArguments, RecipeArguments,
                 SchemaArguments, AnswerArguments>;

/// A command line that was understood, or what to print and the exit code instead.
struct CommandLine {
  CommonOptions common;
  std::optional<CommandArguments> command;
  std::string message;  ///< help, version, or what is wrong
  int exit_code = 0;
};

CommandLine read_command_line(int count, const char* const* arguments);

}  // namespace platewright::cli
