// SPDX-License-Identifier: MIT
#include "generate/source.hpp"

#include <cctype>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <limits>
#include <sstream>

#include "platewright/number/write.hpp"
#include "platewright/problem/catalogue/files.hpp"
#include "platewright/problem/catalogue/own_tables.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright::generate {

std::string literal(std::string_view text) {
  std::string out = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\') out += '\\';
    if (c == '\n') {
      out += "\\n";
    } else {
      out += c;
    }
  }
  return out + "\"";
}

std::string joined(const std::vector<std::string>& texts) {
  std::string out;
  for (const std::string& text : texts) {
    if (text.find('|') != std::string::npos) throw Failure(problems::row_has_bar(text));
    if (!out.empty()) out += '|';
    out += text;
  }
  return literal(out);
}

std::string ratio(const Rational& value) {
  const Integer most = std::numeric_limits<std::int64_t>::max();
  if (numerator_of(value) > most || denominator_of(value) > most) {
    throw Failure(problems::row_too_fine(as_fraction(value)));
  }
  return "{" + numerator_of(value).str() + ", " + denominator_of(value).str() + "}";
}

void check_count(std::string_view what, std::size_t found, std::string_view each,
                 std::size_t wanted) {
  if (found != wanted) throw Failure(problems::row_count_differs(what, found, each, wanted));
}

std::string identifier(std::string_view name) {
  std::string out;
  for (const char c : name) {
    if (std::isalnum(static_cast<unsigned char>(c)) != 0) {
      out += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    } else if (!out.empty() && out.back() != '_') {
      out += '_';
    }
  }
  while (!out.empty() && out.back() == '_') out.pop_back();
  return out;
}

void write_if_changed(const std::string& file, const std::string& text) {
  std::filesystem::create_directories(std::filesystem::path(file).parent_path());
  {
    std::ifstream old(file, std::ios::binary);
    std::ostringstream old_text;
    old_text << old.rdbuf();
    if (old && old_text.str() == text) return;
  }
  std::ofstream out(file, std::ios::binary);
  out << text;
  out.close();
  if (!out) throw Failure(problems::file_not_writable(file, "the disk does not take it"));
}

}  // namespace platewright::generate
