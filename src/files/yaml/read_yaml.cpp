// SPDX-License-Identifier: MIT
#include "yaml/read_yaml.hpp"

#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/parser.h>

#include <algorithm>
#include <istream>
#include <unordered_map>
#include <utility>
#include <vector>

#include "platewright/problem/catalogue/files.hpp"
#include "yaml/line_slips.hpp"
#include "yaml/metered_text.hpp"
#include "yaml/normal_text.hpp"
#include "yaml/sound_text.hpp"

namespace platewright::yaml {
namespace {

/// Builds nodes from the library's events. It throws a Failure to leave the parser at once, since
/// nothing after a broken bound can be trusted.
class Builder : public YAML::EventHandler {
 public:
  Builder(std::string_view text, const std::string& file, ProblemList& problems,
          const Bounds& bounds, MeteredText& source)
      : text_(text), file_(file), problems_(problems), bounds_(bounds), source_(source) {}

  Node take_root() { return std::move(root_); }
  /// Whether a value lost its end to what YAML takes for a remark.
  bool lost_a_remark() const { return lost_a_remark_; }

  void OnDocumentStart(const YAML::Mark&) override {}
  void OnDocumentEnd() override {}
  void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override {
    refuse_anchor(mark, anchor);
    add(node_at(mark, Node::Kind::nothing));
  }
  void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override {
    fail(problems::yaml_alias(), mark);
  }
  void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                const std::string& value) override {
    refuse_anchor(mark, anchor);
    const bool quoted = tag == "!";
    if (!quoted && tag != "?" && !tag.empty()) fail(problems::yaml_tag(tag), mark);
    if (value.size() > bounds_.scalar_bytes) {
      fail(problems::file_too_large("a value of " + std::to_string(value.size()) + " bytes",
                                    bounds_.scalar_bytes),
           mark);
    }
    if (!quoted) report_remark(mark, value);
    const bool nothing = !quoted && (value.empty() || value == "~" || value == "null");
    Node node = node_at(mark, nothing ? Node::Kind::nothing : Node::Kind::scalar);
    if (auto unfit = unfit_sign_in(value)) {
      problems_.add(at(*unfit, place(mark)));
      node.text = value;
    } else {
      node.text = normal_text(value);
    }
    node.quoted = quoted;
    add(std::move(node));
  }
  void OnSequenceStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                       YAML::EmitterStyle::value) override {
    open(mark, tag, anchor, Node::Kind::list);
  }
  void OnSequenceEnd() override { close(); }
  void OnMapStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                  YAML::EmitterStyle::value) override {
    open(mark, tag, anchor, Node::Kind::map);
  }
  void OnMapEnd() override { close(); }

 private:
  /// A list or map that is still being filled; `key` waits for its value.
  struct Open {
    Node node;
    std::optional<Node> key;
    std::unordered_map<std::string, int> lines_of_keys;
  };

  Place place(const YAML::Mark& mark) const {
    return Place{file_, mark.line + 1, mark.column + 1, {}};
  }
  [[noreturn]] void fail(const Problem& problem, const YAML::Mark& mark) const {
    throw Failure(at(problem, place(mark)));
  }
  void refuse_anchor(const YAML::Mark& mark, YAML::anchor_t anchor) const {
    if (anchor != YAML::NullAnchor) fail(problems::yaml_alias(), mark);
  }

  /// The line of the text, without its end.
  std::string_view line_at(int wanted) {
    while (line_ < wanted) {
      const std::size_t end = text_.find('\n', line_start_);
      if (end == std::string_view::npos) return {};
      line_start_ = end + 1;
      ++line_;
    }
    if (line_ != wanted) return {};
    const std::string_view rest = text_.substr(line_start_);
    return rest.substr(0, rest.find('\n'));
  }

  /// Reports `2 #10 cans` without quotation marks, of which YAML keeps the 2.
  void report_remark(const YAML::Mark& mark, const std::string& value) {
    const std::string_view line = line_at(mark.line);
    const auto column = static_cast<std::size_t>(mark.column);
    // A value that goes on over several lines ends somewhere else.
    if (column > line.size() || line.substr(column, value.size()) != value) return;
    const std::size_t end = column + value.size();
    const std::size_t sign = line.find_first_not_of(" \t", end);
    if (sign == std::string_view::npos || sign == end || line[sign] != '#') return;
    const std::string_view remark = line.substr(sign);
    if (remark.size() < 2 || remark[1] < '0' || remark[1] > '9') return;
    lost_a_remark_ = true;
    problems_.add(at(problems::yaml_remark(value, remark.substr(0, remark.find('\r'))),
                     Place{file_, mark.line + 1, static_cast<int>(sign) + 1, {}}));
  }

  Node node_at(const YAML::Mark& mark, Node::Kind kind) {
    source_.value_met(mark.line + 1);
    if (++nodes_ > bounds_.nodes) {
      fail(problems::file_too_large(std::to_string(nodes_) + " values or more", bounds_.nodes),
           mark);
    }
    Node node;
    node.kind = kind;
    node.line = mark.line + 1;
    node.column = mark.column + 1;
    return node;
  }

  void open(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
            Node::Kind kind) {
    refuse_anchor(mark, anchor);
    if (tag != "?" && !tag.empty()) fail(problems::yaml_tag(tag), mark);
    if (open_.size() >= bounds_.depth) fail(problems::yaml_too_deep(bounds_.depth), mark);
    open_.push_back(Open{node_at(mark, kind), std::nullopt, {}});
  }

  void close() {
    Node node = std::move(open_.back().node);
    open_.pop_back();
    add(std::move(node));
  }

  void add(Node node) {
    if (open_.empty()) {
      root_ = std::move(node);
      return;
    }
    Open& parent = open_.back();
    if (parent.node.is_list()) {
      if (parent.node.items.size() == bounds_.items) {
        throw Failure(at(
            problems::file_too_large(
                "a list of more than " + std::to_string(bounds_.items) + " items", bounds_.items),
            place_of(node, file_)));
      }
      parent.node.items.push_back(std::move(node));
    } else if (!parent.key) {
      parent.key = std::move(node);
    } else {
      add_entry(parent, std::move(node));
    }
  }

  void add_entry(Open& parent, Node value) {
    Node key = std::move(*parent.key);
    parent.key.reset();
    if (!key.is_scalar()) {
      problems_.add(at(problems::key_not_text(), place_of(key, file_)));
      return;
    }
    if (!says_something(key.text)) {
      problems_.add(at(problems::name_says_nothing(key.text), place_of(key, file_)));
      return;
    }
    const auto [seen, is_new] = parent.lines_of_keys.emplace(key.text, key.line);
    if (!is_new) {
      problems_.add(at(problems::key_twice(key.text, seen->second), place_of(key, file_)));
      return;
    }
    parent.node.entries.emplace_back(std::move(key), std::move(value));
  }

  std::string_view text_;
  const std::string& file_;
  ProblemList& problems_;
  const Bounds& bounds_;
  MeteredText& source_;
  // The values come in the order of the text: the line that the last one began on.
  int line_ = 0;
  std::size_t line_start_ = 0;
  bool lost_a_remark_ = false;
  std::size_t nodes_ = 0;
  Node root_;
  std::vector<Open> open_;
};

