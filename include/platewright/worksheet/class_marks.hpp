// SPDX-License-Identifier: MIT
#pragma once
// The marks of a class: what came of each answer of each student, and which slips are common.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/worksheet/worksheet.hpp"

namespace platewright {

/// A student's sheet; the name is that of its file.
struct StudentSheet {
  std::string student;
  Worksheet sheet;
};

/// What came of an answer, in a word.
enum class ClassMark {
  right,       ///< exactly, or to the rounding shown
  own_figure,  ///< right from an earlier answer that is not
  slip,        ///< wrong, and it is known by which slip
  wrong,       ///< wrong by no slip that is known
};

ClassMark class_mark(const MarkedAnswer& marked);

/// The two sheets of a worksheet.
enum class WorksheetTest { trim, cooking };

inline const Working& working_in(const Worksheet& sheet, WorksheetTest test) {
  return test == WorksheetTest::trim ? sheet.trim_working : sheet.cooking_working;
}
inline const std::vector<MarkedAnswer>& answers_in(const Worksheet& sheet, WorksheetTest test) {
  return test == WorksheetTest::trim ? sheet.trim_answers : sheet.cooking_answers;
}

/// The steps of one test that anyone answered, in the order of the workings.
std::vector<std::string> answered_steps(const std::vector<StudentSheet>& students,
                                        WorksheetTest test);

/// A slip and where it was made; `own` of the slip is empty, since it is each student's.
struct SlipCount {
  FoundSlip slip;
  std::size_t answers = 0;
  std::vector<std::string> students;
  std::vector<std::string> steps;
};

/// The slips of a class: those of the most students first, then of the most answers. An answer that
/// two slips give counts for both.
std::vector<SlipCount> common_slips(const std::vector<StudentSheet>& students);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/class_marks.hpp"
#endif
