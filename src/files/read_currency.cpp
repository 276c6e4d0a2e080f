// SPDX-License-Identifier: MIT
// In which currency prices are written, and what that is in the book's own.

#include <algorithm>
#include <set>

#include "files/reading.hpp"
#include "platewright/problem/catalogue/larders.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/quantity/currency.hpp"

namespace platewright::reading {
namespace {

Rational rate_from(const std::string& text) {
  const Rational rate = read_number(text);
  if (rate <= 0) throw Failure(problems::number_not_positive("an exchange rate", text));
  return rate;
}

ForeignCurrency exchange_rate(const yaml::Node& node, const std::string& code,
                              const std::string& path, const yaml::Context& context) {
  ForeignCurrency out{Currency(code), 0, {}};
  if (node.is_scalar()) {
    out.rate = rate_from(node.text);
    return out;
  }
  yaml::Fields fields(node, context, path, exchange_rate_keys());
  fields.need("is", "is: 1.085");
  out.rate = fields.read<Rational>("is", rate_from).value_or(1);
  out.source = fields.text("source").value_or("");
  fields.finish();
  return out;
}

const ForeignCurrency* find_rate(const std::string& code, const Reading& reading) {
  const auto own = reading.file.exchange_rates.find(code);
  if (own != reading.file.exchange_rates.end()) return &own->second;
  const auto of_book = reading.book.prices.exchange_rates.find(code);
  return of_book == reading.book.prices.exchange_rates.end() ? nullptr : &of_book->second;
}

}  // namespace

std::map<std::string, ForeignCurrency> read_exchange_rates(yaml::Fields& top) {
  std::map<std::string, ForeignCurrency> out;
  const yaml::Node* node = top.find("exchange rates");
  if (node == nullptr) return out;
  const yaml::Fields rates(*node, top.context(), top.path() + "exchange rates",
                           exchange_rate_keys());
  for (const auto& [name, value] : node->entries) {
    const std::string code = name.text;
    const yaml::Node& rate = value;
    if (!top.context().problems.attempt(rates.place(name), [&] { Currency{code}; })) continue;
    top.context().problems.attempt(rates.place(rate, code), [&] {
      out.insert_or_assign(code,
                           exchange_rate(rate, code, rates.path() + " > " + code, top.context()));
    });
  }
  return out;
}

namespace {

/// The currency in which a run reckons: that of its larders; of several the one whose larders say
/// the rates of all the others, whichever file was named first. The first of the larders' where
/// none does, which is reported when the files are read.
std::optional<Currency> currency_of(const std::deque<BookFile>& files) {
  std::vector<std::string> in_order;
  std::map<std::string, std::set<std::string>> rates;  // by currency, what its larders know
  for (const BookFile& file : files) {
    if (file.kind != FileKind::larder || !is_currency(file.currency)) continue;
    in_order.push_back(file.currency);
    std::set<std::string>& known = rates[file.currency];
    known.insert(file.currency);
    for (const auto& [code, rate] : file.exchange_rates) known.insert(code);
  }
  if (in_order.empty()) return std::nullopt;
  for (const auto& [code, known] : rates) {
    if (std::all_of(in_order.begin(), in_order.end(),
                    [&known = known](const std::string& other) { return known.count(other) > 0; }))
      return Currency(code);
  }
  return Currency(in_order.front());
}

/// The rates of the larders in the book's currency; of two for one currency the higher, by which
/// goods cost more.
void take_rates(const std::deque<BookFile>& files, PriceList& prices) {
  for (const BookFile& file : files) {
    if (file.kind != FileKind::larder || file.currency != prices.currency.code()) continue;
    for (const auto& [code, rate] : file.exchange_rates) {
      const auto [known, is_new] = prices.exchange_rates.emplace(code, rate);
      if (!is_new && known->second.rate < rate.rate) known->second = rate;
    }
  }
}

/// The rates of a larder in another currency say what that one's are in its own: through its own
/// they come to the book's.
void rates_through_own(BookFile& file, const PriceList& prices) {
  const auto own = prices.exchange_rates.find(file.currency);
  if (file.kind != FileKind::larder || own == prices.exchange_rates.end()) return;
  file.exchange_rates.erase(prices.currency.code());
  for (auto& [code, rate] : file.exchange_rates) rate.rate *= own->second.rate;
}

}  // namespace

void set_currencies(std::deque<BookFile>& files, Book& book, ProblemList& problems) {
  for (BookFile& file : files) {
    if (file.kind != FileKind::larder && file.kind != FileKind::prices) continue;
    yaml::Fields top(file.root(), {file.file, problems}, {}, keys_of(file.kind));
    file.currency = top.text("currency").value_or("");
    file.exchange_rates = read_exchange_rates(top);
    const bool of_itself =
        file.kind == FileKind::larder && file.exchange_rates.count(file.currency);
    if (!of_itself) continue;
    problems.add(at(problems::exchange_rate_of_itself(file.currency),
                    top.place(file.root(), "exchange rates")));
  }
  book.prices.currency = currency_of(files).value_or(book.prices.currency);
  take_rates(files, book.prices);
  const std::string& own = book.prices.currency.code();
  // Where larders of several currencies are read together, a list may name what is its own book's.
  const bool one_currency = std::none_of(files.begin(), files.end(), [&](const BookFile& file) {
    return file.kind == FileKind::larder && file.currency != own;
  });
  for (BookFile& file : files) {
    if (file.currency != own) rates_through_own(file, book.prices);
    if (!one_currency || file.kind == FileKind::larder) continue;
    if (file.exchange_rates.count(own) == 0) continue;
    const yaml::Fields top(file.root(), {file.file, problems}, {}, keys_of(file.kind));
    problems.add(
        at(problems::exchange_rate_of_itself(own), top.place(file.root(), "exchange rates")));
  }
}

void read_file_currency(yaml::Fields& top, const Reading& reading) {
  top.find("exchange rates");
  const auto code = top.needed_text("currency", "currency: USD");
  if (!code) return;
  reading.problems.attempt(top.place(*top.find("currency"), "currency"), [&] {
    const std::string& own = reading.book.prices.currency.code();
    if (Currency(*code).code() == own || find_rate(*code, reading) != nullptr) return;
    throw Failure(problems::exchange_rate_missing(*code, own));
  });
}

PricedSum read_priced(std::string_view text, const Reading& reading) {
  const NumberPrefix number = read_number_prefix(text);
  const std::string named(trimmed_spaces(text.substr(number.length)));
  const bool letters = named.size() == 3 &&
                       named.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZ") == std::string::npos;
  if (!named.empty() && !letters) throw Failure(problems::price_malformed(text));
  if (!named.empty()) Currency{named};
  const Money sum = Money::of(number.value, units::currency_unit);
  const std::string& code = named.empty() ? reading.file.currency : named;
  if (code.empty() || code == reading.book.prices.currency.code()) return {sum, std::nullopt};
  if (const ForeignCurrency* rate = find_rate(code, reading)) return {sum * rate->rate, *rate};
  if (named.empty()) return {sum, std::nullopt};
  throw Failure(problems::exchange_rate_missing(code, reading.book.prices.currency.code()));
}

}  // namespace platewright::reading
