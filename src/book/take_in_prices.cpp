#include "platewright/book/take_in_prices.hpp"

#include <filesystem>
#include <map>
#include <set>

#include "book/reading.hpp"
#include "csv/read_csv.hpp"
#include "platewright/event/local_time.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/larders.hpp"
#include "platewright/problem/catalogue/price_lists.hpp"
#include "yaml/read_yaml.hpp"

namespace platewright {
namespace reading {
namespace {

/// What the header file says about a list.
struct ListHeader {
  std::string csv_file;
  std::string supplier;
  std::string day;
  std::string currency;
  char separator = ',';
  std::map<std::string, std::string> columns;  ///< item, pack, price, ... -> heading in the list
  std::map<std::string, std::string> items;    ///< what the supplier calls it -> what the book does
};

/// A text between quotation marks, as YAML reads it.
std::string yaml_text(const std::string& text) {
  std::string out = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\') out += '\\';
    if (c == '\n') {
      out += "\\n";
    } else if (c != '\r') {
      out += c;
    }
  }
  return out + "\"";
}

ListHeader read_header(yaml::Fields& top, const std::string& file) {
  ListHeader out;
  const std::string name = top.needed_text("price list", "price list: week-36.csv").value_or("");
  out.csv_file = (std::filesystem::path(file).parent_path() / name).lexically_normal().string();
  out.supplier = top.needed_text("from", "from: the market").value_or("");
  out.currency = top.needed_text("currency", "currency: USD").value_or("");
  top.need("on", "on: 2027-09-06");
  top.read<LocalDay>("on", [&](const std::string& text) {
    out.day = text;
    return read_local_day(text);
  });
  top.read<bool>("separator", [&](const std::string& text) {
    if (text != "," && text != ";" && text != "tab") {
      throw Failure(problems::word_unknown("separator", text, {",", ";", "tab"}));
    }
    out.separator = text == "tab" ? '\t' : text.front();
    return true;
  });
  top.need("columns", "columns: {item: Description, pack: Pack, price: Price}");
  for (const TextPair& pair : text_pairs(top, "columns")) {
    const std::vector<std::string> known{"item",  "pack", "piece",   "weighs",
                                         "price", "per",  "currency"};
    if (std::find(known.begin(), known.end(), pair.key) == known.end()) {
      top.context().problems.add(at(problems::key_unknown(pair.key, known), pair.key_place));
    }
    out.columns[pair.key] = pair.value;
  }
  for (const TextPair& pair : text_pairs(top, "items")) out.items[pair.key] = pair.value;
  return out;
}

/// Turns the rows of one list into offers.
class ListTaker {
 public:
  ListTaker(const ListHeader& header, const csv::Table& table, const Reading& reading)
      : header_(header), table_(table), reading_(reading) {}

  TakenPrices take() {
    TakenPrices out;
    find_columns();
    if (reading_.problems.has_errors()) return out;
    out.text = "# From " + std::filesystem::path(header_.csv_file).filename().string() + "\n";
    out.text += "prices: " + yaml_text(header_.supplier) + "\ncurrency: " + header_.currency +
                "\non: " + header_.day + "\noffers:\n";
    for (const csv::Record& record : table_.records) take_row(record, out);
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

  void take_row(const csv::Record& record, TakenPrices& out) {
    const csv::Field& item = *field(record, "item");
    const std::string name = name_of(item.text);
    if (name.empty()) {
      ++out.unmatched;
      reading_.problems.add(
          as_warning(at(problems::price_list_row_unmatched(item.text), place_of(item, "item"))));
      return;
    }
    reading_.problems.attempt(place_of(item, "item"), [&] {
      const Ingredient& ingredient = reading_.book.recipes.ingredient(name);
      if (!taken_.insert(name).second) {
        throw Failure(problems::name_twice("row for the ingredient", name, header_.csv_file));
      }
      check_currency(record);
      const yaml::Node offer = offer_of(record);
      check_offer(offer, ingredient);
      out.text += "  " + yaml_text(name) + ": {";
      for (const auto& [key, value] : offer.entries) {
        out.text += (&key == &offer.entries.front().first ? "" : ", ") + key.text + ": " +
                    yaml_text(value.text);
      }
      out.text += "}\n";
      ++out.taken;
    });
  }

  void check_currency(const csv::Record& record) const {
    const csv::Field* code = field(record, "currency");
    if (code == nullptr || code->text == header_.currency) return;
    throw Failure(
        at(problems::currency_differs(code->text, header_.currency), place_of(*code, "currency")));
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
      value.text = found->text;
      value.line = name.line = found->line;
      value.column = name.column = found->column;
      const csv::Field* unit = field(record, "per");
      if (std::string_view(key) == "price" && unit != nullptr && !unit->text.empty()) {
        value.text += " per " + unit->text;
      }
      out.entries.emplace_back(std::move(name), std::move(value));
    }
    return out;
  }

  /// What a larder's reader would say to it.
  void check_offer(const yaml::Node& offer, const Ingredient& ingredient) const {
    yaml::Fields fields(offer, {header_.csv_file, reading_.problems}, in_quotes(ingredient.name));
    read_purchase(fields, reading_, ingredient);
  }

  const ListHeader& header_;
  const csv::Table& table_;
  const Reading& reading_;
  std::map<std::string, std::size_t> positions_;
  std::set<std::string> taken_;
};

}  // namespace
}  // namespace reading

std::optional<TakenPrices> take_in_prices(const std::string& header_file, const Book& book,
                                          ProblemList& problems) {
  using namespace reading;
  const auto text = yaml::read_file(header_file, problems);
  if (!text) return std::nullopt;
  auto root = yaml::read_yaml(*text, header_file, problems);
  if (!root) return std::nullopt;
  const BookFile file{header_file, std::move(*root), "price list", true, book.measures};
  Book own = book;
  yaml::Fields top(file.root, {file.file, problems}, {});
  const ListHeader header = read_header(top, header_file);
  top.finish();
  if (problems.has_errors()) return std::nullopt;
  if (!book.prices.entries.empty() && header.currency != book.prices.currency) {
    problems.add(at(problems::currency_differs(header.currency, book.prices.currency),
                    top.place(*top.find("currency"), "currency")));
    return std::nullopt;
  }
  const auto list = yaml::read_file(header.csv_file, problems);
  if (!list) return std::nullopt;
  const auto table = csv::read_csv(*list, header.csv_file, header.separator, problems);
  if (!table) return std::nullopt;
  TakenPrices taken = ListTaker(header, *table, Reading{file, own, problems}).take();
  if (problems.has_errors()) return std::nullopt;
  return taken;
}

}  // namespace platewright
