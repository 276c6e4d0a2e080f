// SPDX-License-Identifier: MIT
#include "yaml/plain_yaml.hpp"

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <string>
#include <unordered_set>
#include <utility>
#include <vector>

#include "yaml/normal_text.hpp"
#include "yaml/plain_line.hpp"
#include "yaml/text_line.hpp"

namespace platewright::yaml {
namespace {

/// What may begin a value without quotation marks and means nothing else to YAML anywhere.
bool begins_plainly(std::string_view text) {
  if (text.empty()) return false;
  const char c = text.front();
  const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
  return letter || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) >= 0x80U ||
         std::string_view("(./+$").find(c) != std::string_view::npos;
}

/// The values that YAML takes for nothing.
bool is_nothing(std::string_view text) {
  return text == "null" || text == "Null" || text == "NULL";
}

std::string_view without_blanks_behind(std::string_view text) {
  return text.substr(0, text.find_last_not_of(' ') + 1);
}

std::size_t behind_blanks(std::string_view text, std::size_t at) {
  return std::min(text.find_first_not_of(' ', at), text.size());
}

/// Where the quotation ends that the text begins with; nowhere where one would have to look closer,
/// at an escape or a mark that is doubled.
std::size_t end_of_quotation(std::string_view text) {
  const std::size_t end = text.find(text.front(), 1);
  if (end == std::string_view::npos || text.substr(end + 1).starts_with(text.front())) return {};
  return text.substr(0, end).find('\\') == std::string_view::npos ? end : 0;
}

/// Where the key ends that the text begins with: at a colon before a blank or the end.
std::size_t end_of_key(std::string_view text) {
  const auto is_colon = [&](std::size_t at) {
    return at < text.size() && text[at] == ':' && (at + 1 == text.size() || text[at + 1] == ' ');
  };
  if (!text.empty() && is_quote(text.front())) {
    const std::size_t end = end_of_quotation(text) + 1;
    return end > 1 && is_colon(end) ? end : std::string_view::npos;
  }
  if (!begins_plainly(text)) return std::string_view::npos;
  for (std::size_t i = 1; i < text.size(); ++i) {
    if (is_colon(i)) return i;
    if (text[i] == '#' && text[i - 1] == ' ') return std::string_view::npos;
  }
  return std::string_view::npos;
}

/// Whether nothing but a remark follows.
bool ends_at(std::string_view text, std::size_t at) {
  if (at == text.size()) return true;
  const std::size_t sign = behind_blanks(text, at);
  return sign > at && text[sign] == '#';
}

/// Reads on while all is plain: each function returns false where something is not, and nothing
/// that was made until then is used.
class PlainReader {
 public:
  PlainReader(std::string_view text, const Bounds& bounds) : lines_(text), bounds_(bounds) {}

  bool read(Node& root) {
    return lines_.there() && read_block(root, 0) && !lines_.there() && is_near();
  }

 private:
  /// A part of one line, and where on it the reading stands.
  struct Part {
    std::string_view text;
    std::size_t column;  ///< of its first byte, counted from 0
    std::size_t at = 0;

    bool ended() const { return at >= text.size(); }
    char sign() const { return text[at]; }
    void skip_blanks() { at = behind_blanks(text, at); }
  };

  /// Whether there is too little between two values for any bound to be near.
  bool is_near() const { return lines_.walked() <= bounds_.bytes_between / 4; }

  bool begin(Node& node, Node::Kind kind, std::size_t column) {
    node.kind = kind;
    node.line = lines_.number();
    node.column = static_cast<int>(column) + 1;
    return ++nodes_ <= bounds_.nodes && is_near();
  }

  bool read_block(Node& node, std::size_t depth) {
    if (depth + 1 >= bounds_.depth) return false;
    return lines_.is_item() ? read_items(node, depth) : read_entries(node, depth);
  }

  bool read_items(Node& list, std::size_t depth) {
    const std::size_t indent = lines_.indent();
    if (!begin(list, Node::Kind::list, indent)) return false;
    const std::size_t first = items_.size();
    do {
      if (items_.size() - first == bounds_.items) return false;
      lines_.into_item();
      Node item;
      const bool block = lines_.is_item() || end_of_key(lines_.content()) != std::string_view::npos;
      if (block ? !read_block(item, depth + 1) : !read_line_end(item, {}, depth + 1)) return false;
      if (lines_.there() && lines_.indent() > indent) return false;
      items_.push_back(std::move(item));
    } while (lines_.there() && lines_.indent() == indent && lines_.is_item());
    move_behind(first, items_, list.items);
    return true;
  }

