// SPDX-License-Identifier: MIT
#include "platewright/card/calendar.hpp"
#include "platewright/problem/text.hpp"
#include "platewright/version.hpp"

namespace platewright {
namespace {

/// RFC 5545, 3.3.11.
std::string calendar_text(std::string_view text) {
  std::string lines;
  std::size_t start = 0;
  for (std::size_t end = 0; end != std::string_view::npos; start = end + 1) {
    end = text.find('\n', start);
    if (start > 0) lines += '\n';
    lines += escaped(text.substr(start, end - start));
  }
  std::string out;
  for (const char c : lines) {
    if (c == '\\' || c == ';' || c == ',') out += '\\';
    if (c == '\n') {
      out += "\\n";
    } else {
      out += c;
    }
  }
  return out;
}

/// RFC 5545, 3.1: at most 75 octets before each line end; what goes on begins with a space.
void put_line(std::string& out, std::string_view line) {
  std::size_t room = 75;
  while (line.size() > room) {
    std::size_t length = room;
    while ((static_cast<unsigned char>(line[length]) & 0xC0U) == 0x80U) --length;
    out += line.substr(0, length);
    out += "\r\n ";
    line.remove_prefix(length);
    room = 74;
  }
  out += line;
  out += "\r\n";
}

std::string without_signs(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c != '-' && c != ':') out += c;
  }
  return out;
}

/// `20271009T233000Z` (RFC 5545, 3.3.5, form 2).
std::string in_utc(const Instant& instant) {
  return without_signs(instant_text(instant, {})) + "00Z";
}

/// `-PT15M` (RFC 5545, 3.3.6).
std::string duration_value(const std::chrono::minutes& minutes) {
  const auto count = minutes.count();
  return (count < 0 ? "-PT" : "PT") + std::to_string(count < 0 ? -count : count) + "M";
}

void put_entry(std::string& out, const CalendarEntry& entry, const Instant& stamp) {
  put_line(out, "BEGIN:VEVENT");
  put_line(out, "UID:" + entry.uid);
  put_line(out, "DTSTAMP:" + in_utc(stamp));
  if (entry.day) {
    put_line(out, "DTSTART;VALUE=DATE:" + without_signs(day_text(*entry.day)));
  } else {
    put_line(out, "DTSTART:" + in_utc(entry.begins));
    if (entry.lasts.count() > 0) put_line(out, "DURATION:" + duration_value(entry.lasts));
  }
  put_line(out, "SUMMARY:" + calendar_text(entry.summary));
  if (!entry.description.empty()) {
    put_line(out, "DESCRIPTION:" + calendar_text(entry.description));
  }
  put_line(out, "BEGIN:VALARM");
  put_line(out, "ACTION:DISPLAY");
  put_line(out, "DESCRIPTION:" + calendar_text(entry.summary));
  put_line(out, "TRIGGER:" + duration_value(entry.alarm));
  put_line(out, "END:VALARM");
  put_line(out, "END:VEVENT");
}

}  // namespace

std::string write_icalendar(const Calendar& calendar) {
  std::string out;
  put_line(out, "BEGIN:VCALENDAR");
  put_line(out, "VERSION:2.0");
  put_line(out, "PRODID:-//platewright//platewright " PLATEWRIGHT_VERSION "//EN");
  put_line(out, "NAME:" + calendar_text(calendar.name));
  for (const CalendarEntry& entry : calendar.entries) put_entry(out, entry, calendar.stamp);
  put_line(out, "END:VCALENDAR");
  return out;
}

}  // namespace platewright
