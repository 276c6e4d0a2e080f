// SPDX-License-Identifier: MIT
#include "platewright/card/class_sheet.hpp"

#include <algorithm>
#include <cstddef>
#include <map>
#include <string>

#include "card/sheets/safety_boxes.hpp"
#include "card/sheets/worksheet_answers.hpp"

namespace platewright {
namespace {

const char* mark_word(ClassMark mark) {
  switch (mark) {
    case ClassMark::right:
      return "right";
    case ClassMark::own_figure:
      return "own";
    case ClassMark::slip:
      return "slip";
    case ClassMark::wrong:
      return "wrong";
  }
  return "";
}

bool is_astray(ClassMark mark) {
  return mark == ClassMark::slip || mark == ClassMark::wrong;
}

/// `share of fat` as `share_of_fat`, with its place where another step has that key.
std::string key_of(const std::string& step, const std::vector<Column>& before) {
  std::string key;
  for (const char sign : step) {
    const bool plain = (sign >= 'a' && sign <= 'z') || (sign >= '0' && sign <= '9');
    key += plain ? sign : '_';
  }
  const bool taken = std::any_of(before.begin(), before.end(),
                                 [&](const Column& column) { return column.key == key; });
  return taken ? key + "_" + std::to_string(before.size()) : key;
}

Cell count(std::size_t number) {
  return figure(Rational(number), std::to_string(number));
}

void add_marks(Sheet& sheet, const std::vector<StudentSheet>& students, WorksheetTest test) {
  const std::vector<std::string> steps = answered_steps(students, test);
  if (steps.empty()) return;
  const bool trim = test == WorksheetTest::trim;
  Table table{trim ? "trim_marks" : "cooking_marks",
              trim ? "Trim test" : "Cooking loss test",
              {naming_column("student", "Student")},
              {},
              {},
              {}};
  for (const std::string& step : steps) {
    table.columns.push_back(words_column(key_of(step, table.columns), step));
  }
  table.columns.push_back(figures_column("answers_right", "Right"));
  table.columns.push_back(figures_column("answers_given", "Of"));
  std::vector<std::size_t> astray(steps.size());
  for (const StudentSheet& student : students) {
    const std::vector<MarkedAnswer>& answers = answers_in(student.sheet, test);
    std::map<std::string, ClassMark> marks;
    for (const MarkedAnswer& marked : answers) marks[marked.answer.step] = class_mark(marked);
    Row row{words(student.student)};
    for (std::size_t i = 0; i < steps.size(); ++i) {
      const auto mark = marks.find(steps[i]);
      row.push_back(mark == marks.end() ? Cell{} : words(mark_word(mark->second)));
      if (mark != marks.end() && is_astray(mark->second)) ++astray[i];
    }
    const auto wrong = std::count_if(answers.begin(), answers.end(), [](const auto& marked) {
      return is_astray(class_mark(marked));
    });
    row.push_back(count(answers.size() - static_cast<std::size_t>(wrong)));
    row.push_back(count(answers.size()));
    table.add(std::move(row));
  }
  Row total{words("astray")};
  for (const std::size_t number : astray) total.push_back(count(number));
  table.totals.push_back(std::move(total));
  sheet.add(std::move(table));
}

void add_slips(Sheet& sheet, const std::vector<StudentSheet>& students) {
  const std::vector<SlipCount> slips = common_slips(students);
  if (slips.empty()) {
    sheet.add(Paragraphs{"slips", "Slips", {"No slip that is known was made."}});
    return;
  }
  Table table{"slips",
              "Slips, the most common first",
              {words_column("slip", "Slip"), figures_column("students", "Students"),
               figures_column("answers", "Answers"), words_column("steps", "At"),
               words_column("who", "Who")},
              {},
              {},
              {"An answer that two slips give counts for both."}};
  for (const SlipCount& slip : slips) {
    table.add({words(card::slip_text(slip.slip)), count(slip.students.size()), count(slip.answers),
               words(card::listed(slip.steps)), words(card::listed(slip.students))});
  }
  sheet.add(std::move(table));
}

}  // namespace

Sheet class_sheet(const std::vector<StudentSheet>& students) {
  Sheet sheet(SheetKind::class_marks);
  sheet.title = "Worksheets of a class";
  sheet.subtitles = {
      std::to_string(students.size()) + (students.size() == 1 ? " sheet. " : " sheets. ") +
      "right: exactly, or to the rounding shown; own: right from the student's own "
      "figure above; slip: wrong, by a slip that is named below; wrong: by none that "
      "is known."};
  add_marks(sheet, students, WorksheetTest::trim);
  add_marks(sheet, students, WorksheetTest::cooking);
  add_slips(sheet, students);
  return sheet;
}

}  // namespace platewright