  bool read_entries(Node& map, std::size_t depth) {
    const std::size_t indent = lines_.indent();
    if (!begin(map, Node::Kind::map, indent)) return false;
    const std::size_t first = entries_.size();
    do {
      const std::string_view content = lines_.content();
      const std::size_t colon = end_of_key(content);
      if (colon == std::string_view::npos) return false;
      Node key;
      Node value;
      if (!read_key(key, content.substr(0, colon), indent)) return false;
      const std::size_t begin = behind_blanks(content, colon + 1);
      const bool block = begin == content.size() || content[begin] == '#';
      if (block ? !read_below(value, indent, depth + 1)
                : !read_line_end(value, content.substr(0, begin), depth + 1)) {
        return false;
      }
      if (lines_.there() && lines_.indent() > indent) return false;
      entries_.emplace_back(std::move(key), std::move(value));
    } while (lines_.there() && lines_.indent() == indent && !lines_.is_item());
    move_behind(first, entries_, map.entries);
    return keys_differ(map);
  }

  /// What stands on the lines behind a key: further in, or a list as far in as the key.
  bool read_below(Node& value, std::size_t indent, std::size_t depth) {
    lines_.next();
    if (!lines_.there()) return false;
    const bool below = lines_.indent() > indent || (lines_.indent() == indent && lines_.is_item());
    return below && read_block(value, depth);
  }

  /// The rest of the line behind `before`, which is no block; goes to the next line.
  bool read_line_end(Node& value, std::string_view before, std::size_t depth) {
    Part part{lines_.content(), lines_.indent(), before.size()};
    if (part.ended()) return false;
    const char sign = part.sign();
    if (sign == '[' || sign == '{' || is_quote(sign)) {
      if (!read_flow(value, part, depth) || !ends_at(part.text, part.at)) return false;
    } else if (!read_plain_end(value, part)) {
      return false;
    }
    lines_.next();
    return true;
  }

  /// A value without quotation marks, up to a remark or the end of the line. A remark that begins
  /// with a digit is one that nobody meant.
  bool read_plain_end(Node& value, const Part& part) {
    std::string_view text = part.text.substr(part.at);
    if (end_of_key(text) != std::string_view::npos) return false;
    if (const std::size_t remark = text.find(" #"); remark != std::string_view::npos) {
      if (remark + 2 < text.size() && text[remark + 2] >= '0' && text[remark + 2] <= '9') {
        return false;
      }
      text = without_blanks_behind(text.substr(0, remark));
      if (end_of_key(text) != std::string_view::npos) return false;
    }
    return read_plain(value, text, part.column + part.at);
  }

  bool read_plain(Node& value, std::string_view text, std::size_t column) {
    return begins_plainly(text) && !is_nothing(text) && take_text(value, text, column);
  }

  bool read_key(Node& key, std::string_view text, std::size_t column) {
    if (is_quote(text.front())) {
      Part part{text, column};
      return read_quoted(key, part) && part.ended() && is_good_key(key.text);
    }
    // Three dots at the beginning of a line end a document.
    return text.front() != '.' && text.back() != ' ' && read_plain(key, text, column) &&
           is_good_key(key.text);
  }

  /// A key that is longer may not be one to YAML.
  static bool is_good_key(std::string_view text) {
    constexpr std::size_t longest = 500;
    return text.size() <= longest && says_something(text);
  }

  bool take_text(Node& node, std::string_view text, std::size_t column) {
    if (!begin(node, Node::Kind::scalar, column)) return false;
    if (text.size() > bounds_.scalar_bytes) return false;
    const bool ascii = std::all_of(text.begin(), text.end(),
                                   [](char c) { return static_cast<unsigned char>(c) < 0x80U; });
    if (!ascii && unfit_sign_in(text)) return false;
    node.text = ascii ? std::string(text) : normal_text(text);
    return true;
  }

  /// A value that ends by itself on this line; stops behind it.
  bool read_flow(Node& value, Part& part, std::size_t depth) {
    if (part.ended() || depth + 1 >= bounds_.depth) return false;
    switch (part.sign()) {
      case '[':
        return read_flow_list(value, part, depth);
      case '{':
        return read_flow_map(value, part, depth);
      case '"':
      case '\'':
        return read_quoted(value, part);
      default:
        return read_flow_text(value, part) && (part.ended() || part.sign() != ':');
    }
  }

