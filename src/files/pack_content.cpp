// SPDX-License-Identifier: MIT
#include "files/pack_content.hpp"

#include <array>
#include <cctype>

#include "platewright/number/read.hpp"
#include "platewright/problem/catalogue/larders.hpp"

namespace platewright::reading {
namespace {

std::size_t digits_at(std::string_view text, std::size_t position) {
  std::size_t end = position;
  while (end < text.size() && is_digit(text[end])) ++end;
  return end - position;
}

/// `6` and `5 lb` of the trade's `6/5 lb`.
struct ManyOf {
  std::string count;
  std::string each;
};

/// The two sides of a sign that stands right behind a whole number: `6 x 5 lb`, `6x5 lb`, `6/5 lb`.
std::optional<ManyOf> split_behind_count(std::string_view text, std::string_view sign) {
  const std::size_t digits = digits_at(text, 0);
  if (digits == 0) return std::nullopt;
  const std::string_view rest = trimmed_spaces(text.substr(digits));
  if (rest.substr(0, sign.size()) != sign) return std::nullopt;
  const std::string_view each = trimmed_spaces(rest.substr(sign.size()));
  // `6 xl` is no pack of six.
  const bool word = !each.empty() && std::isalpha(static_cast<unsigned char>(each.front())) != 0;
  if (each.empty() || (word && rest[sign.size()] != ' ')) return std::nullopt;
  return ManyOf{std::string(text.substr(0, digits)), std::string(each)};
}

/// A fraction that things are sold in: a half, thirds, quarters, an eighth, a sixteenth.
bool is_everyday(long top, long bottom) {
  if (top == 1) return bottom == 2 || bottom == 3 || bottom == 4 || bottom == 8 || bottom == 16;
  return (top == 2 && bottom == 3) || (top == 3 && bottom == 4);
}

/// Whether somebody may have meant the fraction all the same: a small part of a gallon or a keg, or
/// some eighths of a pound, which a case may also hold that many packs of.
bool may_be_a_fraction(long top, long bottom) {
  if (top >= bottom) return false;
  return top == 1 ? bottom <= 10 : bottom == 4 || bottom == 8 || bottom == 16;
}

/// The trade's `6/5 lb`; nothing where the text is a plain fraction of a measure.
std::optional<ManyOf> trade_pack(const std::string& text) {
  auto parts = split_behind_count(text, "/");
  if (!parts) return std::nullopt;
  if (parts->each.front() == '#') return parts;
  const std::size_t digits = digits_at(parts->each, 0);
  if (digits == 0 || digits > 6 || parts->count.size() > 6) return std::nullopt;
  const bool decimal = digits < parts->each.size() && parts->each[digits] == '.';
  if (decimal) return parts;
  // `6/5` alone is no pack of anything.
  if (digits == parts->each.size()) return std::nullopt;
  const long top = std::stol(parts->count);
  const long bottom = std::stol(parts->each.substr(0, digits));
  if (bottom == 0 || is_everyday(top, bottom)) return std::nullopt;
  if (may_be_a_fraction(top, bottom)) {
    throw Failure(problems::pack_ambiguous(text, parts->count + " x " + parts->each));
  }
  return parts;
}

bool is_count_word(std::string_view word) {
  constexpr std::array<std::string_view, 4> words{"ct", "cnt", "count", "ea"};
  const std::string plain = folded_abbreviation(word);
  for (const std::string_view known : words) {
    if (plain == known) return true;
  }
  return false;
}

/// `30 ct` as `30`, `#10` as `1 #10 can`, every other text as it is.
std::string as_amount(const std::string& text) {
  if (text.front() == '#') {
    const std::size_t digits = digits_at(text, 1);
    const bool bare = digits > 0 && 1 + digits == text.size();
    return "1 " + text + (bare ? " can" : "");
  }
  const std::size_t digits = digits_at(text, 0);
  return digits > 0 && is_count_word(text.substr(digits)) ? text.substr(0, digits) : text;
}

}  // namespace

Amount pack_content(const std::string& text, const Reading& reading) {
  const bool starts_with_a_word =
      !text.empty() && std::isalpha(static_cast<unsigned char>(text[0])) != 0;
  if (text.empty() || starts_with_a_word) throw Failure(problems::pack_malformed(text));
  for (const std::string_view sign : {"x", "X", "\u00D7"}) {
    if (const auto parts = split_behind_count(text, sign)) {
      return scaled(pack_content(parts->each, reading), read_number(parts->count));
    }
  }
  if (const auto parts = trade_pack(text)) {
    return scaled(reading.amount(as_amount(parts->each)), read_number(parts->count));
  }
  return reading.amount(as_amount(text));
}

}  // namespace platewright::reading
