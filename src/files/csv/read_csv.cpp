// SPDX-License-Identifier: MIT
#include "csv/read_csv.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>

#include "platewright/problem/catalogue/files.hpp"
#include "platewright/problem/catalogue/price_lists.hpp"
#include "yaml/normal_text.hpp"
#include "yaml/sound_text.hpp"

namespace platewright::csv {
namespace {

class Reader {
 public:
  Reader(const std::string& text, const std::string& file, char separator, ProblemList& problems)
      : text_(text), file_(file), separator_(separator), problems_(problems) {}

  std::vector<Record> read() {
    if (text_.compare(0, 3, "\xEF\xBB\xBF") == 0) position_ = line_start_ = 3;
    std::vector<Record> out;
    while (position_ < text_.size()) {
      if (out.size() == most_records || too_many_fields_) {
        const bool rows = out.size() == most_records;
        report(problems::file_too_large(
                   rows ? "more than " + std::to_string(most_records) + " rows"
                        : "a row of more than " + std::to_string(most_fields) + " fields",
                   rows ? most_records : most_fields),
               here());
        return {};
      }
      Record record = read_record();
      const bool empty = record.fields.size() == 1 && record.fields.front().text.empty();
      if (!empty) out.push_back(std::move(record));
    }
    return out;
  }

 private:
  /// More than a day of seconds, and more than any supplier's list.
  static constexpr std::size_t most_records = 200'000;
  static constexpr std::size_t most_fields = 1000;

  Place here() const {
    return Place{file_, line_, static_cast<int>(position_ - line_start_) + 1, {}};
  }
  bool at_line_end() const {
    if (position_ >= text_.size()) return true;
    return text_[position_] == '\n' || text_.compare(position_, 2, "\r\n") == 0;
  }

  void report(const Problem& problem, const Place& place) {
    misquoted_ = true;
    problems_.add(at(problem, place));
  }

  void next_line() {
    if (position_ < text_.size() && text_[position_] == '\r') ++position_;
    if (position_ < text_.size()) ++position_;
    ++line_;
    line_start_ = position_;
  }

  Record read_record() {
    Record out;
    for (;;) {
      out.fields.push_back(read_field());
      too_many_fields_ = out.fields.size() > most_fields;
      if (too_many_fields_) return out;
      if (position_ < text_.size() && text_[position_] == separator_) {
        ++position_;
        continue;
      }
      next_line();
      out.misquoted = std::exchange(misquoted_, false);
      return out;
    }
  }

  Field read_field() {
    const Place place = here();
    Field out{{}, place.line, place.column};
    if (position_ < text_.size() && text_[position_] == '"') {
      read_quoted(out, place);
    } else {
      read_plain(out);
    }
    return out;
  }

  void read_plain(Field& out) {
    while (!at_line_end() && text_[position_] != separator_) {
      if (text_[position_] == '"') report(problems::csv_stray_quote(), here());
      out.text += text_[position_++];
    }
  }

  void read_quoted(Field& out, const Place& place) {
    ++position_;
    for (; position_ < text_.size(); ++position_) {
      const char c = text_[position_];
      if (c == '"' && text_.compare(position_, 2, "\"\"") != 0) break;
      if (c == '"') ++position_;
      out.text += c;
      if (c != '\n') continue;
      ++line_;
      line_start_ = position_ + 1;
    }
    if (position_ >= text_.size()) {
      report(problems::csv_quote_not_closed(), place);
      return;
    }
    ++position_;
    if (at_line_end() || text_[position_] == separator_) return;
    report(problems::csv_stray_quote(), here());
    while (!at_line_end() && text_[position_] != separator_) ++position_;
  }

  const std::string& text_;
  const std::string& file_;
  char separator_;
  ProblemList& problems_;
  std::size_t position_ = 0;
  std::size_t line_start_ = 0;
  int line_ = 1;
  bool too_many_fields_ = false;
  bool misquoted_ = false;  ///< the record that is being read
};

}  // namespace

namespace {

/// Whether a field runs on to the end of the text: which rows it swallowed can't be told.
bool is_never_closed(const ProblemList& problems) {
  return std::any_of(problems.all().begin(), problems.all().end(), [](const Problem& problem) {
    return problem.id == problems::csv_quote_not_closed().id;
  });
}

/// Brings the fields into one spelling; a record with a sign that nobody sees can't be trusted.
void check_signs(Record& record, const std::string& file, ProblemList& found) {
  for (Field& field : record.fields) {
    if (auto unfit = yaml::unfit_sign_in(field.text)) {
      found.add(at(*unfit, Place{file, field.line, field.column, {}}));
      record.misquoted = true;
      continue;
    }
    field.text = yaml::normal_text(field.text);
  }
}

/// Says what is wrong with records of another length than the header's.
void check_lengths(const std::vector<Record>& records, const std::string& file, bool well_quoted,
                   ProblemList& found) {
  for (const Record& record : records) {
    const std::size_t wanted = records.front().fields.size();
    if (record.fields.size() == wanted) continue;
    const Field& first = record.fields.front();
    if (record.fields.size() == 1 && well_quoted) {
      found.add(as_warning(
          at(problems::csv_heading_row(first.text), Place{file, first.line, first.column, {}})));
    } else {
      found.add(at(problems::csv_field_count(record.fields.size(), wanted),
                   Place{file, first.line, 1, {}}));
    }
  }
}

}  // namespace

std::optional<Table> read_csv(const std::string& text, const std::string& file, char separator,
                              ProblemList& problems, BadRows bad_rows) {
  if (!yaml::check_sound(text, file, problems)) return std::nullopt;
  ProblemList found;
  std::vector<Record> records = Reader(text, file, separator, found).read();
  const bool well_quoted = !found.has_errors();
  for (Record& record : records) check_signs(record, file, found);
  if (records.empty() && well_quoted) found.add(at(problems::csv_empty(), Place{file, 1, 1, {}}));
  const bool broken = records.empty() || records.front().misquoted || is_never_closed(found);
  check_lengths(records, file, well_quoted, found);
  const bool left_out = bad_rows == BadRows::left_out && !broken;
  for (const Problem& problem : found.all()) {
    problems.add(left_out ? as_warning(problem) : problem);
  }
  if (found.has_errors() && !left_out) return std::nullopt;
  Table out{std::move(records.front()), {}};
  for (std::size_t i = 1; i < records.size(); ++i) {
    if (records[i].fields.size() == out.header.fields.size() && !records[i].misquoted) {
      out.records.push_back(std::move(records[i]));
    }
  }
  return out;
}

}  // namespace platewright::csv
