// SPDX-License-Identifier: MIT
#include "platewright/files/take_in_prices.hpp"

#include <filesystem>
#include <map>
#include <set>

#include "csv/read_csv.hpp"
#include "files/file_kind.hpp"
#include "files/price_list_header.hpp"
#include "files/yaml_text.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/larders.hpp"
#include "platewright/problem/catalogue/price_lists.hpp"
#include "yaml/read_yaml.hpp"

namespace platewright {
namespace reading {
namespace {

std::string separator_name(char separator) {
  return separator == '\t' ? "tab" : std::string(1, separator);
}

/// What parts the words of the header, where that is not `stated`.
std::optional<char> other_separator(std::string_view list, char stated) {
  const std::string_view header = list.substr(0, list.find('\n'));
  if (header.find(stated) != std::string_view::npos) return std::nullopt;
  for (const char other : {';', '\t', ','}) {
    if (header.find(other) != std::string_view::npos) return other;
  }
  return std::nullopt;
}

/// Turns the rows of one list into offers.
class ListTaker {
 public:
  ListTaker(const PriceListHeader& header, const csv::Table& table, const Reading& reading,
            BadRows bad_rows, const ProblemList& of_table)
      : header_(header), table_(table), reading_(reading), bad_rows_(bad_rows) {
    for (const Problem& problem : of_table.all()) {
      if (problem.id == problems::csv_heading_row({}).id) continue;
      leave_out(problem.place.line, problem.found);
      for (const int line : problem.again) leave_out(line, problem.found);
    }
  }

  TakenPrices take() {
    TakenPrices out;
    find_columns();
    if (reading_.problems.has_errors()) return out;
    for (const csv::Record& record : table_.records) try_row(record, out);
    out.bad = bad_;
    if (out.taken == 0 && !reading_.problems.has_errors()) {
      reading_.problems.add(at(problems::price_list_nothing_taken(header_.csv_file),
                               Place{header_.csv_file, 1, 1, {}}));
    }
    out.text = "# From " + std::filesystem::path(header_.csv_file).filename().string() + "\n" +
               "prices: " + yaml_text(header_.supplier) + "\ncurrency: " + header_.currency +
               "\non: " + header_.day + "\n" + rates_text() + left_out_ + "offers:\n" +
               offers_text();
    return out;
  }

 private:
  void find_columns() {
    for (const auto& [key, heading] : header_.columns) {
      std::vector<std::string> headings;
      for (std::size_t i = 0; i < table_.header.fields.size(); ++i) {
        headings.push_back(table_.header.fields[i].text);
        if (headings.back() == heading) positions_[key] = i;
      }
      if (positions_.count(key) == 0) {
        reading_.problems.add(at(
            problems::name_unknown("column", heading, headings, "copy the heading from the list"),
            Place{header_.csv_file, 1, 1, {}}));
      }
    }
    for (const char* key : {"item", "price"}) {
      if (header_.columns.count(key) != 0) continue;
      reading_.problems.add(
          at(problems::key_missing(key, "columns: {item: Description, pack: Pack, price: Price}"),
             Place{reading_.file.file, 1, 1, "columns"}));
    }
  }

  const csv::Field* field(const csv::Record& record, const std::string& key) const {
    const auto position = positions_.find(key);
    return position == positions_.end() ? nullptr : &record.fields[position->second];
  }

  Place place_of(const csv::Field& field, const std::string& step) const {
    return Place{header_.csv_file, field.line, field.column, step};
  }

  /// The book's name for the item of a row; empty where no one has said what it is.
  std::string name_of(const std::string& item) const {
    const auto named = header_.items.find(item);
    if (named != header_.items.end()) return named->second;
    return reading_.book.recipes.find_ingredient(item) != nullptr ? item : std::string();
  }

  /// A row by itself, so that what is wrong with it stops no other.
  void try_row(const csv::Record& record, TakenPrices& out) {
    ProblemList own;
    const OnlyCounted counted(reading_.problems.is_full());
    take_row(record, own, out);
    const bool left_out = own.has_errors() && bad_rows_ == BadRows::left_out;
    if (left_out) {
      leave_out(record.fields.front().line,
                field(record, "item")->text + ": " + own.all().front().found);
    }
    for (const Problem& problem : own.all()) {
      reading_.problems.add(left_out ? as_warning(problem) : problem);
    }
  }

  void take_row(const csv::Record& record, ProblemList& problems, TakenPrices& out) {
    const csv::Field& item = *field(record, "item");
    const std::string name = name_of(item.text);
    if (name.empty()) {
      ++out.unmatched;
      problems.add(
          as_warning(at(problems::price_list_row_unmatched(item.text), place_of(item, "item"))));
      return;
    }
    const csv::Field& price = *field(record, "price");
    if (price.text.find_first_of("0123456789") == std::string::npos) {
      ++out.unmatched;
      problems.add(as_warning(at(problems::price_list_row_without_price(item.text, price.text),
                                 place_of(price, "price"))));
      return;
    }
    problems.attempt(place_of(item, "item"), [&] {
      const Ingredient& ingredient = reading_.book.recipes.ingredient(name);
      const yaml::Node offer = offer_of(record);
      const Purchase purchase = checked_offer(offer, ingredient, problems);
      if (!taken_.insert({name, purchase.pack_text}).second) {
        throw Failure(problems::name_twice("row for the ingredient and pack",
                                           name + ", " + purchase.pack_text, header_.csv_file));
      }
      offers_[name].push_back(offer_text(offer));
      ++out.taken;
    });
  }

