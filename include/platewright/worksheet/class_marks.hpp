// SPDX-License-Identifier: MIT
#pragma once
// The marks of a class: what came of each answer of each student, and which slips are common.

#include <algorithm>
#include <cstddef>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

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

inline ClassMark class_mark(const MarkedAnswer& marked) {
  switch (marked.verdict) {
    case Verdict::right:
    case Verdict::right_as_rounded:
      return ClassMark::right;
    case Verdict::right_from_own:
      return ClassMark::own_figure;
    case Verdict::wrong:
      break;
  }
  return marked.slips.empty() ? ClassMark::wrong : ClassMark::slip;
}

/// The two sheets of a worksheet.
enum class WorksheetTest { trim, cooking };

inline const Working& working_in(const Worksheet& sheet, WorksheetTest test) {
  return test == WorksheetTest::trim ? sheet.trim_working : sheet.cooking_working;
}
inline const std::vector<MarkedAnswer>& answers_in(const Worksheet& sheet, WorksheetTest test) {
  return test == WorksheetTest::trim ? sheet.trim_answers : sheet.cooking_answers;
}

/// The steps of one test that anyone answered, in the order of the workings.
inline std::vector<std::string> answered_steps(const std::vector<StudentSheet>& students,
                                               WorksheetTest test) {
  std::set<std::string> left;
  for (const StudentSheet& student : students) {
    for (const MarkedAnswer& marked : answers_in(student.sheet, test)) {
      left.insert(marked.answer.step);
    }
  }
  std::vector<std::string> out;
  for (const StudentSheet& student : students) {
    for (const WorkingStep& step : working_in(student.sheet, test)) {
      if (left.erase(step.name) > 0) out.push_back(step.name);
    }
  }
  return out;
}

/// A slip and where it was made; `own` of the slip is empty, since it is each student's.
struct SlipCount {
  FoundSlip slip;
  std::size_t answers = 0;
  std::vector<std::string> students;
  std::vector<std::string> steps;
};

namespace detail {

inline void add_once(std::vector<std::string>& names, const std::string& name) {
  if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
}

inline void count_slips(const StudentSheet& student, WorksheetTest test,
                        std::vector<SlipCount>& counts) {
  for (const MarkedAnswer& marked : answers_in(student.sheet, test)) {
    for (const FoundSlip& slip : marked.slips) {
      auto count = std::find_if(counts.begin(), counts.end(), [&](const SlipCount& known) {
        return known.slip.what == slip.what &&
               (!slip.what.empty() || known.slip.astray == slip.astray);
      });
      if (count == counts.end()) {
        counts.push_back({{slip.astray, slip.what, {}}, 0, {}, {}});
        count = counts.end() - 1;
      }
      ++count->answers;
      add_once(count->students, student.student);
      add_once(count->steps, marked.answer.step);
    }
  }
}

}  // namespace detail

/// The slips of a class: those of the most students first, then of the most answers. An answer that
/// two slips give counts for both.
inline std::vector<SlipCount> common_slips(const std::vector<StudentSheet>& students) {
  std::vector<SlipCount> counts;
  for (const StudentSheet& student : students) {
    for (const WorksheetTest test : {WorksheetTest::trim, WorksheetTest::cooking}) {
      detail::count_slips(student, test, counts);
    }
  }
  std::stable_sort(counts.begin(), counts.end(), [](const SlipCount& one, const SlipCount& other) {
    return std::pair(one.students.size(), one.answers) >
           std::pair(other.students.size(), other.answers);
  });
  return counts;
}

}  // namespace platewright
