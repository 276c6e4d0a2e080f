// SPDX-License-Identifier: MIT
// How suppliers deliver, and where goods are kept until they are used.

#include <array>

#include "files/reading.hpp"
#include "platewright/event/local_time.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/orders.hpp"

namespace platewright::reading {
namespace {

/// `Tue` or `Tuesday`, in any letters.
std::chrono::weekday read_weekday(const std::string& text) {
  static constexpr std::array<const char*, 7> names{"sunday",   "monday", "tuesday", "wednesday",
                                                    "thursday", "friday", "saturday"};
  const std::string word = folded_name(text);
  for (unsigned i = 0; i < names.size(); ++i) {
    const std::string name = names.at(i);
    if (word == name || word == name.substr(0, 3)) return std::chrono::weekday(i);
  }
  throw Failure(problems::word_unknown("day of the week", text,
                                       {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"}));
}

/// `2 days before`, `the day before`, `the same day`; nothing for other words.
std::optional<int> days_before(const std::string& words) {
  if (words == "the same day") return 0;
  if (words == "the day before" || words == "1 day before") return 1;
  const SplitText parts = split_at(words, " days before");
  const bool in_digits =
      parts.before.find_first_not_of("0123456789") == std::string::npos && !parts.before.empty();
  if (parts.before == words || !parts.after.empty() || !in_digits) return std::nullopt;
  const Rational days = read_number(parts.before);
  if (!is_whole(days) || days < 0 || days > 365) return std::nullopt;
  return static_cast<int>(floor_of(days));
}

/// `14:00, 2 days before`, or one of the two.
CutOff read_cut_off(const std::string& text) {
  CutOff out;
  std::string words = text;
  if (text.size() > 5 && (out.hour = minute_of_day(std::string_view(text).substr(0, 5)))) {
    words = trimmed_spaces(std::string_view(text).substr(text[5] == ',' ? 6 : 5));
  }
  const auto days = days_before(words);
  if (!days) throw Failure(problems::cut_off_malformed(text));
  out.days = *days;
  return out;
}

/// `2027-10-08`, or `2027-12-24 to 2028-01-02`.
DaySpan read_day_span(const std::string& text) {
  const SplitText parts = split_at(text, " to ");
  const LocalDay first = read_local_day(parts.before);
  const LocalDay last = parts.after.empty() ? first : read_local_day(parts.after);
  if (last < first) throw Failure(problems::closed_days_backwards(text));
  return {first, last};
}

Supplier read_supplier(yaml::Fields& fields, const Reading& reading) {
  const auto sum = [&](const std::string& text) { return read_priced(text, reading).money; };
  Supplier out;
  for (const std::string& day : fields.texts("delivers")) {
    reading.problems.attempt(fields.place(*fields.find("delivers"), "delivers"),
                             [&] { out.delivers.push_back(read_weekday(day)); });
  }
  out.cut_off = fields.read<CutOff>("order by", read_cut_off);
  for (const std::string& span : fields.texts("closed")) {
    reading.problems.attempt(fields.place(*fields.find("closed"), "closed"),
                             [&] { out.closed.push_back(read_day_span(span)); });
  }
  out.minimum = fields.read<Money>("minimum", sum).value_or(Money());
  out.delivery_charge = fields.read<Money>("delivery charge", sum).value_or(Money());
  out.one_delivery = fields.flag("one delivery");
  out.address = fields.text("address").value_or("");
  out.telephone = fields.text("telephone").value_or("");
  out.place = fields.place();
  fields.finish();
  return out;
}

void read_minimum_orders(yaml::Fields& top, const Reading& reading) {
  for (const TextPair& pair : text_pairs(top, "minimum orders")) {
    reading.problems.attempt(pair.value_place, [&] {
      Supplier& supplier = reading.book.prices.suppliers[pair.key];
      const Money minimum = read_priced(pair.value, reading).money;
      if (supplier.minimum > Money() && supplier.minimum != minimum) {
        report_twice(reading, "minimum of a supplier", pair.key, supplier.place, pair.key_place);
      }
      supplier.minimum = minimum;
      if (supplier.place.line == 0) supplier.place = pair.key_place;
    });
  }
}

}  // namespace

void read_suppliers(yaml::Fields& top, const Reading& reading) {
  const yaml::Node* suppliers = top.find("suppliers");
  if (suppliers != nullptr && !suppliers->is_map()) {
    reading.problems.add(at(problems::wrong_shape(yaml::shape_of(*suppliers), "a map of suppliers"),
                            top.place(*suppliers, "suppliers")));
  } else if (suppliers != nullptr) {
    for (const auto& [name, node] : suppliers->entries) {
      yaml::Fields fields(node, reading.context(), "suppliers > " + in_quotes(name.text),
                          supplier_keys());
      if (!fields.is_map()) continue;
      Supplier supplier = read_supplier(fields, reading);
      const auto [known, is_new] = reading.book.prices.suppliers.emplace(name.text, supplier);
      if (!is_new) {
        report_twice(reading, "supplier", name.text, known->second.place, supplier.place);
      }
    }
  }
  read_minimum_orders(top, reading);
}

void read_keeping(yaml::Fields& fields, Keeping& keeping) {
  keeping.at = fields.read<Storage>("kept", [](const std::string& text) {
    for (const Storage storage : {Storage::dry, Storage::chilled, Storage::frozen}) {
      if (text == name_of(storage)) return storage;
    }
    throw Failure(problems::word_unknown("store", text, {"dry", "chilled", "frozen"}));
  });
  keeping.days = fields.read<int>("keeps", [](const std::string& text) {
    const SplitText parts = split_at(text, " day");
    const bool said = parts.before != text && (parts.after.empty() || parts.after == "s");
    const Rational days = said ? read_number(parts.before) : Rational(-1);
    if (!is_whole(days) || days < 0 || days > 3650) {
      throw Failure(problems::kept_for_malformed(text));
    }
    return static_cast<int>(floor_of(days));
  });
}

}  // namespace platewright::reading
