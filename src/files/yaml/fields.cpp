// SPDX-License-Identifier: MIT
#include "yaml/fields.hpp"

#include <algorithm>
#include <utility>

#include "platewright/number/read.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/files.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/nearest.hpp"
#include "yaml/normal_text.hpp"

namespace platewright::yaml {
namespace {

/// `{price: 12,50}` is to YAML a price of 12 and a key 50 without a value.
bool are_parts_of_a_number(std::string_view left, std::string_view right) {
  return !left.empty() && is_digit(left.back()) && !right.empty() && is_digit(right.front());
}

/// The value that stands where a list is wanted, as its first item.
std::string list_of_one(std::string_view key, const Node& node) {
  const Node* first = &node;
  std::string item = "- ";
  if (node.is_map() && !node.entries.empty()) {
    item += escaped(node.entries.front().first.text) + ": ";
    first = &node.entries.front().second;
  }
  if (!first->is_scalar() || first->text.size() > 60) return "begin each item with a dash";
  return "begin each item with a dash, as in\n" + std::string(key) + ":\n  " + item +
         escaped(first->text);
}

/// `{from: meat, the butcher}` is to YAML a key `the butcher` without a value, on the same line.
bool are_parts_of_a_text(const Node& value, const Node& key) {
  return value.is_scalar() && !value.quoted && value.line == key.line;
}

}  // namespace

std::string shape_of(const Node& node) {
  switch (node.kind) {
    case Node::Kind::nothing:
      return "nothing";
    case Node::Kind::scalar:
      return in_quotes(node.text);
    case Node::Kind::list:
      return "a list";
    case Node::Kind::map:
      return "a map of keys";
  }
  return {};
}

Fields::Fields(const Node& node, Context context, std::string path, const Mapping& mapping)
    : node_(node), context_(context), path_(std::move(path)), mapping_(mapping) {
  if (!node_.is_map()) report(problems::wrong_shape(shape_of(node_), "a map of keys"), node_, {});
}

Place Fields::place(const Node& node, std::string_view step) const {
  const Place here = place_of(node, context_.file, path_);
  return step.empty() ? here : inside(here, step);
}

void Fields::report(const Problem& problem, const Node& node, std::string_view step) {
  context_.problems.add(at(problem, place(node, step)));
}

bool Fields::is_known(std::string_view key) const {
  return mapping_.lists(key) ||
         std::find(asked_for_.begin(), asked_for_.end(), key) != asked_for_.end();
}

std::vector<std::string> Fields::known() const {
  std::vector<std::string> out = asked_for_;
  for (const Key& key : mapping_.keys) out.emplace_back(key.name);
  return out;
}

const Node* Fields::find(std::string_view key) {
  if (!is_known(key)) asked_for_.emplace_back(key);
  for (const auto& [name, value] : node_.entries) {
    if (name.text == key) return &value;
  }
  return nullptr;
}

const Node* Fields::need(std::string_view key, std::string_view example) {
  const Node* node = find(key);
  if (node == nullptr && node_.is_map()) report(problems::key_missing(key, example), node_, {});
  return node;
}

const Node* Fields::scalar(std::string_view key) {
  const Node* node = find(key);
  if (node == nullptr || node->is_scalar()) return node;
  report(problems::wrong_shape(shape_of(*node), "one value"), *node, key);
  return nullptr;
}

std::optional<std::string> Fields::text(std::string_view key) {
  const Node* node = scalar(key);
  return node == nullptr ? std::nullopt : std::optional(node->text);
}

std::optional<std::string> Fields::needed_text(std::string_view key, std::string_view example) {
  return need(key, example) == nullptr ? std::nullopt : text(key);
}

std::optional<std::string> Fields::name(std::string_view key) {
  const Node* node = scalar(key);
  if (node == nullptr) return std::nullopt;
  if (says_something(node->text)) return node->text;
  report(problems::name_says_nothing(node->text), *node, key);
  return std::nullopt;
}

bool Fields::flag(std::string_view key) {
  const Node* node = scalar(key);
  if (node == nullptr) return false;
  if (node->text == "yes" || node->text == "true") return true;
  if (node->text != "no" && node->text != "false") {
    report(problems::word_unknown("answer", node->text, {"yes", "no"}), *node, key);
  }
  return false;
}

std::optional<Rational> Fields::number(std::string_view key) {
  return read<Rational>(key, [](const std::string& text) { return read_number(text); });
}

std::optional<Rational> Fields::share(std::string_view key) {
  return read<Rational>(key, [](const std::string& text) { return read_share(text); });
}

std::vector<std::string> Fields::texts(std::string_view key) {
  std::vector<std::string> out;
  const Node* node = find(key);
  if (node == nullptr || node->is_nothing()) return out;
  if (node->is_scalar()) {
    out.push_back(node->text);
  } else if (node->is_list()) {
    for (const Node& item : node->items) {
      if (item.is_scalar()) {
        out.push_back(item.text);
      } else {
        report(problems::wrong_shape(shape_of(item), "one value"), item, key);
      }
    }
  } else {
    report(problems::wrong_shape(shape_of(*node), "a list"), *node, key);
  }
  return out;
}

const std::vector<Node>& Fields::list(std::string_view key, std::string remedy) {
  static const std::vector<Node> none;
  const Node* node = find(key);
  if (node == nullptr || node->is_nothing()) return none;
  if (node->is_list()) return node->items;
  if (remedy.empty()) remedy = list_of_one(key, *node);
  report(problems::wrong_shape(shape_of(*node), "a list", std::move(remedy)), *node, key);
  return none;
}

void Fields::finish(bool read_to_its_end) {
  const std::pair<Node, Node>* before = nullptr;
  for (const auto& entry : node_.entries) {
    const OnlyCounted counted(context_.problems.is_full());
    const auto* const last = std::exchange(before, &entry);
    const auto& [name, value] = entry;
    if (is_known(name.text)) continue;
    if (value.is_nothing() && last != nullptr) {
      const auto& [last_key, last_value] = *last;
      if (are_parts_of_a_number(last_value.text, name.text)) {
        report(problems::number_has_comma(last_value.text + "," + name.text), last_value, {});
        continue;
      }
      if (are_parts_of_a_text(last_value, name)) {
        report(problems::comma_in_braces(last_key.text, last_value.text, name.text), last_value,
               last_key.text);
        continue;
      }
    }
    if (!read_to_its_end && nearest_names(name.text, known()).empty()) continue;
    report(problems::key_unknown(name.text, known()), name, name.text);
  }
}

}  // namespace platewright::yaml
