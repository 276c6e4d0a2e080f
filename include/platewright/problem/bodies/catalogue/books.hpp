// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/books.hpp.

#include "platewright/problem/catalogue/books.hpp"

namespace platewright::problems {

namespace detail {

PLATEWRIGHT_BODY std::string one_of(const std::vector<std::string>& names) {
  std::string out;
  for (std::size_t i = 0; i < names.size() && i < 12; ++i) {
    if (i > 0) out += i + 1 == names.size() ? " or " : ", ";
    out += in_quotes(names[i]);
  }
  return names.size() > 12 ? out + ", ..." : out;
}

}  // namespace detail

PLATEWRIGHT_BODY Problem key_unknown(std::string_view key, const std::vector<std::string>& known) {
  std::string remedy = did_you_mean(key, known);
  if (remedy.empty()) remedy = "take the key out, or check its indentation";
  return make_problem("key-unknown", "the key " + in_quotes(key), detail::one_of(known),
                      std::move(remedy));
}

PLATEWRIGHT_BODY Problem key_missing(std::string_view key, std::string_view example) {
  return make_problem("key-missing", "no " + in_quotes(key), "the key " + in_quotes(key),
                      "write, for example, " + std::string(example));
}

PLATEWRIGHT_BODY Problem word_unknown(std::string_view what, std::string_view word,
                                      const std::vector<std::string>& known) {
  std::string remedy = did_you_mean(word, known);
  if (remedy.empty()) remedy = "use one of the words expected";
  return make_problem("word-unknown", "the " + std::string(what) + " " + in_quotes(word),
                      detail::one_of(known), std::move(remedy));
}

PLATEWRIGHT_BODY Problem name_unknown(std::string_view what, std::string_view name,
                                      const std::vector<std::string>& known,
                                      std::string_view otherwise) {
  std::string remedy = did_you_mean(name, known);
  if (!remedy.empty()) remedy += " If not, ";
  remedy += otherwise;
  return make_problem("name-unknown", "no " + std::string(what) + " called " + in_quotes(name),
                      std::string(what) + " that is there, by its name", std::move(remedy));
}

PLATEWRIGHT_BODY Problem name_twice(std::string_view what, std::string_view name,
                                    std::string_view first) {
  return make_problem("name-twice",
                      "a second " + std::string(what) + " called " + in_quotes(name) +
                          ", first at " + std::string(first),
                      "each name once", "rename one of the two, or take it out");
}

PLATEWRIGHT_BODY Problem not_a_book(std::string_view nearest, std::string_view meant) {
  std::string remedy =
      "write a line such as `recipe: roast lamb`; the pages in examples show one of each kind. "
      "Worksheets, "
      "trials and price lists are "
      "read by commands of their own";
  if (!nearest.empty()) {
    remedy = "write `" + std::string(meant) + ":` for `" + std::string(nearest) +
             ":`; keys are in small letters";
  }
  return make_problem("not-a-book", "a file without a key that says what it is",
                      "one of the keys \"recipe\", \"larder\", \"prices\", \"event\" or \"tables\"",
                      std::move(remedy));
}

PLATEWRIGHT_BODY Problem comma_in_braces(std::string_view key, std::string_view value,
                                         std::string_view rest) {
  const std::string whole = std::string(value) + ", " + std::string(rest);
  return make_problem(
      "comma-in-braces",
      in_quotes(rest) + " behind a comma between braces, which ends the value " + in_quotes(value),
      "a value with a comma in it between quotation marks",
      "write " + std::string(key) + ": " + in_quotes(whole, 200));
}

PLATEWRIGHT_BODY Problem names_look_alike(std::string_view name, std::string_view word,
                                          std::string_view scripts) {
  return make_problem(
      "names-look-alike",
      in_quotes(word) + " in " + in_quotes(name) + " has letters of " + std::string(scripts),
      "the letters of one script in a word",
      "type the name again: letters that look alike make it another name");
}

PLATEWRIGHT_BODY Problem nothing_to_do(std::string_view file, std::string_view wanted) {
  return make_problem("nothing-to-do", in_quotes(file, 200) + " holds no " + std::string(wanted),
                      "a file that holds one", "name another file");
}

PLATEWRIGHT_BODY Problem no_such_row(std::string_view table, std::string_view words) {
  return make_problem("no-such-row",
                      "no row of " + std::string(table) + " with " + in_quotes(words),
                      "words that a row holds", "try one word, or part of one");
}

PLATEWRIGHT_BODY Problem day_malformed(std::string_view text, std::string why) {
  return make_problem("day-malformed", in_quotes(text) + " (" + std::move(why) + ")",
                      "a day such as 2027-10-09", "write year, month and day, largest first");
}

PLATEWRIGHT_BODY Problem date_malformed(std::string_view text, std::string why) {
  return make_problem("date-malformed", in_quotes(text) + " (" + std::move(why) + ")",
                      "a date and time such as 2027-10-09 18:30",
                      "write year, month, day, hour and minute, largest first");
}

}  // namespace platewright::problems
