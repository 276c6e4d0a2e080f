// SPDX-License-Identifier: MIT
#pragma once
// New exercises: a trim test and the cooking loss test that goes on from it, drawn for a number.

#include <cstdint>
#include <string>
#include <utility>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/worksheets.hpp"
#include "platewright/worksheet/exercise_numbers.hpp"
#include "platewright/worksheet/hold_against.hpp"

namespace platewright {

/// What a student is given. The cut and how it cooks are a row's of the table; weights and prices
/// are drawn, so that they are nobody's.
struct Exercise {
  std::uint64_t number = 0;
  std::string row;     ///< of the table of yields
  std::string bought;  ///< how its goods are bought, as in `bone-in`
  WeighedIn weights = WeighedIn::pounds;
  TrimTest trim;
  CostBase base = CostBase::invoice;  ///< what the cooking loss test begins with
  Mass cooked;
  Mass bones_and_trim;
  PricePerMass new_price;
};

namespace detail {

/// Draws weights in quarter pounds or 100 g, prices in twentieths, shares in thousandths.
class ExerciseWriter {
 public:
  ExerciseWriter(std::uint64_t number, WeighedIn weights) : numbers_(number), weights_(weights) {}

  Exercise draw(const YieldTable& table, std::uint64_t number);

 private:
  Mass weight_of(std::int64_t steps) const;

  /// The nearest of those weights, at least one of them.
  Mass near(const Mass& weight) const;

  Rational share(std::int64_t least, std::int64_t most);

  PricePerMass price(std::int64_t least, std::int64_t most);

  void draw_trim(TrimTest& test, const std::string& cut);

  /// Near the row's figures, three points to either side.
  void draw_cooking(const Cut& cut, Exercise& out);

  ExerciseNumbers numbers_;
  WeighedIn weights_;
  std::int64_t paid_ = 0;
};

}  // namespace detail

/// The exercise of that number: the same whenever it is drawn from the same table. Throws Failure
/// for a table without a cut whose cooking loss it knows by itself.
inline Exercise draw_exercise(std::uint64_t number, const YieldTable& table,
                              WeighedIn weights = WeighedIn::pounds) {
  return detail::ExerciseWriter(number, weights).draw(table, number);
}

/// The exercise's name, as its file and its solution have it.
inline std::string name_of(const Exercise& exercise) {
  return "exercise " + std::to_string(exercise.number) + ", " + exercise.row;
}

/// The exercise worked, and held against its row. Throws Failure as `work_out` does.
Worksheet solution_of(const Exercise& exercise, const YieldTable& table);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/exercise.hpp"
#endif
