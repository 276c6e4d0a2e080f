// SPDX-License-Identifier: MIT
// yield, worksheet, exercise, trials.

#include "cli/commands.hpp"
#include "cli/open_book.hpp"
#include "platewright/card/class_sheet.hpp"
#include "platewright/card/worksheet_sheet.hpp"
#include "platewright/card/yield_sheet.hpp"
#include "platewright/files/exercise_file.hpp"
#include "platewright/files/read_class.hpp"
#include "platewright/files/read_worksheet.hpp"
#include "platewright/problem/catalogue/recipes.hpp"
#include "platewright/problem/catalogue/worksheets.hpp"
#include "platewright/yield/chosen_row.hpp"

namespace platewright::cli {
namespace {

/// `cooked to served 70 %`: the cook's own yield between two stages. Throws WrongArgument.
Ladder with_test(const Ladder& ladder, const std::string& text) {
  return from_argument("--tested", [&] {
    const std::size_t to = text.find(" to ");
    const std::size_t yield = to == std::string::npos ? to : text.find(' ', to + 4);
    if (yield == std::string::npos) throw Failure(problems::test_malformed(text));
    return ladder.with_own_rung(stage_from(text.substr(0, to)),
                                stage_from(text.substr(to + 4, yield - to - 4)),
                                read_share(text.substr(yield + 1)), {"our own test", {}});
  });
}

/// What the larder says of a whole piece, where the question says nothing.
void take_piece_from(const Book& book, const std::string& name, YieldQuestion& question) {
  const PriceEntry* prices = book.prices.find(name);
  if (prices == nullptr || question.piece) return;
  for (const Purchase& purchase : prices->purchases) {
    if (!purchase.by_the_piece || purchase.content.dimension() != UnitDimension::mass) continue;
    question.piece = to_mass(purchase.content);
    if (purchase.spread && !question.piece_spread) {
      question.piece_spread = to_mass(*purchase.spread);
    }
    return;
  }
}

YieldQuestion question_from(const YieldArguments& arguments, const Book& book) {
  const auto mass = [&](const char* argument, const std::string& text) -> std::optional<Mass> {
    if (text.empty()) return std::nullopt;
    return weight_above_zero(argument, text, book);
  };
  YieldQuestion question;
  question.buy = mass("--buy", arguments.buy);
  question.piece = mass("--piece", arguments.piece);
  question.piece_spread = mass("--spread", arguments.spread);
  if (!arguments.portion.empty()) {
    question.portion = from_argument("--portion", [&] {
      return read_portion_size(arguments.portion, book.tables.units, book.measures);
    });
  }
  if (!arguments.guests.empty()) {
    question.guests = number_above_zero("--guests", arguments.guests);
  }
  if (!arguments.sure.empty()) {
    question.probability = from_argument("--sure", [&] { return read_share(arguments.sure); });
  }
  const bool asks_up = question.guests && (question.probability || !question.buy);
  if (asks_up && !question.portion) throw WrongArgument(problems::portion_missing());
  return question;
}

ChosenRow row_from(const YieldArguments& arguments, const Book& book) {
  if (const Ingredient* own = book.recipes.find_ingredient(arguments.name)) {
    return {{own->name, YieldKind::cut, own->ladder}, {}, {}, {}};
  }
  return from_argument("name", [&]() -> ChosenRow {
    if (arguments.choose.empty()) return row_named(book.tables.yields, arguments.name);
    const RowChoice choice = arguments.choose == "careful" ? RowChoice::careful : RowChoice::middle;
    return choose_cut(book.tables.yields, arguments.name, choice,
                      arguments.any_method ? RowMethods::any : RowMethods::alike);
  });
}

TrimTestText typed_test(const WorksheetArguments& arguments) {
  TrimTestText text{"typed in",        arguments.purchased, arguments.labour,  {},
                    arguments.portion, arguments.new_price, arguments.handbook};
  const auto add = [&](PartKind kind, const char* usual, const std::vector<std::string>& parts) {
    for (const std::string& part : parts) {
      const std::size_t colon = part.find(": ");
      const bool named = colon != std::string::npos;
      text.parts.push_back(
          {kind, named ? part.substr(0, colon) : usual, named ? part.substr(colon + 2) : part});
    }
  };
  add(PartKind::usable, "usable", arguments.usable);
  add(PartKind::by_product, "by-product", arguments.by_products);
  add(PartKind::waste, "waste", arguments.waste);
  add(PartKind::cutting_loss, "cutting loss", arguments.cutting_loss);
  return text;
}

}  // namespace

Result run(const YieldArguments& arguments, const CommonOptions& common, ProblemList& problems) {
  const OpenedBook opened = tables_or_book(arguments.books, problems);
  const Book& book = *opened;
  const ChosenRow chosen = row_from(arguments, book);
  Ladder ladder = chosen.row.ladder;
  for (const std::string& test : arguments.tested) ladder = with_test(ladder, test);
  YieldQuestion question = question_from(arguments, book);
  take_piece_from(book, arguments.name, question);
  const KitchenView view(kitchen_wanted(common, book, system_for(common, book.measures)));
  const YieldAnswer answered =
      from_argument("the question", [&] { return answer(ladder, question); });
  return {yield_sheet(chosen, answered, view, !arguments.choose.empty()), {}, 80};
}

Result run(const WorksheetArguments& arguments, const CommonOptions&, ProblemList& problems) {
  const OpenedBook opened = tables_or_book(arguments.books, problems);
  const Book& book = *opened;
  if (arguments.files.empty()) {
    if (arguments.purchased.empty()) throw WrongArgument(problems::worksheet_empty());
    const Worksheet typed = from_argument(
        "the test typed in", [&] { return worksheet_from(typed_test(arguments), book); });
    return {worksheet_sheet(typed, arguments.digits), {}, 80};
  }
  if (name_a_class(arguments.files)) {
    // A column for each answer: the page of a class lies on its side.
    return {class_sheet(read_class(arguments.files, book, problems)), {}, 120};
  }
  const auto read = read_worksheet(arguments.files.front(), book, problems);
  if (!read) throw BookHasProblems{};
  return {worksheet_sheet(*read, arguments.digits), {}, 80};
}

Result run(const ExerciseArguments& arguments, const CommonOptions&, ProblemList& problems) {
  const OpenedBook opened = tables_or_book(arguments.books, problems);
  const Book& book = *opened;
  const YieldTable& table = book.tables.yields;
  const Exercise exercise =
      draw_exercise(arguments.number, table,
                    arguments.measures == "metric" ? WeighedIn::kilograms : WeighedIn::pounds);
  return {worksheet_sheet(solution_of(exercise, table), std::nullopt),
          arguments.solution ? std::string() : exercise_file(exercise, table), 80};
}

Result run(const TrialsArguments& arguments, const CommonOptions&, ProblemList& problems) {
  const OpenedBook opened = tables_or_book(arguments.books, problems);
  const Book& book = *opened;
  const auto kept = read_trials(arguments.file, book, problems);
  if (!kept) throw BookHasProblems{};
  return {trials_sheet(*kept), arguments.tables ? own_tables_text(*kept) : std::string(), 80};
}

}  // namespace platewright::cli
