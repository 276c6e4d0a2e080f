// SPDX-License-Identifier: MIT
#pragma once
// Rows of one kind that are found by their key or by another of their names.

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/problem/catalogue/yields.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/problem/folded_name.hpp"
#include "platewright/problem/only_counted.hpp"

namespace platewright::detail {

/// One layer of rows: the built-in ones, or the user's. `Row` has `key_of` and `other_names_of`.
template <class Row>
class NamedRows {
 public:
  /// Throws Failure for two rows with one key.
  explicit NamedRows(std::vector<Row> rows) : rows_(std::move(rows)) {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      if (!by_key_.emplace(folded_name(key_of(rows_[i])), i).second) {
        throw Failure(problems::yield_name_twice(key_of(rows_[i])));
      }
    }
    for (std::size_t i = 0; i < rows_.size(); ++i) add_names(i, other_names_of(rows_[i]));
  }

  const std::vector<Row>& rows() const { return rows_; }

  bool has_key(const std::string& key) const { return by_key_.contains(folded_name(key)); }

  /// The row of that key, else the only row with that other name, else null. Throws Failure where
  /// several rows share the name.
  const Row* find(std::string_view name) const {
    const std::string folded = folded_name(name);
    if (const auto key = by_key_.find(folded); key != by_key_.end()) return &rows_[key->second];
    const auto found = by_name_.find(folded);
    if (found == by_name_.end()) return nullptr;
    if (found->second.size() > 1) {
      std::string keys;
      for (const std::size_t i : found->second) {
        keys += (keys.empty() ? "" : ", ") + in_quotes(key_of(rows_[i]));
      }
      throw Failure(problems::yield_name_ambiguous(name, keys));
    }
    return &rows_[found->second.front()];
  }

  /// Lets a row of this layer be found by the other names of a row that it replaces.
  void inherit(const std::string& key, const std::vector<std::string>& names) {
    add_names(by_key_.at(folded_name(key)), names);
  }

  /// None where no one would look at them.
  void append_names(std::vector<std::string>& out) const {
    if (OnlyCounted::now()) return;
    for (const Row& row : rows_) {
      out.push_back(key_of(row));
      for (std::string& name : other_names_of(row)) out.push_back(std::move(name));
    }
  }

 private:
  void add_names(std::size_t row, const std::vector<std::string>& names) {
    for (const std::string& name : names) {
      std::vector<std::size_t>& rows = by_name_[folded_name(name)];
      if (rows.empty() || rows.back() != row) rows.push_back(row);
    }
  }

  std::vector<Row> rows_;
  std::map<std::string, std::size_t> by_key_;
  std::map<std::string, std::vector<std::size_t>> by_name_;
};

/// The user's rows over the built-in ones: a user's row replaces the built-in row of the same key
/// and is found by that row's other names too.
template <class Row>
class LayeredRows {
 public:
  LayeredRows(std::vector<Row> built_in, std::vector<Row> own)
      : own_(std::move(own)), built_in_(std::move(built_in)) {
    for (const Row& row : built_in_.rows()) {
      if (own_.has_key(key_of(row))) own_.inherit(key_of(row), other_names_of(row));
    }
  }

  const Row* find(std::string_view name) const {
    const Row* row = find_own(name);
    return row != nullptr ? row : built_in_.find(name);
  }

  const Row* find_own(std::string_view name) const { return own_.find(name); }

  bool has_key(std::string_view name) const {
    const std::string key(name);
    return own_.has_key(key) || built_in_.has_key(key);
  }

  /// The user's rows, then the built-in rows that they do not replace.
  template <class Use>
  void for_each(const Use& use) const {
    for (const Row& row : own_.rows()) use(row);
    for (const Row& row : built_in_.rows()) {
      if (!own_.has_key(key_of(row))) use(row);
    }
  }

  /// The same rows, copied.
  std::vector<Row> all() const {
    std::vector<Row> rows;
    for_each([&](const Row& row) { rows.push_back(row); });
    return rows;
  }

  void append_names(std::vector<std::string>& out) const {
    own_.append_names(out);
    built_in_.append_names(out);
  }

 private:
  NamedRows<Row> own_;
  NamedRows<Row> built_in_;
};

}  // namespace platewright::detail
