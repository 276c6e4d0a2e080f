#include "csv/read_csv.hpp"

#include <cstddef>
#include <utility>

#include "platewright/problem/catalogue/price_lists.hpp"

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
      Record record = read_record();
      const bool empty = record.fields.size() == 1 && record.fields.front().text.empty();
      if (!empty) out.push_back(std::move(record));
    }
    return out;
  }

 private:
  Place here() const {
    return Place{file_, line_, static_cast<int>(position_ - line_start_) + 1, {}};
  }
  bool at_line_end() const {
    if (position_ >= text_.size()) return true;
    return text_[position_] == '\n' || text_.compare(position_, 2, "\r\n") == 0;
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
      if (position_ < text_.size() && text_[position_] == separator_) {
        ++position_;
        continue;
      }
      next_line();
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
      if (text_[position_] == '"') problems_.add(at(problems::csv_stray_quote(), here()));
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
      problems_.add(at(problems::csv_quote_not_closed(), place));
      return;
    }
    ++position_;
    if (at_line_end() || text_[position_] == separator_) return;
    problems_.add(at(problems::csv_stray_quote(), here()));
    while (!at_line_end() && text_[position_] != separator_) ++position_;
  }

  const std::string& text_;
  const std::string& file_;
  char separator_;
  ProblemList& problems_;
  std::size_t position_ = 0;
  std::size_t line_start_ = 0;
  int line_ = 1;
};

}  // namespace

std::optional<Table> read_csv(const std::string& text, const std::string& file, char separator,
                              ProblemList& problems) {
  ProblemList found;
  std::vector<Record> records = Reader(text, file, separator, found).read();
  if (records.empty()) found.add(at(problems::csv_empty(), Place{file, 1, 1, {}}));
  const bool well_quoted = !found.has_errors();
  for (const Record& record : records) {
    const std::size_t wanted = records.front().fields.size();
    if (record.fields.size() == wanted) continue;
    if (record.fields.size() == 1 && well_quoted) {
      const Field& heading = record.fields.front();
      found.add(as_warning(at(problems::csv_heading_row(heading.text),
                              Place{file, heading.line, heading.column, {}})));
      continue;
    }
    found.add(at(problems::csv_field_count(record.fields.size(), wanted),
                 Place{file, record.fields.front().line, 1, {}}));
  }
  for (const Problem& problem : found.all()) problems.add(problem);
  if (found.has_errors()) return std::nullopt;
  Table out{std::move(records.front()), {}};
  for (std::size_t i = 1; i < records.size(); ++i) {
    if (records[i].fields.size() == out.header.fields.size()) {
      out.records.push_back(std::move(records[i]));
    }
  }
  return out;
}

}  // namespace platewright::csv
