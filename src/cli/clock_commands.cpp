// SPDX-License-Identifier: MIT
// timeline, day.

#include "cli/commands.hpp"
#include "cli/open_book.hpp"
#include "cli/planned.hpp"
#include "platewright/card/calendar.hpp"
#include "platewright/card/day_sheet.hpp"
#include "platewright/card/kitchen_notices.hpp"
#include "platewright/card/timeline_sheet.hpp"
#include "platewright/day/plan_day.hpp"
#include "platewright/problem/catalogue/days.hpp"

namespace platewright::cli {

Result run(const TimelineArguments& arguments, const CommonOptions& common, ProblemList& problems) {
  const OpenedBook opened = open_book({arguments.file}, problems);
  const Book& book = *opened;
  const EventPlan plan =
      plan_asked(arguments.prices, book, the_event(book, arguments.file), problems);
  const Timeline timeline = planned_timeline(plan, book);
  Result result{timeline_sheet(plan.event(), timeline), {}, 80};
  const std::vector<DishNotice> notices = notices_of(plan, book);
  std::vector<Box> warnings;
  if (const auto day = day_of_plan(plan, book)) warnings = day_boxes(*day);
  for (Box& box : kitchen_notices(notices)) warnings.push_back(std::move(box));
  for (const Box& box : warnings) result.sheet->add(box);
  say_changes(arguments.prices, *result.sheet);
  if (common.format == "icalendar") {
    Calendar calendar = timeline_calendar(plan.event(), timeline, notices, warnings);
    if (changes_anything(arguments.prices)) calendar.name += " (what if)";
    result.plain = write_icalendar(calendar);
    result.plain_format = common.format;
  }
  return result;
}

Result run(const DayArguments& arguments, const CommonOptions& common, ProblemList& problems) {
  const OpenedBook opened = open_book({arguments.file}, problems);
  const Book& book = *opened;
  const EventPlan plan =
      plan_asked(arguments.prices, book, the_event(book, arguments.file), problems);
  const auto day = day_of_plan(plan, book);
  if (!day) throw Failure(at(problems::kitchen_not_said(), plan.event().place));
  const MeasuringSystem system = system_for(common, book.measures);
  Result result{day_sheet(plan, *day, KitchenView(kitchen_wanted(common, book, system))), {}, 80};
  for (Box& box : kitchen_notices(notices_of(plan, book))) result.sheet->add(std::move(box));
  say_changes(arguments.prices, *result.sheet);
  return result;
}

}  // namespace platewright::cli
