// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with the shape of a book: keys, names and what they refer to.

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/nearest.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

namespace detail {
/// `"a", "b" or "c"`: at most twelve names.
std::string one_of(const std::vector<std::string>& names);
}  // namespace detail

Problem key_unknown(std::string_view key, const std::vector<std::string>& known);

Problem key_missing(std::string_view key, std::string_view example);

inline Problem wrong_shape(std::string_view found, std::string_view expected,
                           std::string remedy = "compare with the example in examples/KEYS.md") {
  return make_problem("wrong-shape", std::string(found), std::string(expected), std::move(remedy));
}

Problem word_unknown(std::string_view what, std::string_view word,
                     const std::vector<std::string>& known);

Problem name_unknown(std::string_view what, std::string_view name,
                     const std::vector<std::string>& known, std::string_view otherwise);

Problem name_twice(std::string_view what, std::string_view name, std::string_view first);

/// What the file holds is not shown: it may be any file at all, and nobody's business. `nearest` is
/// a key of it that looks like one of those, and `meant` that one.
Problem not_a_book(std::string_view nearest = {}, std::string_view meant = {});

/// `value` lost its end, `rest`, to a comma between braces.
Problem comma_in_braces(std::string_view key, std::string_view value, std::string_view rest);

Problem names_look_alike(std::string_view name, std::string_view word, std::string_view scripts);

Problem nothing_to_do(std::string_view file, std::string_view wanted);

Problem no_such_row(std::string_view table, std::string_view words);

Problem day_malformed(std::string_view text, std::string why);

Problem date_malformed(std::string_view text, std::string why);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/books.hpp"
#endif
