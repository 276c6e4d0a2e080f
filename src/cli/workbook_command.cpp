// SPDX-License-Identifier: MIT
// workbook.

#include "cli/commands.hpp"
#include "cli/open_book.hpp"
#include "cli/planned.hpp"
#include "platewright/workbook/event_workbook.hpp"
#include "platewright/workbook/write_workbook.hpp"

namespace platewright::cli {

Result run(const WorkbookArguments& arguments, const CommonOptions&, ProblemList& problems) {
  const OpenedBook opened = open_book({arguments.file}, problems);
  const Book& book = *opened;
  const Event& event = the_event(book, arguments.file);
  const EventPlan plan = plan_asked(arguments.prices, book, event, problems);
  return {std::nullopt, write_workbook(event_workbook(plan)), 80, "xlsx"};
}

}  // namespace platewright::cli
