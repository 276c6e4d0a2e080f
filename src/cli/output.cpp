// SPDX-License-Identifier: MIT
#include "cli/output.hpp"

#include <unistd.h>

#include <filesystem>

#include "cli/open_book.hpp"
#include "cli/terminal.hpp"
#include "cli/write_file.hpp"
#include "platewright/card/writers.hpp"
#include "platewright/files/problem_text.hpp"
#include "platewright/files/read_book.hpp"
#include "platewright/files/read_class.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/files.hpp"

namespace platewright::cli {
namespace {

/// The files that a command names, whatever it calls them.
template <class Arguments>
std::vector<std::string> files_named(const Arguments& arguments) {
  std::vector<std::string> out;
  if constexpr (requires { arguments.file; }) {
    if (!arguments.file.empty()) out.push_back(arguments.file);
  }
  if constexpr (requires { arguments.files; }) {
    out.insert(out.end(), arguments.files.begin(), arguments.files.end());
  }
  if constexpr (requires { arguments.books; }) {
    out.insert(out.end(), arguments.books.begin(), arguments.books.end());
  }
  return out;
}

/// A folder of worksheets stands for what is in it.
std::vector<std::string> files_named(const WorksheetArguments& arguments) {
  ProblemList said_by_the_command;
  std::vector<std::string> out = worksheet_files(arguments.files, said_by_the_command);
  out.insert(out.end(), arguments.books.begin(), arguments.books.end());
  return out;
}

/// One table of the sheet. Throws WrongArgument for one that it does not have.
std::string written_section(const Sheet& sheet, const CommonOptions& common) {
  const auto csv = write_array(sheet, common.section);
  if (!csv) {
    throw WrongArgument(at(problems::name_unknown("section", common.section, array_names(sheet),
                                                  "name one of this sheet's: " +
                                                      problems::detail::one_of(array_names(sheet))),
                           Place{{}, 0, 0, "--section"}));
  }
  return common.format == "json" ? write_json(sheet, common.section) : *csv;
}

std::string written(const Sheet& sheet, const CommonOptions& common, unsigned usual_width) {
  if (!common.section.empty()) return written_section(sheet, common);
  if (common.format == "csv") return write_csv(sheet);
  if (common.format == "json") return write_json(sheet);
  if (common.format == "markdown") return write_markdown(sheet);
  if (common.format == "html") return write_html(sheet, {common.large});
  TextOptions options;
  options.width = common.width_given      ? common.width
                  : common.output.empty() ? columns_for(usual_width)
                                          : usual_width;
  options.ascii = common.ascii;
  options.large = common.large;
  options.lines_per_page = common.page_lines;
  return write_text(sheet, options);
}

}  // namespace

std::string text_of(const Result& result, const CommonOptions& common) {
  if (!result.sheet || !result.plain.empty()) return result.plain;
  return written(*result.sheet, common, result.width);
}

void put(const std::string& text, const CommonOptions& common) {
  if (common.output.empty()) {
    const bool coloured = common.format == "text" && may_be_coloured(STDOUT_FILENO);
    write_standard_output(coloured ? with_dangers_coloured(text) : text);
  } else {
    write_file(common.output, text);
  }
}

void refuse_output_over_input(const CommandArguments& command, const CommonOptions& common) {
  if (common.output.empty()) return;
  const auto named =
      std::visit([](const auto& arguments) { return files_named(arguments); }, command);
  for (const std::string& input : files_read_for(named)) {
    std::error_code not_there;
    if (!std::filesystem::equivalent(common.output, input, not_there)) continue;
    from_argument("--output",
                  [&] { throw Failure(problems::output_over_input(common.output, input)); });
  }
}

std::string problem_text(const ProblemList& problems, bool coloured) {
  return coloured ? platewright::problem_text(problems, with_message_coloured)
                  : platewright::problem_text(problems);
}

}  // namespace platewright::cli
