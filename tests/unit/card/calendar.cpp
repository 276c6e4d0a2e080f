// SPDX-License-Identifier: MIT
// RFC 5545: content lines (3.1), text (3.3.11), date-times (3.3.5), durations (3.3.6).

#include "platewright/card/calendar.hpp"

#include "platewright/event/event.hpp"
#include "platewright/problem/utf8.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Instant at_utc(const char* text) {
  return ZonedTime(read_local_time(text)).instant();
}

Calendar with_summary(const std::string& summary) {
  CalendarEntry entry;
  entry.uid = "one";
  entry.summary = summary;
  entry.begins = at_utc("2027-10-09 23:30");
  entry.alarm = std::chrono::minutes(-15);
  return {"supper", at_utc("2027-10-09 00:00"), {entry}};
}

/// The lines with those that are folded joined again, each checked against RFC 5545, 3.1.
std::vector<std::string> content_lines(const std::string& text) {
  std::vector<std::string> out;
  std::size_t begin = 0;
  for (std::size_t end = text.find("\r\n"); end != std::string::npos;
       begin = end + 2, end = text.find("\r\n", begin)) {
    const std::string line = text.substr(begin, end - begin);
    CHECK(line.size() <= 75);
    for (std::size_t i = 0; i < line.size();) {
      const std::size_t length = character_at(line, i).length;
      REQUIRE(length > 0);
      i += length;
    }
    if (line[0] == ' ') {
      out.back() += line.substr(1);
    } else {
      out.push_back(line);
    }
  }
  CHECK(begin == text.size());
  return out;
}

std::string line_of(const Calendar& calendar, const std::string& name) {
  for (const std::string& line : content_lines(write_icalendar(calendar))) {
    if (line.rfind(name, 0) == 0) return line;
  }
  return {};
}

ZoneRules a_zone() {
  return {"Somewhere/West", {at_utc("2027-01-01 00:00"), std::chrono::hours(-5), "W"}};
}

Timeline two_alike() {
  Timeline out;
  out.zone = a_zone();
  out.served = at_utc("2027-10-09 23:30");
  TimelineEntry step;
  step.kind = TimelineKind::method_step;
  step.recipe = "soup";
  step.text = "Stir.";
  step.latest = at_utc("2027-10-09 22:00");
  out.entries = {step, step};
  return out;
}

Event supper_called(const std::string& name) {
  Event out;
  out.name = name;
  return out;
}

}  // namespace

TEST_CASE("an entry of a calendar") {
  Calendar calendar = with_summary("SERVE");
  CHECK(line_of(calendar, "DTSTART") == "DTSTART:20271009T233000Z");
  CHECK(line_of(calendar, "DTSTAMP") == "DTSTAMP:20271009T000000Z");
  CHECK(line_of(calendar, "TRIGGER") == "TRIGGER:-PT15M");
  CHECK(line_of(calendar, "DURATION").empty());
  calendar.entries[0].lasts = std::chrono::minutes(90);
  CHECK(line_of(calendar, "DURATION") == "DURATION:PT90M");
  calendar.entries[0].day = read_local_day("2027-10-09");
  CHECK(line_of(calendar, "DTSTART") == "DTSTART;VALUE=DATE:20271009");
}

TEST_CASE("text of a calendar is escaped and folded between characters") {
  CHECK(line_of(with_summary("salt, oil; a \\ and\na line"), "SUMMARY") ==
        "SUMMARY:salt\\, oil\\; a \\\\ and\\na line");
  for (std::size_t length = 0; length < 200; ++length) {
    for (const char* sign : {"a", "\xC3\xA9", "\xE8\x82\x89", "\xF0\x9F\x8D\x9E"}) {
      std::string text(length % 7, 'x');
      for (std::size_t i = 0; i < length; ++i) text += sign;
      CHECK(line_of(with_summary(text), "SUMMARY") == "SUMMARY:" + text);
    }
  }
  CHECK(line_of(with_summary("\xFF\r"), "SUMMARY") == "SUMMARY:\\\\xff\\\\x0d");
}

TEST_CASE("an entry keeps its uid from run to run, and no two share one") {
  const Calendar first = timeline_calendar(supper_called("supper"), two_alike());
  const Calendar again = timeline_calendar(supper_called("supper"), two_alike());
  const Calendar other = timeline_calendar(supper_called("lunch"), two_alike());
  REQUIRE(first.entries.size() == 2);
  CHECK(first.entries[0].uid == again.entries[0].uid);
  CHECK(first.entries[1].uid == again.entries[1].uid);
  CHECK(first.entries[0].uid != first.entries[1].uid);
  CHECK(first.entries[0].uid != other.entries[0].uid);
  // By Python's uuid.uuid5: of the event inside NAMESPACE_URL, of the step inside the event.
  CHECK(first.entries[0].uid == "a5bff0d1-b827-59d4-abb5-ebf47fc252ad");
}

TEST_CASE("a calendar needs a zone") {
  Timeline nowhere = two_alike();
  nowhere.zone = {};
  CHECK(problem_of([&] { timeline_calendar(supper_called("supper"), nowhere); }).id ==
        "time-zone-missing");
}

TEST_CASE("who has the calendar alone is warned too") {
  Timeline timeline = two_alike();
  timeline.entries[1].kind = TimelineKind::pull;
  TimelineEntry serve;
  serve.latest = timeline.served;
  timeline.entries.push_back(serve);
  DishNotice notice;
  notice.dish = "soup";
  notice.not_known.push_back({{"lamb leg"}, Temperature::fahrenheit(130)});
  const Calendar told = timeline_calendar(supper_called("supper"), timeline, {notice},
                                          {Box{"short", "THE DAY DOES NOT FIT", {"Hands."}}});
  REQUIRE(told.entries.size() == 3);
  CHECK(told.entries[0].description.find("BELOW") == std::string::npos);
  CHECK(told.entries[1].description.find("BELOW THE MINIMUM") != std::string::npos);
  CHECK(told.entries[2].description.find("THE DAY DOES NOT FIT\nHands.") != std::string::npos);
}
