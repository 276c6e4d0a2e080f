#include "cli/command_options.hpp"

namespace platewright::cli {
namespace {

void add_common(CLI::App& app, CommonOptions& common, const Formats& formats) {
  std::string names;
  for (const std::string& name : formats) {
    names += (names.empty() ? "" : name == formats.back() ? " or " : ", ") + name;
  }
  app.add_option("--format", common.format, names + "; by the ending of --output if not said")
      ->check(CLI::IsMember(formats));
  app.add_option("--output", common.output,
                 "write to this file, whole or not at all; its ending names the format");
  app.add_option("--width", common.width, "columns of a text page, from 40")
      ->check(CLI::Range(40U, 400U));
  app.add_flag("--ascii", common.ascii, "no signs beyond ASCII but those of the book's own names");
  app.add_flag("--large", common.large, "large print: fewer columns, capitals, more space");
  app.add_option("--page-lines", common.page_lines, "lines of a page with its foot, page n of m")
      ->check(CLI::Range(20U, 1000U));
}

}  // namespace

const Formats& sheet_formats() {
  static const Formats formats{"text", "csv", "json", "markdown", "html"};
  return formats;
}

CLI::App* add_command(CLI::App& program, const char* name, const char* what, CommonOptions& common,
                      const Formats& formats) {
  CLI::App* app = program.add_subcommand(name, what);
  add_common(*app, common, formats);
  app->footer(footer_text);
  return app;
}

void add_kitchen_options(CLI::App& app, CommonOptions& common) {
  app.add_option("--measures", common.measures, "us, metric, both or book (what the book says)")
      ->check(CLI::IsMember({"us", "metric", "both", "book"}));
  app.add_option("--tolerance", common.tolerance,
                 "how far kitchen measures may be off; 2 % if nothing is said");
  app.add_option("--rounding", common.rounding,
                 "fewest measures, exact, army card, usda schools, or \"nearest 5 g and 1/2 tsp\"");
}

void add_books(CLI::App& app, std::vector<std::string>& books) {
  app.add_option("--book", books, "a larder, recipe or tables file whose rows count too");
}

}  // namespace platewright::cli
