// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/heat/roast_question.hpp.

#include "platewright/heat/roast_question.hpp"

namespace platewright {

PLATEWRIGHT_BODY RoastQuestion RoastQuestion::of(RoastTerms terms) {
  if (terms.oven.empty()) throw Failure(problems::roast_oven_open("no oven step"));
  for (std::size_t i = 0; i < terms.oven.size(); ++i) {
    const bool last = i + 1 == terms.oven.size();
    if (terms.oven[i].time && last) {
      throw Failure(problems::roast_oven_open("a last oven step with a time"));
    }
    if (!last && (!terms.oven[i].time || *terms.oven[i].time <= Duration{})) {
      throw Failure(problems::roast_oven_open("a step of the oven without a time"));
    }
  }
  check_inside(terms.start);
  check_inside(terms.pull);
  if (terms.start >= terms.pull) {
    throw Failure(problems::roast_starts_done(text_of(terms.start), text_of(terms.pull)));
  }
  if (terms.oven.back().at <= terms.pull) {
    throw Failure(problems::inside_above_oven(text_of(terms.pull)));
  }
  return RoastQuestion(std::move(terms));
}

PLATEWRIGHT_BODY std::string RoastQuestion::text_of(const Temperature& temperature) {
  return as_short_decimal(temperature.in_fahrenheit(), 1) + " F";
}

PLATEWRIGHT_BODY void RoastQuestion::check_inside(const Temperature& inside) {
  if (inside < Temperature::celsius(0) || inside > Temperature::celsius(100)) {
    throw Failure(problems::inside_temperature_impossible(text_of(inside)));
  }
}

}  // namespace platewright
