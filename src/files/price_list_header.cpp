// SPDX-License-Identifier: MIT
#include "files/price_list_header.hpp"

#include <algorithm>
#include <filesystem>

#include "files/keys/keys.hpp"
#include "platewright/event/local_time.hpp"
#include "platewright/number/read.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/price_lists.hpp"

namespace platewright::reading {
namespace {

/// Whether exactly three digits follow.
bool before_three_digits(std::string_view text, std::size_t position) {
  std::size_t digits = 0;
  while (position + 1 + digits < text.size() && is_digit(text[position + 1 + digits])) ++digits;
  return digits == 3;
}

std::string without_sign(std::string text, const std::string& sign) {
  const std::size_t found = sign.empty() ? std::string::npos : text.find(sign);
  if (found != std::string::npos) text.erase(found, sign.size());
  return std::string(trimmed_spaces(text));
}

char sign_among(const std::string& key, const std::string& text, std::vector<std::string> known) {
  const auto found = std::find(known.begin(), known.end(), text);
  if (found == known.end()) throw Failure(problems::word_unknown(key, text, known));
  return text == "tab" ? '\t' : text.front();
}

void read_writing(yaml::Fields& top, NumberWriting& out) {
  const std::vector<std::string> marks{".", ","};
  top.read<bool>("decimal", [&](const std::string& text) {
    out.decimal = sign_among("decimal sign", text, marks);
    return true;
  });
  top.read<bool>("thousands", [&](const std::string& text) {
    out.thousands = sign_among("sign between thousands", text, marks);
    if (out.thousands == out.decimal) {
      throw Failure(problems::price_list_number(
          text, std::string("another sign than the decimal ") + out.decimal));
    }
    return true;
  });
  out.sign = top.text("sign").value_or("");
}

}  // namespace

std::string plain_price(const std::string& text, const NumberWriting& writing) {
  const std::string price = without_sign(text, writing.sign);
  const auto refused = [&] {
    std::string wanted = "a price written as in 1";
    if (writing.thousands != '\0') wanted += writing.thousands;
    wanted += std::string("234") + writing.decimal + "50, as the file beside the list says";
    return Failure(problems::price_list_number(text, wanted));
  };
  if (price.empty() || !is_digit(price.front())) throw refused();
  std::string out;
  bool after_decimal = false;
  for (std::size_t i = 0; i < price.size(); ++i) {
    const char c = price[i];
    if (c != ',' && c != '.') {
      out += c;
    } else if (c == writing.decimal && !after_decimal) {
      after_decimal = true;
      out += '.';
    } else if (c != writing.thousands || after_decimal || !before_three_digits(price, i)) {
      throw refused();
    }
  }
  return out;
}

std::string plain_decimals(std::string text, const NumberWriting& writing) {
  for (std::size_t i = 1; i + 1 < text.size(); ++i) {
    if (text[i] == writing.decimal && is_digit(text[i - 1]) && is_digit(text[i + 1])) text[i] = '.';
  }
  return text;
}

PriceListHeader read_price_list_header(yaml::Fields& top, const std::string& file) {
  PriceListHeader out;
  const std::string name = top.needed_text("price list", "price list: week-36.csv").value_or("");
  out.csv_file = (std::filesystem::path(file).parent_path() / name).lexically_normal().string();
  out.supplier = top.needed_text("from", "from: the market").value_or("");
  out.currency = top.needed_text("currency", "currency: USD").value_or("");
  top.need("on", "on: 2027-09-06");
  top.read<LocalDay>("on", [&](const std::string& text) {
    out.day = text;
    return read_local_day(text);
  });
  top.read<bool>("separator", [&](const std::string& text) {
    out.separator = sign_among("separator", text, {",", ";", "tab"});
    return true;
  });
  read_writing(top, out.writing);
  top.need("columns", "columns: {item: Description, pack: Pack, price: Price}");
  for (const TextPair& pair : text_pairs(top, "columns")) {
    if (!column_keys().lists(pair.key)) {
      std::vector<std::string> known;
      for (const Key& key : column_keys().keys) known.emplace_back(key.name);
      top.context().problems.add(at(problems::key_unknown(pair.key, known), pair.key_place));
    }
    out.columns[pair.key] = pair.value;
  }
  for (const TextPair& pair : text_pairs(top, "items")) out.items[pair.key] = pair.value;
  return out;
}

}  // namespace platewright::reading
