// SPDX-License-Identifier: MIT
#pragma once
// A student's answers as they are written, and what a marker said of them.

#include <cstddef>
#include <string>

#include "platewright/worksheet/marked_answer.hpp"
#include "support/weights.hpp"

namespace platewright::test {

/// An answer in money, to the last place written.
inline Answer sum(const char* step, const char* written) {
  const std::string text = written;
  const std::size_t point = text.find('.');
  const auto places =
      static_cast<unsigned>(point == std::string::npos ? 0 : text.size() - point - 1);
  Answer answer{step, text, money(written), {}};
  if (places > 0) answer.last_place = money(Rational(1) / power_of_ten(places));
  return answer;
}

inline Answer by_pound(const char* step, const char* written) {
  Answer answer = sum(step, written);
  answer.value = std::get<Money>(answer.value) / pounds(1);
  if (answer.last_place) answer.last_place = std::get<Money>(*answer.last_place) / pounds(1);
  return answer;
}

inline Answer share(const char* step, const Rational& value, const Rational& last_place) {
  return {step, "", value, last_place};
}

/// True where one of the slips found says this.
inline bool names(const MarkedAnswer& marked, const std::string& words) {
  for (const FoundSlip& slip : marked.slips) {
    if (slip.what.find(words) != std::string::npos) return true;
  }
  return false;
}

}  // namespace platewright::test
