// A client of the compiled libraries: reads a book and writes a sheet.

#include <platewright/card/problem_sheet.hpp>
#include <platewright/card/writers.hpp>
#include <platewright/files/read_book.hpp>
#include <string>

int main(int count, char** arguments) {
  platewright::ProblemList problems;
  const std::vector<std::string> files(arguments + 1, arguments + count);
  const auto book = platewright::read_book(files, problems);
  const std::string sheet = platewright::write_json(platewright::problem_sheet(problems, files));
  return book && sheet.find("\"sheet\"") != std::string::npos ? 0 : 1;
}