/// Notes only whether the parser finds anything more.
class Listener : public YAML::EventHandler {
 public:
  std::optional<YAML::Mark> first;

  void OnDocumentStart(const YAML::Mark& mark) override { first = mark; }
  void OnDocumentEnd() override {}
  void OnNull(const YAML::Mark&, YAML::anchor_t) override {}
  void OnAlias(const YAML::Mark&, YAML::anchor_t) override { stop(); }
  void OnScalar(const YAML::Mark&, const std::string&, YAML::anchor_t,
                const std::string&) override {
    stop();
  }
  void OnSequenceStart(const YAML::Mark&, const std::string&, YAML::anchor_t,
                       YAML::EmitterStyle::value) override {
    stop();
  }
  void OnSequenceEnd() override {}
  void OnMapStart(const YAML::Mark&, const std::string&, YAML::anchor_t,
                  YAML::EmitterStyle::value) override {
    stop();
  }
  void OnMapEnd() override {}

 private:
  // The first event is answer enough; what follows may be of any size.
  [[noreturn]] void stop() const { throw Failure(problems::yaml_second_document()); }
};

bool check_text(std::string_view text, const std::string& file, ProblemList& problems,
                const Bounds& bounds) {
  if (text.size() > bounds.bytes) {
    problems.add(at(problems::file_too_large(std::to_string(text.size()) + " bytes", bounds.bytes),
                    Place{file, 1, 1, {}}));
    return false;
  }
  const auto lines = static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
  if (lines > bounds.lines) {
    problems.add(at(problems::file_too_large(std::to_string(lines) + " lines", bounds.lines),
                    Place{file, 1, 1, {}}));
    return false;
  }
  return check_sound(text, file, problems);
}

}  // namespace

std::optional<Node> read_yaml(std::string_view text, const std::string& file, ProblemList& problems,
                              const Bounds& bounds) {
  if (!check_text(text, file, problems, bounds)) return std::nullopt;
  MeteredText source(text, file, bounds.bytes_between);
  std::istream stream(&source);
  Builder builder(text, file, problems, bounds, source);
  try {
    YAML::Parser parser(stream);
    if (!parser.HandleNextDocument(builder)) {
      problems.add(at(problems::yaml_empty(), Place{file, 1, 1, {}}));
      return std::nullopt;
    }
    Listener listener;
    bool more = false;
    try {
      more = parser.HandleNextDocument(listener);
    } catch (const Failure&) {
      if (!listener.first) throw;
      more = true;
    }
    if (more) {
      const YAML::Mark mark = listener.first.value_or(YAML::Mark::null_mark());
      problems.add(
          at(problems::yaml_second_document(), Place{file, mark.line + 1, mark.column + 1, {}}));
    }
  } catch (const Failure& failure) {
    problems.add(failure.problem());
    return std::nullopt;
  } catch (const YAML::Exception& error) {
    // What the remark took away may have closed a list or a map.
    if (builder.lost_a_remark()) return std::nullopt;
    const int line = error.mark.line + 1;
    const int column = error.mark.column + 1;
    const auto slip = slip_before(text, file, line);
    problems.add(slip ? *slip
                      : at(problems::not_yaml("this is not YAML here: " + error.msg),
                           Place{file, line, column, {}}));
    return std::nullopt;
  }
  if (const auto slip = quote_over_lines(text, file)) {
    problems.add(*slip);
    return std::nullopt;
  }
  return builder.take_root();
}

}  // namespace platewright::yaml
