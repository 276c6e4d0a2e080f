// SPDX-License-Identifier: MIT
#include "files/schema_line.hpp"

#include "platewright/problem/folded_name.hpp"
#include "platewright/quantity/read_amount.hpp"

namespace platewright::reading {
namespace {

std::string trimmed_line(const std::string& text) {
  const std::size_t first = text.find_first_not_of(" ,\t\n");
  if (first == std::string::npos) return {};
  return text.substr(first, text.find_last_not_of(" ,\t\n") - first + 1);
}

bool is_an_amount(const std::string& text, const Book& book) {
  try {
    static_cast<void>(read_line_amount(text, book.tables.units, book.measures));
    return true;
  } catch (const Failure&) {
    return false;
  }
}

/// How many bytes at the front are an amount, as many as can be: `2 to 3 lb`, not `2`.
std::size_t amount_length(const std::string& text, const Book& book) {
  constexpr int most_words = 24;  // a range of cups, spoons and halves of them is seventeen
  std::size_t out = 0;
  int words = 0;
  for (std::size_t end = text.find(' '); end != std::string::npos && words < most_words;
       end = text.find(' ', end + 1), ++words) {
    if (is_an_amount(text.substr(0, end), book)) out = end;
  }
  return out;
}

/// The book's own spelling of a name; empty where it has none.
std::string name_in_book(const std::string& text, const Book& book) {
  const std::string wanted = folded_name(text);
  for (const auto& [name, ingredient] : book.recipes.ingredients) {
    if (folded_name(name) == wanted) return name;
  }
  for (const auto& [name, recipe] : book.recipes.recipes) {
    if (folded_name(name) == wanted) return name;
  }
  return {};
}

/// Names have commas of their own, so that the longest that the book has is the one meant.
void split_name(const std::string& text, const Book& book, SchemaLine& out) {
  for (std::size_t end = text.size(); end != std::string::npos && end > 0;
       end = text.rfind(',', end - 1)) {
    const std::string known = name_in_book(text.substr(0, end), book);
    if (known.empty()) continue;
    out.name = known;
    out.known = true;
    out.preparation = trimmed_line(text.substr(end));
    return;
  }
  const std::size_t comma = text.find(',');
  out.name = trimmed_line(text.substr(0, comma));
  if (comma != std::string::npos) out.preparation = trimmed_line(text.substr(comma));
}

/// `salt, to taste` is `salt`; nothing for another line.
std::optional<std::string> named_to_taste(const std::string& text) {
  const std::string words = "to taste";
  const std::string folded = folded_name(text);
  if (folded.size() <= words.size() || text.size() <= words.size()) return std::nullopt;
  if (folded.compare(folded.size() - words.size(), words.size(), words) != 0) return std::nullopt;
  return trimmed_line(text.substr(0, text.size() - words.size()));
}

/// Takes `, as cooked` from the end, which is how a published recipe says at which stage the amount
/// is. No other words are taken for a stage.
void take_stage(SchemaLine& out) {
  const std::size_t comma = out.preparation.rfind(',');
  const std::string last =
      trimmed_line(comma == std::string::npos ? out.preparation : out.preparation.substr(comma));
  for (std::size_t i = 0; i < stage_names.size(); ++i) {
    if (last != "as " + std::string(stage_names[i])) continue;
    out.stage = static_cast<Stage>(i);
    out.preparation.resize(comma == std::string::npos ? 0 : comma);
  }
}

}  // namespace

std::optional<SchemaLine> read_schema_line(const std::string& text, const Book& book) {
  const std::string line = trimmed_line(text);
  if (is_an_amount(line, book)) return std::nullopt;
  SchemaLine out;
  std::string rest;
  if (const auto named = named_to_taste(line)) {
    out.amount = "to taste";
    rest = *named;
  } else if (const std::size_t length = amount_length(line, book); length > 0) {
    out.amount = line.substr(0, length);
    rest = trimmed_line(line.substr(length));
    if (rest.compare(0, 3, "of ") == 0) rest = trimmed_line(rest.substr(3));
  }
  // What stands in brackets may be another amount of the same, `1 (14 oz) can`; what goes on with a
  // sign of a range is an amount that was not understood, `3 to 2 lb`.
  const bool is_range = rest.compare(0, 3, "to ") == 0 || rest.compare(0, 1, "-") == 0 ||
                        rest.compare(0, 3, "\u2013") == 0;
  if (rest.empty() || rest.front() == '(' || is_range) return std::nullopt;
  split_name(rest, book, out);
  take_stage(out);
  if (out.name.empty()) return std::nullopt;
  return out;
}

}  // namespace platewright::reading
