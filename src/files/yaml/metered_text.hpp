// SPDX-License-Identifier: MIT
#pragma once
// Text as a parser takes it in, with a bound on what it may take before it has met a value.

#include <algorithm>
#include <cstddef>
#include <streambuf>
#include <string>
#include <string_view>

#include "platewright/problem/catalogue/files.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright::yaml {

/// A parser that looks for the end of what a bracket opens keeps all that stands in between: its
/// memory grows to sixty times the text, and no value is met that could be counted. It takes the
/// text a little at a time, so that it can be stopped here: taking throws Failure.
class MeteredText : public std::streambuf {
 public:
  /// The text must live longer.
  MeteredText(std::string_view text, const std::string& file, std::size_t most_between)
      : text_(text), file_(file), most_between_(most_between) {}

  /// Something was found, on this line.
  void value_met(int line) {
    taken_ = 0;
    line_ = line;
  }

 protected:
  int_type underflow() override {
    constexpr std::size_t at_a_time = 4096;
    const std::size_t size = std::min(at_a_time, text_.size() - position_);
    if (size == 0) return traits_type::eof();
    taken_ += size;
    if (taken_ > most_between_) {
      throw Failure(at(problems::file_too_large("more than " + std::to_string(most_between_) +
                                                    " bytes before the next value is complete",
                                                most_between_),
                       Place{file_, line_, 1, {}}));
    }
    // A buffer of this kind reads, and never writes, through the pointer.
    char* const begin = const_cast<char*>(text_.data()) + position_;
    setg(begin, begin, begin + size);
    position_ += size;
    return traits_type::to_int_type(*begin);
  }

 private:
  std::string_view text_;
  const std::string& file_;
  std::size_t most_between_;
  std::size_t position_ = 0;
  std::size_t taken_ = 0;
  int line_ = 1;
};

}  // namespace platewright::yaml
