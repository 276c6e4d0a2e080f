// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/class_marks.hpp.

#include <algorithm>
#include <set>
#include <utility>

#include "platewright/worksheet/class_marks.hpp"

namespace platewright {

PLATEWRIGHT_BODY ClassMark class_mark(const MarkedAnswer& marked) {
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

PLATEWRIGHT_BODY std::vector<std::string> answered_steps(const std::vector<StudentSheet>& students,
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

namespace detail {

PLATEWRIGHT_BODY void add_once(std::vector<std::string>& names, const std::string& name) {
  if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
}

PLATEWRIGHT_BODY void count_slips(const StudentSheet& student, WorksheetTest test,
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

PLATEWRIGHT_BODY std::vector<SlipCount> common_slips(const std::vector<StudentSheet>& students) {
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
