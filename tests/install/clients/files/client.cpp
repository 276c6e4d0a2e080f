// SPDX-License-Identifier: MIT
// A client that reads a book.

#include <platewright/files/read_book.hpp>
#include <string>
#include <vector>

int main(int count, char** arguments) {
  platewright::ProblemList problems;
  const std::vector<std::string> files(arguments + 1, arguments + count);
  const auto book = platewright::read_book(files, problems);
  return book && book->recipes.find_ingredient("rosemary") != nullptr ? 0 : 1;
}
