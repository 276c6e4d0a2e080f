// SPDX-License-Identifier: MIT
// measure, tables, check, schema.

#include <algorithm>
#include <stdexcept>
#include <string>

#include "cli/commands.hpp"
#include "cli/open_book.hpp"
#include "platewright/card/measure_sheet.hpp"
#include "platewright/card/problem_sheet.hpp"
#include "platewright/card/sheet_schema.hpp"
#include "platewright/card/table_sheets.hpp"
#include "platewright/files/check_files.hpp"
#include "platewright/files/file_schema.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/quantity/read_amount.hpp"

namespace platewright::cli {
namespace {

/// The weights of an ingredient of the book, or of a food of the tables. Throws Failure.
const IngredientWeights& weights_of(const std::string& name, const Book& book) {
  if (const Ingredient* own = book.recipes.find_ingredient(name)) return own->weights;
  if (const IngredientWeights* known = book.tables.weights.find(name)) return *known;
  throw WrongArgument(problems::name_unknown("food in the table of weights", name,
                                             book.tables.weights.names(),
                                             "see `platewright tables densities`"));
}

/// A conversion that the units alone decide. Throws WrongArgument.
Conversion without_a_food(const Amount& asked, const Unit& unit) {
  try {
    return {in_unit(asked, unit), {}};
  } catch (const Failure& failure) {
    Problem problem = failure.problem();
    problem.remedy = "say of what it is an amount, as in `--of honey`";
    throw WrongArgument(std::move(problem));
  }
}

}  // namespace

Result run(const MeasureArguments& arguments, const CommonOptions& common, ProblemList& problems) {
  const OpenedBook opened = tables_or_book(arguments.books, problems);
  const Book& book = *opened;
  const MeasuringSystem system =
      arguments.books.empty() ? read_system(arguments.system) : book.measures;
  MeasureAnswer answer{from_argument(
      "amount", [&] { return read_amount(arguments.amount, book.tables.units, system); })};
  answer.ingredient = arguments.of;
  if (!arguments.unit.empty()) {
    const IngredientWeights none{arguments.amount, {}};
    const IngredientWeights& weights = arguments.of.empty() ? none : weights_of(arguments.of, book);
    const Unit unit =
        from_argument("unit", [&] { return book.tables.units.find(arguments.unit, system); });
    const Conversion conversion = arguments.of.empty() ? without_a_food(answer.asked, unit)
                                                       : convert(answer.asked, unit, weights);
    answer.converted = conversion.amount;
    answer.through.assign(conversion.through.begin(), conversion.through.end());
    answer.others = other_answers(answer.asked, weights, conversion);
  }
  // An answer in grams is shown on a gram scale, whatever the book's own measures are.
  const Unit& unit = answer.converted.value_or(answer.asked).unit;
  const bool metric = unit.record().system == MeasuringSystem::metric;
  const KitchenView view(
      kitchen_wanted(common, book, system_for(common, metric ? MeasuringSystem::metric : system)));
  Result result{measure_sheet(answer, view), {}, 80};
  if (arguments.exact) {
    const Amount& shown = answer.converted.value_or(answer.asked);
    result.plain = as_exact(shown.number) + " " + shown.unit.symbol_for(shown.number) + "\n";
  }
  return result;
}

Result run(const TablesArguments& arguments, const CommonOptions&, ProblemList& problems) {
  const OpenedBook opened = tables_or_book(arguments.books, problems);
  const Book& book = *opened;
  return {table_sheet(arguments.table, arguments.words, book.tables), {}, 80};
}

Result run(const CheckArguments& arguments, const CommonOptions& common, ProblemList& problems) {
  const CheckedFiles checked = check_files(arguments.files, problems);
  Result result{problem_sheet(problems, checked.files, checked.single), {}, 80};
  // On a screen the problems are printed beside the sheet, line by line.
  if (common.format == "text" && !problems.all().empty()) result.sheet->blocks.pop_back();
  return result;
}

Result run(const SchemaArguments& arguments, const CommonOptions& common, ProblemList&) {
  if (arguments.kind == "sheet") return {std::nullopt, sheet_schema(), common.width};
  for (const FileKind kind :
       {FileKind::recipe, FileKind::larder, FileKind::event, FileKind::tables, FileKind::prices,
        FileKind::worksheet, FileKind::trials, FileKind::price_list}) {
    // One word on the command line.
    std::string typed(name_of(kind));
    std::replace(typed.begin(), typed.end(), ' ', '-');
    if (typed == arguments.kind) return {std::nullopt, file_schema(kind), common.width};
  }
  throw std::logic_error("a kind that the table of arguments has and this list has not");
}

}  // namespace platewright::cli