  void leave_out(int line, const std::string& why) {
    ++bad_;
    left_out_ += "# Left out: line " + std::to_string(line) + ", " + escaped(why) + "\n";
  }

  static std::string offer_text(const yaml::Node& offer) {
    std::string out;
    for (const auto& [key, value] : offer.entries) {
      out += (out.empty() ? "{" : ", ") + key.text + ": " + yaml_text(value.text);
    }
    return out + "}";
  }

  /// Every ingredient with its offer, or with the list of them.
  std::string offers_text() const {
    std::string out;
    for (const auto& [name, offers] : offers_) {
      out += "  " + yaml_text(name) + ":";
      if (offers.size() == 1) {
        out += " " + offers.front() + "\n";
        continue;
      }
      out += "\n";
      for (const std::string& offer : offers) out += "    - " + offer + "\n";
    }
    return out;
  }

  /// The rates that the file beside the list names, so that the prices can be read without it.
  std::string rates_text() const {
    std::string out;
    for (const auto& [code, rate] : reading_.file.exchange_rates) {
      out += "  " + code + ": {is: " + as_exact(rate.rate) + ", source: " + yaml_text(rate.source) +
             "}\n";
    }
    return out.empty() ? out : "exchange rates:\n" + out;
  }

  /// The row as the map that a larder would have, every value at its place in the list.
  yaml::Node offer_of(const csv::Record& record) const {
    yaml::Node out;
    out.kind = yaml::Node::Kind::map;
    out.line = record.fields.front().line;
    out.column = 1;
    for (const char* key : {"pack", "piece", "weighs", "price"}) {
      const csv::Field* found = field(record, key);
      if (found == nullptr || found->text.empty()) continue;
      yaml::Node name;
      name.kind = yaml::Node::Kind::scalar;
      name.text = key;
      yaml::Node value = name;
      const bool price = std::string_view(key) == "price";
      value.text =
          price ? price_text(*found, record) : plain_decimals(found->text, header_.writing);
      value.line = name.line = found->line;
      value.column = name.column = found->column;
      out.entries.emplace_back(std::move(name), std::move(value));
    }
    return out;
  }

  /// `9.10`, `9.10 per lb` or `9.10 CAD per lb`.
  std::string price_text(const csv::Field& price, const csv::Record& record) const {
    std::string out;
    try {
      out = plain_price(price.text, header_.writing);
    } catch (const Failure& failure) {
      throw Failure(at(failure.problem(), place_of(price, "price")));
    }
    const csv::Field* code = field(record, "currency");
    if (code != nullptr && !code->text.empty()) out += " " + code->text;
    const csv::Field* unit = field(record, "per");
    if (unit != nullptr && !unit->text.empty()) out += " per " + unit->text;
    return out;
  }

  /// As a larder's reader takes it, or its problems.
  Purchase checked_offer(const yaml::Node& offer, const Ingredient& ingredient,
                         ProblemList& problems) const {
    yaml::Fields fields(offer, {header_.csv_file, problems}, in_quotes(ingredient.name),
                        offer_keys());
    return read_purchase(fields, Reading{reading_.file, reading_.book, problems}, ingredient);
  }

  const PriceListHeader& header_;
  const csv::Table& table_;
  const Reading& reading_;
  BadRows bad_rows_;
  std::size_t bad_ = 0;
  std::string left_out_;  ///< a remark for each bad row
  std::map<std::string, std::size_t> positions_;
  std::set<std::pair<std::string, std::string>> taken_;
  std::map<std::string, std::vector<std::string>> offers_;
};

}  // namespace
}  // namespace reading

std::optional<TakenPrices> take_in_prices(const std::string& header_file, const Book& book,
                                          ProblemList& problems, BadRows bad_rows) {
  using namespace reading;
  const auto text = yaml::read_named(header_file, problems);
  if (!text) return std::nullopt;
  if (!may_be_ours(*text, header_file, problems)) return std::nullopt;
  auto root = yaml::read_yaml(*text, header_file, problems);
  if (!root) return std::nullopt;
  BookFile file{header_file, std::make_shared<const yaml::Node>(std::move(*root)),
                FileKind::price_list, true, book.measures};
  Book own = book;
  yaml::Fields top(file.root(), {file.file, problems}, {}, price_list_keys());
  const PriceListHeader header = read_price_list_header(top, header_file);
  file.currency = header.currency;
  file.exchange_rates = read_exchange_rates(top);
  read_file_currency(top, Reading{file, own, problems});
  top.finish();
  if (book.recipes.ingredients.empty()) {
    problems.add(at(problems::price_list_without_larder(), Place{header_file, 1, 1, {}}));
  }
  if (problems.has_errors()) return std::nullopt;
  const auto list = yaml::read_file(header.csv_file, problems);
  if (!list) return std::nullopt;
  if (const auto other = other_separator(*list, header.separator)) {
    problems.add(
        at(problems::price_list_separator(separator_name(header.separator), separator_name(*other)),
           Place{header.csv_file, 1, 1, {}}));
    return std::nullopt;
  }
  ProblemList of_table;
  const auto table = csv::read_csv(*list, header.csv_file, header.separator, of_table, bad_rows);
  problems.add_all(of_table);
  if (!table) return std::nullopt;
  TakenPrices taken =
      ListTaker(header, *table, Reading{file, own, problems}, bad_rows, of_table).take();
  if (problems.has_errors()) return std::nullopt;
  return taken;
}

}  // namespace platewright
