// SPDX-License-Identifier: MIT
#pragma once
// The working of a sheet: every figure as it comes from the ones before it, one step a line.

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/worksheet/figure.hpp"

namespace platewright {

/// How a figure is written: as what it is, or as the factor that a price is multiplied by.
enum class FigureForm { usual, factor };

/// A figure of a step, under the name that it has on the sheet.
struct Term {
  std::string name;
  Figure value;
  FigureForm form = FigureForm::usual;
};

/// What a step comes to when a known slip is made in it.
struct KnownSlip {
  /// In words that follow "went astray:", as in `divided by the weight as purchased`.
  std::string what;
  Figure value;
  /// The term that it is in proportion to, where there is one; it may have gone astray before.
  std::string follows;
};

/// One line: the terms, from left to right, with one operation between them.
struct WorkingStep {
  /// As in `net cost`; unique in its working.
  std::string name;
  Operation operation = Operation::add;
  std::vector<Term> terms;
  Figure value;
  std::vector<KnownSlip> slips;
  FigureForm form = FigureForm::usual;
};

using Working = std::vector<WorkingStep>;

/// The terms worked out from left to right; nothing where a division by 0 or the dimensions stand
/// against it.
std::optional<Figure> worked(Operation operation, const std::vector<Term>& terms);

/// The step of that name, or null.
const WorkingStep* find_step(const Working& working, const std::string& name);
const WorkingStep* find_step(const Working&&, const std::string&) = delete;

namespace detail {

/// Writes a working step by step. The value of a step is what its terms come to.
class WorkingWriter {
 public:
  /// Adds a step and returns its value as the kind of figure that it is.
  template <class Value>
  Value add(std::string name, Operation operation, std::vector<Term> terms,
            FigureForm form = FigureForm::usual) {
    const Figure value = worked(operation, terms).value();
    steps_.push_back({std::move(name), operation, std::move(terms), value, {}, form});
    return std::get<Value>(value);
  }

  /// A slip that is known to happen in the last step. One that comes to the right figure is none.
  void slip(std::string what, const Figure& value, std::string follows = {});

  Working take() { return std::move(steps_); }

 private:
  Working steps_;
};

}  // namespace detail

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/working.hpp"
#endif
