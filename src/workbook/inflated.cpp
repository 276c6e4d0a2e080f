// SPDX-License-Identifier: MIT
#include "workbook/inflated.hpp"

#include <zlib.h>

#include <limits>
#include <new>

namespace platewright {
namespace {

/// A reader of bare deflated text, ended with the object.
class Inflater {
 public:
  Inflater() {
    // A negative number of bits: no head and no checksum around it.
    if (inflateInit2(&stream_, -MAX_WBITS) != Z_OK) throw std::bad_alloc();
  }
  Inflater(const Inflater&) = delete;
  Inflater& operator=(const Inflater&) = delete;
  ~Inflater() { inflateEnd(&stream_); }

  z_stream& stream() { return stream_; }

 private:
  z_stream stream_{};
};

}  // namespace

std::optional<std::string> inflated(std::string_view deflated, std::size_t size) {
  constexpr std::size_t most = std::numeric_limits<uInt>::max() - 1;
  // Nothing is compressed to less (zlib's technical page): a size beyond that is not true, and no
  // memory is taken for it.
  constexpr std::size_t most_times = 1032;
  if (deflated.size() > most || size > most || size / most_times > deflated.size()) {
    return std::nullopt;
  }
  std::string from(deflated);
  // A byte more, so that a text that is longer than it should be is seen.
  std::string out(size + 1, '\0');
  Inflater inflater;
  z_stream& stream = inflater.stream();
  stream.next_in = reinterpret_cast<Bytef*>(from.data());
  stream.avail_in = static_cast<uInt>(from.size());
  stream.next_out = reinterpret_cast<Bytef*>(out.data());
  stream.avail_out = static_cast<uInt>(out.size());
  if (inflate(&stream, Z_FINISH) != Z_STREAM_END || stream.total_out != size) return std::nullopt;
  out.resize(size);
  return out;
}

}  // namespace platewright
