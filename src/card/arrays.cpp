// SPDX-License-Identifier: MIT
#include "card/arrays.hpp"

#include <algorithm>
#include <optional>
#include <variant>

#include "platewright/number/write.hpp"

namespace platewright::detail {
namespace {

Cell whole(std::size_t number) {
  const std::string text = std::to_string(number);
  return figure(Rational(static_cast<std::int64_t>(number)), text);
}

/// A label without what sets it in on a page.
Cell label_of(const std::string& label) {
  return words(label.substr(std::min(label.find_first_not_of(' '), label.size())));
}

class ArrayMaker {
 public:
  std::vector<Array> make(const Sheet& sheet) {
    for (const Block& block : sheet.blocks) {
      std::visit([&](const auto& one) { add(one); }, block);
    }
    return std::move(arrays_);
  }

 private:
  /// The array of that name; made where there is none yet, since one that is empty is there, too.
  Array& array(const std::string& name, const std::string& title,
               const std::vector<std::string>& keys) {
    auto found = std::find_if(arrays_.begin(), arrays_.end(),
                              [&](const Array& other) { return other.name == name; });
    if (found == arrays_.end()) {
      arrays_.push_back({name, title, {}, {}});
      found = std::prev(arrays_.end());
    }
    if (part_) place_of(*found, "part");
    for (const std::string& key : keys) place_of(*found, key);
    return *found;
  }

  static std::size_t place_of(Array& array, const std::string& key) {
    const auto known = std::find(array.keys.begin(), array.keys.end(), key);
    const auto place = static_cast<std::size_t>(known - array.keys.begin());
    if (known == array.keys.end()) array.keys.push_back(key);
    return place;
  }

  static void put(Array& array, Row& row, const std::string& key, const Cell& cell) {
    const std::size_t place = place_of(array, key);
    if (row.size() <= place) row.resize(place + 1);
    row[place] = cell;
  }

  void add_row(Array& array, const std::vector<std::string>& keys, const Row& cells) {
    Row row;
    if (part_) put(array, row, "part", words(part_->title));
    for (std::size_t i = 0; i < keys.size() && i < cells.size(); ++i) {
      put(array, row, keys[i], cells[i]);
    }
    array.rows.push_back(std::move(row));
  }

  void add_texts(const std::string& name, const std::string& title,
                 const std::vector<std::string>& texts) {
    const std::vector<std::string> keys{"number", "text"};
    Array& out = array(name, title, keys);
    for (std::size_t i = 0; i < texts.size(); ++i) {
      add_row(out, keys, {whole(i + 1), words(texts[i])});
    }
  }

  void add(const Table& table) {
    const std::string name = table.array.empty() ? table.key : table.array;
    const bool grouped = std::any_of(table.groups.begin(), table.groups.end(),
                                     [](const RowGroup& group) { return !group.title.empty(); });
    std::vector<std::string> keys;
    std::vector<std::size_t> columns;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
      if (table.columns[i].use == ColumnUse::page) continue;
      keys.push_back(table.columns[i].key);
      columns.push_back(i);
    }
    const auto cells_of = [&](const Row& row) {
      Row out;
      for (const std::size_t i : columns) out.push_back(i < row.size() ? row[i] : Cell{});
      return out;
    };
    std::vector<std::string> all = keys;
    if (grouped) all.insert(all.begin(), "group");
    // An array of several tables has no title of one of them.
    const std::string title = table.array.empty() ? table.title : std::string();
    Array& rows = array(name, title, all);
    for (const RowGroup& group : table.groups) {
      for (const Row& row : group.rows) {
        Row cells = cells_of(row);
        if (grouped) cells.insert(cells.begin(), words(group.title));
        add_row(rows, all, cells);
      }
    }
    if (!table.totals.empty()) {
      Array& totals = array(name + "_totals", title, keys);
      for (const Row& row : table.totals) add_row(totals, keys, cells_of(row));
    }
    if (!table.notes.empty()) add_texts(name + "_notes", title, table.notes);
  }

  void add(const Facts& facts) {
    const std::vector<std::string> keys{"key", "label", "value"};
    Array& out = array(facts.key, facts.title, keys);
    for (const Fact& fact : facts.facts) {
      add_row(out, keys, {words(fact.key), label_of(fact.label), fact.value});
    }
  }

  void add(const Steps& steps) {
    const std::vector<std::string> keys{"step", "text", "takes"};
    Array& out = array(steps.key, steps.title, keys);
    for (std::size_t i = 0; i < steps.steps.size(); ++i) {
      const Step& step = steps.steps[i];
      add_row(out, keys, {whole(i + 1), words(step.text), step.takes});
    }
    add_uses(steps);
  }

  void add_uses(const Steps& steps) {
    std::vector<std::string> keys{"step", "text", "amount"};
    if (!steps.beside.empty()) keys.push_back(steps.beside);
    Array& out = array(steps.key + "_uses", steps.title, keys);
    for (std::size_t i = 0; i < steps.steps.size(); ++i) {
      for (const StepLine& line : steps.steps[i].lines) {
        add_row(out, keys, {whole(i + 1), words(line.text), line.amount, line.beside});
      }
    }
  }

  void add(const Bars& bars) {
    const std::vector<std::string> keys{"key", "label", "share", "value"};
    Array& out = array(bars.key, bars.title, keys);
    for (const Bar& bar : bars.bars) {
      add_row(out, keys,
              {words(bar.key), label_of(bar.label),
               figure(bar.share, as_short_decimal(bar.share, 4)), bar.value});
    }
  }

  void add(const Paragraphs& paragraphs) {
    add_texts(paragraphs.key, paragraphs.title, paragraphs.texts);
  }
  void add(const Box& box) { add_texts(box.key, box.title, box.lines); }
  void add(const Signatures& signatures) { add_texts(signatures.key, {}, signatures.labels); }
  void add(const Part& part) { part_ = part; }

  std::optional<Part> part_;
  std::vector<Array> arrays_;
};

}  // namespace

std::vector<Array> arrays_of(const Sheet& sheet) {
  return ArrayMaker().make(sheet);
}

}  // namespace platewright::detail
