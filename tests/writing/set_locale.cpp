// SPDX-License-Identifier: MIT
// A library that gives the program it is loaded into the locale of its environment: a program never
// asks for it by itself, but a library that it uses may.

#include <clocale>
#include <locale>
#include <stdexcept>

namespace {

const bool is_set = [] {
  try {
    std::locale::global(std::locale(""));
  } catch (const std::runtime_error&) {
    return false;
  }
  return std::setlocale(LC_ALL, "") != nullptr;
}();

}  // namespace
