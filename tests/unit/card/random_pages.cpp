// SPDX-License-Identifier: MIT
// What holds for every page of HTML, tried on sheets whose every text is hostile.

#include <random>
#include <set>
#include <string>
#include <vector>

#include "platewright/card/writers.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

/// Texts that would end an element, an attribute, a comment or a style, were they not text.
class HostileTexts {
 public:
  explicit HostileTexts(unsigned seed) : engine_(seed) {}

  std::string next() {
    static const std::vector<std::string> pieces{"<",
                                                 ">",
                                                 "&",
                                                 "\"",
                                                 "'",
                                                 "</style>",
                                                 "<script>x()</script>",
                                                 "<!--",
                                                 "-->",
                                                 "]]>",
                                                 "<?x",
                                                 "&lt;",
                                                 "&#60;",
                                                 "\" onload=\"x()",
                                                 "</td>",
                                                 "</main>",
                                                 "\n",
                                                 "\x1B",
                                                 "\u202E",
                                                 "\xFF",
                                                 "\uFFFE",
                                                 "\u2028",
                                                 "lamb",
                                                 "62 %",
                                                 " ",
                                                 "javascript:x()"};
    std::string out;
    for (unsigned i = 1 + below(6); i > 0; --i) {
      out += pieces[below(static_cast<unsigned>(pieces.size()))];
    }
    return out;
  }

  unsigned below(unsigned limit) { return static_cast<unsigned>(engine_() % limit); }

 private:
  std::mt19937 engine_;
};

/// A sheet with a block of every kind.
Sheet hostile_sheet(HostileTexts& texts) {
  Sheet sheet(texts.below(2) == 0 ? SheetKind::cards : SheetKind::labels);
  sheet.title = texts.next();
  sheet.date = texts.next();
  sheet.subtitles = {texts.next()};
  const auto cell = [&] { return cited(sheet, words(texts.next()), texts.next()); };
  Table table{
      "t", texts.next(), {naming_column("a", texts.next()), words_column("b", texts.next())},
      {},  {},           {texts.next()}};
  table.open_group(texts.next());
  for (unsigned i = texts.below(12); i > 0; --i) table.add({cell(), cell()});
  table.totals = {{cell()}};
  sheet.add(Box{"box", texts.next(), {texts.next()}});
  sheet.add(table);
  sheet.add(Part{"part", texts.next()});
  sheet.add(Facts{"facts", texts.next(), {{"a", texts.next(), cell()}}});
  sheet.add(Paragraphs{"notes", texts.next(), {texts.next()}});
  sheet.add(
      Steps{"method", texts.next(), {{texts.next(), cell(), {{cell(), texts.next(), cell()}}}}});
  sheet.add(Bars{"bars", texts.next(), {{"a", texts.next(), fraction(1, 3), cell(), cell()}}});
  sheet.add(Box{"box", texts.next(), {texts.next()}});
  const auto axis = [&] { return Axis{texts.next(), 0, 60, {{30, texts.next()}}}; };
  sheet.add(Picture(table,
                    Lanes{axis(),
                          {{texts.next(), {{texts.next(), {{0, 20, texts.next(), texts.next()}}}}}},
                          {texts.next()}}));
  sheet.add(Picture(table, Plot{axis(), axis(), {{texts.next(), {{0, 1}}}, {texts.next(), {}}}}));
  sheet.add(Signatures{"signatures", {texts.next()}});
  return sheet;
}

/// The names of the elements of a page. Fails where one is not closed in its turn, where a sign
/// that begins markup stands anywhere else, or an attribute is not one of name="value".
std::set<std::string> elements_of(const std::string& page) {
  std::set<std::string> out;
  std::vector<std::string> open;
  for (std::size_t i = page.find('<', 1); i != std::string::npos; i = page.find('<', i + 1)) {
    const std::string tag = page.substr(i + 1, page.find('>', i) - i - 1);
    REQUIRE(tag.find('<') == std::string::npos);
    if (tag[0] == '/') {
      REQUIRE_FALSE(open.empty());
      REQUIRE(tag.substr(1) == open.back());
      open.pop_back();
      continue;
    }
    const std::string name = tag.substr(0, tag.find_first_of(" /"));
    out.insert(name);
    if (tag.back() != '/') open.push_back(name);
    std::string rest = tag.substr(name.size());
    while (!rest.empty() && rest != "/") {
      const std::size_t begin = rest.find("=\"");
      REQUIRE(rest[0] == ' ');
      REQUIRE(begin != std::string::npos);
      REQUIRE(rest.substr(1, begin - 1).find_first_not_of("abcdefghijklmnopqrstuvwxyzABR12-") ==
              std::string::npos);
      rest = rest.substr(rest.find('"', begin + 2) + 1);
    }
  }
  REQUIRE(open.empty());
  return out;
}

}  // namespace

TEST_CASE("no text of any sheet becomes markup of its page") {
  const std::set<std::string> ours{
      "html", "head",    "meta",   "title", "style",   "body",     "main",   "header", "h1",
      "h2",   "h3",      "p",      "table", "caption", "thead",    "tbody",  "tr",     "th",
      "td",   "section", "div",    "ol",    "li",      "span",     "sup",    "a",      "svg",
      "rect", "article", "figure", "line",  "text",    "polyline", "circle", "ul"};
  HostileTexts texts(4);
  for (int i = 0; i < 300; ++i) {
    const std::string page = write_html(hostile_sheet(texts));
    const std::string after_the_type = page.substr(page.find("<html"));
    for (const std::string& name : elements_of("\n" + after_the_type)) {
      INFO(name);
      CHECK(ours.count(name) == 1);
    }
    for (const char* unseen : {"\x1B", "\u202E", "\xFF", "\uFFFE"}) {
      CHECK(page.find(unseen) == std::string::npos);
    }
  }
}
