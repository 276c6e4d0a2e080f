// SPDX-License-Identifier: MIT
#include "card/html/html.hpp"

#include "platewright/card/display.hpp"

namespace platewright::detail {

namespace {

bool stays_with_number(const std::string& line, std::size_t i) {
  return line.compare(i, 1, "%") == 0 || line.compare(i, 2, "\u00B0") == 0;
}

}  // namespace

std::string as_html_text(std::string_view data) {
  const std::string line = on_one_line(data);
  std::string out;
  for (std::size_t i = 0; i < line.size(); ++i) {
    switch (line[i]) {
      case '&':
        out += "&amp;";
        break;
      case '<':
        out += "&lt;";
        break;
      case '>':
        out += "&gt;";
        break;
      case '"':
        out += "&quot;";
        break;
      case '\'':
        out += "&#39;";
        break;
      case ' ':
        out += stays_with_number(line, i + 1) ? "&#160;" : " ";
        break;
      default:
        // XML 1.0, production 2, leaves out U+FFFE and U+FFFF; their bytes end in BE and BF.
        if (line.compare(i, 2, "\xEF\xBF") == 0 && i + 2 < line.size() &&
            static_cast<unsigned char>(line[i + 2]) >= 0xBE) {
          out += "\uFFFD";
          i += 2;
        } else {
          out += line[i];
        }
    }
  }
  return out;
}

void Html::style(Literal rules) {
  out_ += "<style>";
  out_ += rules.text;
  out_ += "</style>\n";
}

void Html::begin(Literal name, const Attributes& attributes) {
  out_ += "<";
  out_ += name.text;
  for (const Attribute& attribute : attributes) {
    if (attribute.value.empty()) continue;
    out_ += " ";
    out_ += attribute.name.text;
    out_ += "=\"" + as_html_text(attribute.value) + "\"";
  }
}

}  // namespace platewright::detail
