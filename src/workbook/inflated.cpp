// SPDX-License-Identifier: MIT
#include "workbook/inflated.hpp"

#include <algorithm>
#include <array>
#include <stdexcept>
#include <vector>

namespace platewright {
namespace {

/// What can't be read; caught below.
struct Malformed : std::runtime_error {
  Malformed() : std::runtime_error("not deflated") {}
};

/// The bits of a text, each byte from its lowest bit on.
class Bits {
 public:
  explicit Bits(std::string_view text) : text_(text) {}

  unsigned next(unsigned count) {
    unsigned out = 0;
    for (unsigned i = 0; i < count; ++i) out |= bit() << i;
    return out;
  }
  unsigned bit() {
    if (at_ / 8 >= text_.size()) throw Malformed();
    const auto byte = static_cast<unsigned char>(text_[at_ / 8]);
    return (byte >> (at_++ % 8)) & 1U;
  }
  /// So many whole bytes, from the next one that begins.
  std::string_view bytes(std::size_t count) {
    const std::size_t first = (at_ + 7) / 8;
    if (first > text_.size() || text_.size() - first < count) throw Malformed();
    at_ = (first + count) * 8;
    return text_.substr(first, count);
  }

 private:
  std::string_view text_;
  std::size_t at_ = 0;
};

/// A code for each symbol of which only the lengths are written (RFC 1951, 3.2.2): codes of one
/// length follow each other, and shorter ones come first.
class PrefixCode {
 public:
  static constexpr std::size_t longest = 15;

  explicit PrefixCode(const std::vector<unsigned>& lengths) {
    for (const unsigned length : lengths) ++of_length_[length];
    of_length_[0] = 0;
    for (std::size_t length = 1; length <= longest; ++length) {
      for (std::size_t symbol = 0; symbol < lengths.size(); ++symbol) {
        if (lengths[symbol] == length) symbols_.push_back(static_cast<unsigned>(symbol));
      }
    }
  }

  unsigned symbol(Bits& bits) const {
    std::size_t code = 0;
    std::size_t first = 0;   // the first code of this length
    std::size_t before = 0;  // symbols with shorter codes
    for (std::size_t length = 1; length <= longest; ++length) {
      code = code * 2 + bits.bit();
      first *= 2;
      if (code < first) break;
      if (code - first < of_length_[length]) return symbols_[before + code - first];
      before += of_length_[length];
      first += of_length_[length];
    }
    throw Malformed();
  }

 private:
  std::array<std::size_t, longest + 1> of_length_{};
  std::vector<unsigned> symbols_;
};

struct Codes {
  PrefixCode literals;
  PrefixCode distances;
};

/// The codes that every reader knows (RFC 1951, 3.2.6).
Codes fixed_codes() {
  std::vector<unsigned> literals(288, 8);
  std::fill(literals.begin() + 144, literals.begin() + 256, 9U);
  std::fill(literals.begin() + 256, literals.begin() + 280, 7U);
  return {PrefixCode(literals), PrefixCode(std::vector<unsigned>(30, 5))};
}

/// Codes that stand in front of their block (RFC 1951, 3.2.7).
Codes written_codes(Bits& bits) {
  constexpr std::array<std::size_t, 19> order{16, 17, 18, 0, 8,  7, 9,  6, 10, 5,
                                              11, 4,  12, 3, 13, 2, 14, 1, 15};
  const std::size_t literals = bits.next(5) + 257;
  const std::size_t distances = bits.next(5) + 1;
  const std::size_t written = bits.next(4) + 4;
  std::vector<unsigned> of_lengths(order.size(), 0);
  for (std::size_t i = 0; i < written; ++i) of_lengths[order[i]] = bits.next(3);
  const PrefixCode length_code(of_lengths);
  std::vector<unsigned> lengths;
  while (lengths.size() < literals + distances) {
    const unsigned symbol = length_code.symbol(bits);
    if (symbol < 16) {
      lengths.push_back(symbol);
      continue;
    }
    if (symbol == 16 && lengths.empty()) throw Malformed();
    const unsigned again = symbol == 16 ? lengths.back() : 0;
    const std::size_t times = symbol == 16   ? 3 + bits.next(2)
                              : symbol == 17 ? 3 + bits.next(3)
                                             : 11 + bits.next(7);
    lengths.insert(lengths.end(), times, again);
  }
  if (lengths.size() != literals + distances) throw Malformed();
  const auto end = lengths.begin() + static_cast<std::ptrdiff_t>(literals);
  return {PrefixCode({lengths.begin(), end}), PrefixCode({end, lengths.end()})};
}

/// A number that its symbol says in part and further bits the rest: `step` symbols have as many
/// bits, then `step` have one more (RFC 1951, 3.2.5).
std::size_t with_further_bits(unsigned symbol, unsigned step, std::size_t least, Bits& bits) {
  if (symbol < 2 * step) return least + symbol;
  const unsigned further = symbol / step - 1;
  const std::size_t base = (step + symbol % step) << further;
  return least + base + bits.next(further);
}

std::size_t length_of(unsigned symbol, Bits& bits) {
  constexpr unsigned longest = 285;
  if (symbol == longest) return 258;
  if (symbol > longest) throw Malformed();
  return with_further_bits(symbol - 257, 4, 3, bits);
}

std::size_t distance_of(unsigned symbol, Bits& bits) {
  if (symbol >= 30) throw Malformed();
  return with_further_bits(symbol, 2, 1, bits);
}

void add_block(Bits& bits, const Codes& codes, std::size_t most, std::string& out) {
  constexpr unsigned end_of_block = 256;
  for (unsigned symbol = codes.literals.symbol(bits); symbol != end_of_block;
       symbol = codes.literals.symbol(bits)) {
    if (symbol < end_of_block) {
      out += static_cast<char>(symbol);
    } else {
      const std::size_t length = length_of(symbol, bits);
      const std::size_t distance = distance_of(codes.distances.symbol(bits), bits);
      if (distance > out.size()) throw Malformed();
      for (std::size_t i = 0; i < length; ++i) out += out[out.size() - distance];
    }
    if (out.size() > most) throw Malformed();
  }
}

void add_stored(Bits& bits, std::string& out) {
  const std::string_view sizes = bits.bytes(4);
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(sizes[i]); };
  out += bits.bytes(byte(0) + 256U * byte(1));
}

}  // namespace

std::optional<std::string> inflated(std::string_view deflated, std::size_t size) {
  try {
    Bits bits(deflated);
    std::string out;
    bool last = false;
    while (!last) {
      last = bits.bit() == 1;
      switch (bits.next(2)) {
        case 0:
          add_stored(bits, out);
          break;
        case 1:
          add_block(bits, fixed_codes(), size, out);
          break;
        case 2:
          add_block(bits, written_codes(bits), size, out);
          break;
        default:
          return std::nullopt;
      }
    }
    if (out.size() != size) return std::nullopt;
    return out;
  } catch (const Malformed&) {
    return std::nullopt;
  }
}

}  // namespace platewright
