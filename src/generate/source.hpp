// SPDX-License-Identifier: MIT
#pragma once
// Writing C++ text.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/number/rational.hpp"

namespace platewright::generate {

/// A C++ string literal.
std::string literal(std::string_view text);

/// Texts as one literal, joined by `|`. Throws Failure where a text holds a `|` itself.
std::string joined(const std::vector<std::string>& texts);

/// A `Ratio` as an initializer. Throws Failure where a part does not fit into 64 bits.
std::string ratio(const Rational& value);

/// Throws Failure where a row has another number of figures than the list that they belong to.
void check_count(std::string_view what, std::size_t found, std::string_view each,
                 std::size_t wanted);

/// The words of a name as a C++ name: `US fluid ounce` is `us_fluid_ounce`.
std::string identifier(std::string_view name);

/// Writes the file if its text is another than it was, so that nothing is compiled again for
/// nothing.
void write_if_changed(const std::string& file, const std::string& text);

}  // namespace platewright::generate