  bool read_quoted(Node& value, Part& part) {
    const std::string_view rest = part.text.substr(part.at);
    const std::size_t end = end_of_quotation(rest);
    if (end == 0) return false;
    value.quoted = true;
    const std::size_t column = part.column + part.at;
    part.at += end + 1;
    return take_text(value, rest.substr(1, end - 1), column);
  }

  /// Up to what ends a text between brackets: a comma, a bracket, a colon before a blank.
  bool read_flow_text(Node& value, Part& part) {
    const std::size_t begin = part.at;
    for (; !part.ended(); ++part.at) {
      const char c = part.sign();
      if (c == '#' || c == '?' || c == '[' || c == '{') return false;
      if (c == ',' || c == ']' || c == '}') break;
      if (c == ':') {
        if (part.at + 1 == part.text.size()) return false;
        const char next = part.text[part.at + 1];
        if (next == ',' || next == ']' || next == '}') return false;
        if (next == ' ') break;
      }
    }
    const std::string_view text = part.text.substr(begin, part.at - begin);
    return read_plain(value, without_blanks_behind(text), part.column + begin);
  }

  bool read_flow_list(Node& list, Part& part, std::size_t depth) {
    if (!begin(list, Node::Kind::list, part.column + part.at)) return false;
    ++part.at;
    part.skip_blanks();
    if (!part.ended() && part.sign() == ']') return ++part.at, true;
    do {
      if (list.items.size() == bounds_.items) return false;
      if (!read_flow(list.items.emplace_back(), part, depth + 1)) return false;
    } while (goes_on(part));
    return closes(part, ']');
  }

  bool read_flow_map(Node& map, Part& part, std::size_t depth) {
    if (!begin(map, Node::Kind::map, part.column + part.at)) return false;
    ++part.at;
    part.skip_blanks();
    if (!part.ended() && part.sign() == '}') return ++part.at, true;
    do {
      auto& [key, value] = map.entries.emplace_back();
      if (part.ended() || !read_flow_key(key, part)) return false;
      part.skip_blanks();
      if (!read_flow(value, part, depth + 1)) return false;
    } while (goes_on(part));
    return closes(part, '}') && keys_differ(map);
  }

  /// A key, its colon and the blank behind it.
  bool read_flow_key(Node& key, Part& part) {
    const bool read = is_quote(part.sign()) ? read_quoted(key, part) : read_flow_text(key, part);
    if (!read || !is_good_key(key.text) || part.text[part.at - 1] == ' ') return false;
    if (!part.text.substr(part.at).starts_with(": ")) return false;
    ++part.at;
    return true;
  }

  /// Goes to the next value behind a comma.
  static bool goes_on(Part& part) {
    part.skip_blanks();
    if (part.ended() || part.sign() != ',') return false;
    ++part.at;
    part.skip_blanks();
    return true;
  }

  static bool closes(Part& part, char bracket) {
    if (part.ended() || part.sign() != bracket) return false;
    ++part.at;
    return true;
  }

  static bool keys_differ(const Node& map) {
    constexpr std::size_t few = 12;
    if (map.entries.size() <= few) {
      for (auto entry = map.entries.begin(); entry != map.entries.end(); ++entry) {
        const auto same = [&](const auto& other) { return other.first.text == entry->first.text; };
        if (std::any_of(map.entries.begin(), entry, same)) return false;
      }
      return true;
    }
    std::unordered_set<std::string_view> seen;
    return std::all_of(map.entries.begin(), map.entries.end(),
                       [&](const auto& entry) { return seen.insert(entry.first.text).second; });
  }

  /// What was met from `first` on, into a list that is just as long.
  template <class Met>
  static void move_behind(std::size_t first, std::vector<Met>& met, std::vector<Met>& out) {
    const auto begin = met.begin() + static_cast<std::ptrdiff_t>(first);
    out.assign(std::make_move_iterator(begin), std::make_move_iterator(met.end()));
    met.erase(begin, met.end());
  }

  PlainLines lines_;
  const Bounds& bounds_;
  // Of the blocks that are still being read: those inside stand behind those around them.
  std::vector<Node> items_;
  std::vector<std::pair<Node, Node>> entries_;
  std::size_t nodes_ = 0;
};

}  // namespace

std::optional<Node> read_plain_yaml(std::string_view text, const Bounds& bounds) {
  const auto holds = [&](char sign) { return text.find(sign) != std::string_view::npos; };
  if (holds('\t') || holds('\r')) return std::nullopt;
  Node root;
  if (!PlainReader(text, bounds).read(root)) return std::nullopt;
  return root;
}

}  // namespace platewright::yaml
