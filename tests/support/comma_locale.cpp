// SPDX-License-Identifier: MIT
// Every test program runs under a locale with a decimal comma, since nothing of this library may
// depend on the locale. The standard library's own streams do.

#include <clocale>
#include <locale>

namespace {

struct DecimalComma : std::numpunct<char> {
  char do_decimal_point() const override { return ','; }
  char do_thousands_sep() const override { return '.'; }
  std::string do_grouping() const override { return "\3"; }
};

const bool is_set = [] {
  std::locale::global(std::locale(std::locale::classic(), new DecimalComma));
  // Where the system has such a locale, the C library's functions get it too.
  for (const char* name : {"de_DE.UTF-8", "fr_FR.UTF-8", "nl_NL.UTF-8"}) {
    if (std::setlocale(LC_NUMERIC, name) != nullptr) break;
  }
  return true;
}();

}  // namespace
