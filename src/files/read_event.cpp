// SPDX-License-Identifier: MIT
// An event's file.

#include <algorithm>
#include <map>
#include <string>
#include <vector>

#include "files/terms_of_quote.hpp"
#include "platewright/event/read_zoned_time.hpp"
#include "platewright/files/time_zones.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/catalogue/quotes.hpp"

namespace platewright::reading {
namespace {

void read_guests(yaml::Fields& top, const Reading& reading, Event& event) {
  if (top.need("guests", "guests: {adults: 70, children: 10}") == nullptr) return;
  for (const TextPair& pair : text_pairs(top, "guests")) {
    // Added first, so that shares of a kind whose count is wrong still find it.
    event.guests.push_back(GuestKind{pair.key, 0, 1, 1});
    reading.problems.attempt(pair.value_place,
                             [&] { event.guests.back().count = read_guest_count(pair.value); });
  }
}

GuestKind* find_kind(Event& event, const std::string& name) {
  for (GuestKind& kind : event.guests) {
    if (kind.name == name) return &kind;
  }
  return nullptr;
}

/// `may not eat: {coeliacs: [gluten]}`.
void read_diets(yaml::Fields& top, const Reading& reading, Event& event) {
  const yaml::Node* node = top.find("may not eat");
  if (node == nullptr) return;
  yaml::Fields diets(*node, reading.context(), top.path() + " > may not eat", diet_keys());
  if (!node->is_map()) return;
  for (const auto& [name, value] : node->entries) {
    const std::string& guests = name.text;
    const Place place = diets.place(name, guests);
    const std::vector<std::string> words = diets.texts(guests);
    reading.problems.attempt(place, [&] {
      GuestKind& kind = kind_called(event, guests, place);
      for (const std::string& word : words) {
        kind.without.push_back(reading.book.tables.allergens.key_for(word));
      }
    });
  }
  diets.finish();
}

/// `portion shares` and `price shares`: a share for a kind of guest that is there.
void read_shares(yaml::Fields& top, const Reading& reading, Event& event, std::string_view key,
                 Rational GuestKind::*member) {
  std::map<std::string, GuestKind*> kinds;
  for (GuestKind& kind : event.guests) kinds.emplace(kind.name, &kind);
  for (const TextPair& pair : text_pairs(top, key)) {
    const auto found = kinds.find(pair.key);
    GuestKind* kind = found == kinds.end() ? nullptr : found->second;
    if (kind == nullptr && reading.problems.is_full()) {
      reading.problems.leave_out();
      continue;
    }
    reading.problems.attempt(pair.value_place, [&] {
      if (kind == nullptr) kind = &kind_called(event, pair.key, pair.key_place);
      const Rational share = read_share(pair.value);
      if (share > 10) {
        throw Failure(problems::share_out_of_range("a share", pair.value, "at most 1000 %"));
      }
      kind->*member = share;
    });
  }
}

/// `guest prices: {children: 29.00}`: instead of a share of the full price.
void read_guest_prices(yaml::Fields& top, const Reading& reading, Event& event) {
  std::vector<std::string> shares;
  for (const TextPair& pair : text_pairs(top, "price shares")) shares.push_back(pair.key);
  for (const TextPair& pair : text_pairs(top, "guest prices")) {
    reading.problems.attempt(pair.value_place, [&] {
      GuestKind& kind = kind_called(event, pair.key, pair.key_place);
      if (std::find(shares.begin(), shares.end(), pair.key) != shares.end()) {
        throw Failure(problems::guest_price_twice(in_quotes(pair.key)));
      }
      kind.own_price = read_money(pair.value);
    });
  }
}

/// `57 guests`: as a share of all of them.
std::optional<Rational> counted_guests(const std::string& text, const Event& event) {
  const SplitText parts = split_at(text, " guests");
  const bool counted = text.size() > 7 && text.substr(text.size() - 7) == " guests";
  if (!counted) return std::nullopt;
  const Rational heads = guest_count(event);
  const Rational count = read_number(parts.before);
  if (!is_whole(count)) throw Failure(problems::number_malformed(text, "guests come whole"));
  if (count <= 0 || count > heads) {
    throw Failure(problems::share_out_of_range("a number of guests", text,
                                               "above 0 and at most " + as_exact(heads)));
  }
  return Rational(count / heads);
}

Rational share_of_guests(const std::string& text, const Event& event) {
  if (text == "everyone") return 1;
  if (const auto counted = counted_guests(text, event)) return *counted;
  if (text.find_first_of("0123456789") == std::string::npos) {
    std::vector<std::string> known{"everyone", "40 %", "57 guests"};
    for (const GuestKind& kind : event.guests) known.push_back(kind.name);
    throw Failure(problems::word_unknown("share of the guests", text, known));
  }
  return read_share(text);
}

void read_menu(yaml::Fields& top, const Reading& reading, Event& event) {
  if (top.need("menu", "menu:\n  - roast chicken: 40 %") == nullptr) return;
  for (const yaml::Node& item : top.list("menu")) {
    MenuLine line;
    line.place = top.place(item, "menu > line " + std::to_string(event.menu.size() + 1));
    if (item.is_scalar()) {
      line.recipe = item.text;
    } else if (item.is_map() && item.entries.size() == 1 &&
               item.entries.front().second.is_scalar()) {
      const yaml::Node& value = item.entries.front().second;
      line.recipe = item.entries.front().first.text;
      reading.problems.attempt(line.place, [&] {
        if (find_kind(event, value.text) != nullptr) {
          line.guests = value.text;
          return;
        }
        line.share = share_of_guests(value.text, event);
        if (line.share <= 0 || line.share > 1) {
          throw Failure(problems::share_out_of_range("a share of the guests", value.text,
                                                     "above 0 and at most 100 %"));
        }
      });
    } else {
      reading.problems.add(at(
          problems::wrong_shape(yaml::shape_of(item), "a recipe and a share, as in `soup: 40 %`"),
          line.place));
      continue;
    }
    event.menu.push_back(std::move(line));
  }
}

/// `paid by: {band: the agency}`.
void read_payers(yaml::Fields& top, const Reading& reading, Event& event) {
  for (const TextPair& pair : text_pairs(top, "paid by")) {
    reading.problems.attempt(
        pair.value_place, [&] { kind_called(event, pair.key, pair.key_place).payer = pair.value; });
  }
}

}  // namespace

GuestKind& kind_called(Event& event, const std::string& name, const Place& place) {
  if (GuestKind* kind = find_kind(event, name)) return *kind;
  std::vector<std::string> names;
  if (!OnlyCounted::now()) {
    for (const GuestKind& other : event.guests) names.push_back(other.name);
  }
  throw Failure(at(problems::name_unknown("kind of guest", name, names,
                                          "add it to the guests, or take it out here"),
                   place));
}

Rational read_guest_count(const std::string& text) {
  const Rational count = read_number(text);
  if (!is_whole(count)) throw Failure(problems::number_malformed(text, "guests come whole"));
  return count;
}

void read_event(const Reading& reading) {
  yaml::Fields peek(reading.file.root(), reading.context(), {}, event_keys());
  const auto name = peek.name("event");
  if (!name) return;
  Event event;
  event.name = *name;
  const std::string path = "event " + in_quotes(*name);
  yaml::Fields top(reading.file.root(), reading.context(), path, event_keys());
  event.place = top.place(*top.find("event"));
  top.find("measures");
  top.find("kitchen");
  top.find("with");
  if (const auto at = top.text("at")) {
    reading.problems.attempt(top.place(*top.find("at"), "at"),
                             [&] { event.at = read_zoned_time(*at, read_time_zone); });
  }
  read_occasion_paper(top, event.paper);
  read_guests(top, reading, event);
  read_shares(top, reading, event, "portion shares", &GuestKind::portion_share);
  read_shares(top, reading, event, "price shares", &GuestKind::price_share);
  read_guest_prices(top, reading, event);
  read_payers(top, reading, event);
  read_diets(top, reading, event);
  read_menu(top, reading, event);
  if (const auto over = top.share("over")) {
    event.over = *over;
    if (*over > 1) {
      reading.problems.add(at(problems::share_out_of_range(
                                  "over-production", as_exact(*over * 100) + " %", "at most 100 %"),
                              top.place(*top.find("over"), "over")));
    }
  }
  if (const yaml::Node* quote = top.find("quote")) {
    event.has_terms = true;
    event.terms.place = top.place(*quote, "quote");
    read_quote_terms(*quote, reading, path + " > quote", event);
  }
  read_invoice(top, reading, event);
  top.finish();
  reading.book.events.push_back(std::move(event));
}

}  // namespace platewright::reading
