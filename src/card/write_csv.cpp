// SPDX-License-Identifier: MIT
#include <algorithm>
#include <string>
#include <variant>
#include <vector>

#include "card/csv_fields.hpp"
#include "platewright/card/writers.hpp"

namespace platewright {

namespace {

using detail::exact_field;
using detail::Fields;
using detail::guarded;
using detail::Record;

class CsvWriter {
 public:
  std::string write(const Sheet& sheet) {
    records_.push_back({"section", "key", "value"});
    records_.push_back({"sheet", "kind", guarded(std::string(name_of(sheet.kind)))});
    records_.push_back({"sheet", "title", guarded(sheet.title)});
    if (!sheet.date.empty()) records_.push_back({"sheet", "date", guarded(sheet.date)});
    for (const std::string& subtitle : sheet.subtitles) {
      records_.push_back({"sheet", "subtitle", guarded(subtitle)});
    }
    for (const Block& block : sheet.blocks) {
      std::visit([&](const auto& one) { add(one); }, block);
    }
    part_.clear();
    if (!sheet.footnotes.empty()) add_numbered("sources", sheet.footnotes);
    return detail::written(records_);
  }

 private:
  std::string section(const std::string& key) const { return part_ + key; }

  void add(const Table& of_a_page) {
    const Table table = for_a_program(of_a_page);
    std::vector<Fields> fields(table.columns.size());
    bool grouped = false;
    const auto look_at = [&](const Row& row) {
      for (std::size_t i = 0; i < std::min(row.size(), fields.size()); ++i) fields[i].need(row[i]);
    };
    for (const RowGroup& group : table.groups) {
      grouped = grouped || !group.title.empty();
      std::for_each(group.rows.begin(), group.rows.end(), look_at);
    }
    std::for_each(table.totals.begin(), table.totals.end(), look_at);

    Record heading{"section"};
    if (grouped) heading.push_back("group");
    for (std::size_t i = 0; i < fields.size(); ++i) fields[i].name(heading, table.columns[i].key);
    records_.push_back(std::move(heading));
    const auto add_row = [&](const std::string& name, const std::string& group, const Row& row) {
      Record record{name};
      if (grouped) record.push_back(guarded(group));
      for (std::size_t i = 0; i < fields.size(); ++i) {
        fields[i].fill(record, i < row.size() ? row[i] : Cell{});
      }
      records_.push_back(std::move(record));
    };
    for (const RowGroup& group : table.groups) {
      for (const Row& row : group.rows) add_row(section(table.key), group.title, row);
    }
    // Under a name of their own, so that whoever adds up a column does not count them in.
    for (const Row& row : table.totals) add_row(section(table.key) + " total", "", row);
    if (!table.notes.empty()) add_numbered(table.key + " notes", table.notes);
  }

  void add(const Facts& facts) {
    Fields fields;
    for (const Fact& fact : facts.facts) fields.need(fact.value);
    Record heading{"section", "key", "label"};
    fields.name(heading, "value");
    records_.push_back(std::move(heading));
    for (const Fact& fact : facts.facts) {
      Record record{section(facts.key), fact.key, guarded(fact.label)};
      fields.fill(record, fact.value);
      records_.push_back(std::move(record));
    }
  }

  void add(const Steps& steps) {
    Fields takes;
    Fields amount;
    Fields beside;
    bool has_beside = false;
    for (const Step& step : steps.steps) {
      takes.need(step.takes);
      for (const StepLine& line : step.lines) {
        amount.need(line.amount);
        beside.need(line.beside);
        has_beside = has_beside || !line.beside.text.empty();
      }
    }
    Record heading{"section", "step", "text"};
    takes.name(heading, "takes");
    amount.name(heading, "amount");
    if (has_beside) beside.name(heading, steps.beside);
    records_.push_back(std::move(heading));
    int number = 0;
    for (const Step& step : steps.steps) {
      Record record{section(steps.key), std::to_string(++number), guarded(step.text)};
      takes.fill(record, step.takes);
      amount.fill(record, Cell{});
      records_.push_back(std::move(record));
      for (const StepLine& line : step.lines) {
        Record use{section(steps.key) + " uses", std::to_string(number), guarded(line.text)};
        takes.fill(use, Cell{});
        amount.fill(use, line.amount);
        if (has_beside) beside.fill(use, line.beside);
        records_.push_back(std::move(use));
      }
    }
  }

  void add(const Bars& bars) {
    Fields fields;
    for (const Bar& bar : bars.bars) fields.need(bar.value);
    Record heading{"section", "key", "label", "share exact"};
    fields.name(heading, "value");
    records_.push_back(std::move(heading));
    for (const Bar& bar : bars.bars) {
      Record record{section(bars.key), bar.key, guarded(bar.label), exact_field(bar.share)};
      fields.fill(record, bar.value);
      records_.push_back(std::move(record));
    }
  }

  void add(const Paragraphs& paragraphs) { add_numbered(paragraphs.key, paragraphs.texts); }
  void add(const Box& box) { add_numbered(box.key, box.lines); }
  void add(const Signatures& signatures) { add_numbered(signatures.key, signatures.labels); }
  void add(const Part& part) {
    part_ = part.key + "/";
    records_.push_back({"section", "title"});
    records_.push_back({part.key, guarded(part.title)});
  }

  void add_numbered(const std::string& key, const std::vector<std::string>& texts) {
    records_.push_back({"section", "number", "text"});
    int number = 0;
    for (const std::string& text : texts) {
      records_.push_back({section(key), std::to_string(++number), guarded(text)});
    }
  }

  std::string part_;
  std::vector<Record> records_;
};

}  // namespace

std::string write_csv(const Sheet& sheet) {
  return CsvWriter().write(sheet);
}

}  // namespace platewright
