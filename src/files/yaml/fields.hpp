// SPDX-License-Identifier: MIT
#pragma once
// A map of the file as fields by name, every slip reported where it stands.

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/number/rational.hpp"
#include "platewright/problem/problem_list.hpp"
#include "yaml/mapping.hpp"
#include "yaml/node.hpp"

namespace platewright::yaml {

/// Which file is being read, and where its problems go.
struct Context {
  const std::string& file;
  ProblemList& problems;
};

/// What a node is, in words for a message.
std::string shape_of(const Node& node);

/// The fields of one map, by the keys that `mapping` lists; `finish` reports the others with the
/// nearest one of them. A value of the wrong shape is reported and taken as missing.
class Fields {
 public:
  /// `mapping` must live longer, as do the tables of keys.
  Fields(const Node& node, Context context, std::string path, const Mapping& mapping = any_keys());

  /// The value of `key`, or nothing. A key that is asked for is known.
  const Node* find(std::string_view key);
  /// The value of `key`; reports a missing one, with `example` as what to write.
  const Node* need(std::string_view key, std::string_view example);

  std::optional<std::string> text(std::string_view key);
  std::optional<std::string> needed_text(std::string_view key, std::string_view example);
  /// A text that names something: with a letter or a digit.
  std::optional<std::string> name(std::string_view key);
  /// `yes` or `no`.
  bool flag(std::string_view key);
  /// A plain number, a share (`12 %` or `0.12`), each read exactly.
  std::optional<Rational> number(std::string_view key);
  std::optional<Rational> share(std::string_view key);
  /// A list of texts; a single text is a list of one.
  std::vector<std::string> texts(std::string_view key);
  /// A list; nothing there is an empty list. `remedy` says what to write for another shape; without
  /// it, how the value found becomes a list of one.
  const std::vector<Node>& list(std::string_view key, std::string remedy = {});

  /// Runs `read` on the text of `key` if it is there; a Failure is kept at the value's place.
  template <class Result, class Read>
  std::optional<Result> read(std::string_view key, Read&& read) {
    std::optional<Result> out;
    if (const Node* node = scalar(key)) {
      context_.problems.attempt([&] { return place(*node, key); },
                                [&] { out = std::forward<Read>(read)(node->text); });
    }
    return out;
  }

  /// As `read`, but a Failure goes on, at the value's place: for what nothing else can be read
  /// without.
  template <class Result, class Read>
  std::optional<Result> take(std::string_view key, Read&& read) {
    const Node* node = scalar(key);
    if (node == nullptr) return std::nullopt;
    try {
      return std::forward<Read>(read)(node->text);
    } catch (const Failure& failure) {
      throw Failure(at(failure.problem(), place(*node, key)));
    }
  }

  /// Reports every key that is not known. Where the reading stopped before its end, not all names
  /// of the user's own were asked for, and only those keys are reported that look like a slip.
  void finish(bool read_to_its_end = true);

  /// The place of a value of this map.
  Place place(const Node& node, std::string_view step = {}) const;
  /// The place of the map itself.
  Place place() const { return place(node_); }
  const std::string& path() const { return path_; }
  const Context& context() const { return context_; }
  bool is_map() const { return node_.is_map(); }

 private:
  const Node* scalar(std::string_view key);
  void report(const Problem& problem, const Node& node, std::string_view step);
  bool is_known(std::string_view key) const;
  std::vector<std::string> known() const;

  const Node& node_;
  Context context_;
  std::string path_;
  const Mapping& mapping_;
  std::vector<std::string> asked_for_;  ///< beside those that the mapping lists
};

}  // namespace platewright::yaml
