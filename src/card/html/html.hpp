// SPDX-License-Identifier: MIT
#pragma once
// Markup that is well formed and lets no data in but as text.

#include <concepts>
#include <string>
#include <string_view>
#include <vector>

namespace platewright::detail {

/// Markup of our own. It is made of what stands in the source, since a compiler has to know it;
/// data can't become one.
struct Literal {
  // NOLINTNEXTLINE(google-explicit-constructor): so that a literal may stand where one is wanted
  consteval Literal(const char* written) : text(written) {}
  std::string_view text;
};

struct Attribute {
  Literal name;
  std::string value;
};
using Attributes = std::vector<Attribute>;

/// Data as it may stand in an element or between the quotation marks of an attribute: on one line,
/// what nobody sees as an escape, `&<>"'` as references, and no character that XML has not. `%` and
/// `°` stay with the number before them.
std::string as_html_text(std::string_view data);

/// Collects a page. Elements are closed where they were opened, so that the page can be read as XML
/// too.
class Html {
 public:
  void declaration(Literal markup) { out_ += markup.text; }

  void text(std::string_view data) { out_ += as_html_text(data); }

  /// An element with what `inside` puts into it.
  template <std::invocable Inside>
  void element(Literal name, const Attributes& attributes, Inside&& inside) {
    begin(name, attributes);
    out_ += ">";
    inside();
    out_ += "</";
    out_ += name.text;
    out_ += ">";
  }
  void element(Literal name, const Attributes& attributes, std::string_view data) {
    element(name, attributes, [&] { text(data); });
  }

  /// The same with a line end after it, for what stands below each other.
  template <std::invocable Inside>
  void line(Literal name, const Attributes& attributes, Inside&& inside) {
    element(name, attributes, inside);
    out_ += "\n";
  }

  void line(Literal name, const Attributes& attributes, std::string_view data) {
    line(name, attributes, [&] { text(data); });
  }

  /// The same with a line end after its beginning too, for what holds lines.
  template <std::invocable Inside>
  void lines(Literal name, const Attributes& attributes, Inside&& inside) {
    line(name, attributes, [&] {
      out_ += "\n";
      inside();
    });
  }

  /// An element that holds nothing.
  void empty(Literal name, const Attributes& attributes) {
    begin(name, attributes);
    out_ += "/>";
  }

  void line_end() { out_ += "\n"; }

  /// Rules of style, which neither XML nor HTML may take for markup: without `<` and `&`.
  void style(Literal rules);

  std::string finished() && { return std::move(out_); }

 private:
  void begin(Literal name, const Attributes& attributes);

  std::string out_;
};

}  // namespace platewright::detail
