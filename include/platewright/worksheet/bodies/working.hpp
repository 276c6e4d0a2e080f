// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/working.hpp.

#include "platewright/worksheet/working.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::optional<Figure> worked(Operation operation, const std::vector<Term>& terms) {
  std::optional<Figure> out;
  for (const Term& term : terms) {
    out = &term == &terms.front() ? std::optional(term.value)
                                  : carry_out(operation, *out, term.value);
    if (!out) return std::nullopt;
  }
  return out;
}

PLATEWRIGHT_BODY const WorkingStep* find_step(const Working& working, const std::string& name) {
  for (const WorkingStep& step : working) {
    if (step.name == name) return &step;
  }
  return nullptr;
}

namespace detail {

PLATEWRIGHT_BODY void WorkingWriter::slip(std::string what, const Figure& value,
                                          std::string follows) {
  WorkingStep& step = steps_.back();
  if (value == step.value) return;
  step.slips.push_back({std::move(what), value, std::move(follows)});
}

}  // namespace detail

}  // namespace platewright
