// SPDX-License-Identifier: MIT
#pragma once
// What the readers of all kinds of files share.

#include <deque>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "files/keys/keys.hpp"
#include "platewright/book/book.hpp"
#include "platewright/book/file_kind.hpp"
#include "platewright/problem/problem_list.hpp"
#include "platewright/quantity/read_amount.hpp"
#include "yaml/fields.hpp"

namespace platewright::reading {

/// A file of the book, as it was loaded.
struct BookFile {
  std::string file;
  std::shared_ptr<const yaml::Node> tree;  ///< never null while it is read; copies share it
  FileKind kind;
  bool named = false;  ///< on the command line, not in another file
  MeasuringSystem measures = MeasuringSystem::us;
  std::string currency = {};                                   ///< of prices that name none
  std::map<std::string, ForeignCurrency> exchange_rates = {};  ///< the file's own; they come first
  std::vector<std::string> with = {};                          ///< the files that it names

  const yaml::Node& root() const { return *tree; }
};

/// Where the reading stands: the file, the book that grows, the problems so far.
struct Reading {
  const BookFile& file;
  Book& book;
  ProblemList& problems;

  yaml::Context context() const { return {file.file, problems}; }
  Amount amount(std::string_view text) const {
    return read_amount(text, book.tables.units, file.measures);
  }
  LineAmount line_amount(std::string_view text) const {
    return read_line_amount(text, book.tables.units, file.measures);
  }
};

/// The texts before and after the first `separator`; the second is empty where there is none.
struct SplitText {
  std::string before;
  std::string after;
};
SplitText split_at(std::string_view text, std::string_view separator);

/// `key: value` pairs of a map value, each scalar; others are reported.
struct TextPair {
  std::string key;
  std::string value;
  Place key_place;
  Place value_place;
};
std::vector<TextPair> text_pairs(yaml::Fields& fields, std::string_view key);

/// `8 in`: a length above zero. Throws Failure.
Length read_height(const std::string& text, const Reading& reading);

/// `12 h to 48 h` or `20 min`. Throws Failure.
TimeSpan read_time_span(std::string_view text, const Reading& reading);

/// `20 min`, `5 min per leg`, `40 min per 4 legs by 2 people`.
struct StepTime {
  TimeSpan takes;
  std::optional<TimeGrowth> grows;
};

/// The time of a step of `recipe`, whose pieces, vessels and portions it may be for. Throws
/// Failure.
StepTime read_step_time(const std::string& text, const Recipe& recipe, const Reading& reading);

/// Money in the book's currency: `8.95`. Throws Failure for a sign or anything else that follows.
Money read_money(std::string_view text);

/// `08:00`; 24:00 is the end of the day. Nothing for another form.
std::optional<std::chrono::minutes> minute_of_day(std::string_view text);

/// A sum in the book's currency, and the one that it was written in where that is another.
struct PricedSum {
  Money money;
  std::optional<ForeignCurrency> written_in;
};

/// A sum as a file has it: `12.50`, in the file's currency, or `12.50 EUR`. Throws Failure for
/// another form, for what is no currency and for one without a rate. Where the file's own currency
/// has none, `read_file_currency` has said so once, and the sum stays as it is.
PricedSum read_priced(std::string_view text, const Reading& reading);

/// `{EUR: 1.085}`, or `{EUR: {is: 1.085, source: our bank}}`.
std::map<std::string, ForeignCurrency> read_exchange_rates(yaml::Fields& top);

/// Says for each file in which currency its prices are, and by which rates, and in which the book
/// reckons: that of its larders, of several the one in which the rates of the others are written.
void set_currencies(std::deque<BookFile>& files, Book& book, ProblemList& problems);

/// Reports a file without a currency, and one in a currency without a rate.
void read_file_currency(yaml::Fields& top, const Reading& reading);

/// Reports a name that stands twice, with the place of the first.
void report_twice(const Reading& reading, std::string_view what, const std::string& name,
                  const Place& first, const Place& second);

/// The book of files that are loaded; `whole` where none is missing.
Book book_of_files(std::deque<BookFile> files, bool whole, ProblemList& problems);

/// The book of these files as far as it can be read: `read_book` without its last word.
Book read_what_can_be(const std::vector<std::string>& names, ProblemList& problems);

void read_own_tables(const std::vector<BookFile>& files, Book& book, ProblemList& problems);
/// The kitchen, if the file declares one; of several files the first that does is followed.
void read_kitchen(const Reading& reading);
/// What a `kitchen:` says of ovens, hobs, rooms and people; nothing where it says none of it.
std::optional<Workplace> read_workplace(yaml::Fields& kitchen, const Reading& reading);
void read_larder(const Reading& reading);
/// One offer; reports what is wrong with a field and throws Failure for an offer that is none.
Purchase read_purchase(yaml::Fields& buy, const Reading& reading, const Ingredient& ingredient);
/// What is in store of an ingredient, and what its pieces leave that is worth something.
void read_store(yaml::Fields& fields, const Reading& reading, const Ingredient& ingredient,
                PriceEntry& prices);
/// How each supplier delivers, and for what.
void read_suppliers(yaml::Fields& top, const Reading& reading);
/// Where goods are kept until they are used, and how long.
void read_keeping(yaml::Fields& fields, Keeping& keeping);
/// A later price list, whose offers join those of the larder.
void read_prices(const Reading& reading);
/// The recipe of a file; nothing where it has no name. The book stays as it is.
std::optional<Recipe> recipe_in_file(const Reading& reading);
/// Puts it into the book; reports a second one of its name.
void take_recipe(const Reading& reading, Recipe recipe);
/// The recipes of all files that are one's, which are let go then. Problems come in the order of
/// the files.
void read_recipes(std::deque<BookFile>& files, Book& book, ProblemList& problems);
/// A row of a user's own rules for steps. Throws Failure for one that is not whole.
StepRule read_step_rule(yaml::Fields& fields, const Reading& reading, const std::string& source,
                        const std::string& row);
/// The method: what is done, and of a step that says its kind what its rule is held against.
void read_steps(const Reading& reading, yaml::Fields& top, Recipe& recipe);

/// The recipe's vessel and batches; what it makes and was tested on must be read already.
void read_recipe_size(const Reading& reading, yaml::Fields& top, Recipe& recipe);
void read_event(const Reading& reading);
/// Hire, transport and the like, on the bill or where the extra says so. The rates of tax must be
/// read already.
ExtraLine read_extra(yaml::Fields& fields, const TaxRates& rates, bool on_the_bill);
/// The terms and the paper of an event whose guests and time are read.
void read_quote_terms(const yaml::Node& node, const Reading& reading, const std::string& path,
                      Event& event);

}  // namespace platewright::reading
