// In which currency prices are written, and what that is in the book's own.

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
  yaml::Fields fields(node, context, path);
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
  const yaml::Fields rates(*node, top.context(), top.path() + "exchange rates");
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

void set_currencies(std::deque<BookFile>& files, Book& book, ProblemList& problems) {
  bool declared = false;
  for (BookFile& file : files) {
    if (file.kind != FileKind::larder && file.kind != FileKind::prices) continue;
    yaml::Fields top(file.root, {file.file, problems}, {});
    file.currency = top.text("currency").value_or("");
    file.exchange_rates = read_exchange_rates(top);
    if (file.kind != FileKind::larder) continue;
    book.prices.exchange_rates.insert(file.exchange_rates.begin(), file.exchange_rates.end());
    // Another code is reported when the file is read.
    if (declared || !is_currency(file.currency)) continue;
    declared = true;
    book.prices.currency = Currency(file.currency);
  }
  const std::string& own = book.prices.currency.code();
  for (const BookFile& file : files) {
    if (file.exchange_rates.count(own) == 0) continue;
    const yaml::Fields top(file.root, {file.file, problems}, {});
    problems.add(
        at(problems::exchange_rate_of_itself(own), top.place(file.root, "exchange rates")));
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
