// SPDX-License-Identifier: MIT
#include "platewright/worksheet/class_marks.hpp"

#include "support/answers.hpp"
#include "support/catch.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// 20 lb at 9.00 (180.00), credits 15.00: 165.00 for 15 lb.
StudentSheet handed_in(const char* student, const std::vector<Answer>& answers) {
  StudentSheet out{student, {}};
  out.sheet.trim =
      work_out(TrimTest{"rib",
                        pounds(20),
                        per_pound("9.00"),
                        std::nullopt,
                        {TrimPart::usable("rib", pounds(15)),
                         TrimPart::by_product("short ribs", pounds(3), per_pound("5.00")),
                         TrimPart::waste("fat", pounds(2))},
                        ounces(8)});
  out.sheet.trim_working = working_of(*out.sheet.trim, WeighedIn::pounds);
  out.sheet.trim_answers = check_answers(out.sheet.trim_working, answers);
  return out;
}

std::vector<StudentSheet> three_students() {
  return {handed_in("ana", {sum("portion cost", "6.00"), share("yield", printed("0.70"), 1)}),
          handed_in("ben", {by_pound("cost per lb", "12.00"), sum("net cost", "180.00"),
                            sum("portion cost", "96.00")}),
          handed_in("carl", {by_pound("cost per lb", "12.00"), sum("portion cost", "96.00")})};
}

}  // namespace

TEST_CASE("the columns of a class are the steps that anyone answered, in the working's order") {
  const auto students = three_students();
  CHECK(answered_steps(students, WorksheetTest::trim) ==
        std::vector<std::string>{"net cost", "yield", "cost per lb", "portion cost"});
  CHECK(answered_steps(students, WorksheetTest::cooking).empty());
}

TEST_CASE("an answer of a class is right, right from one's own, a slip or wrong") {
  const auto ben = three_students()[1].sheet.trim_answers;
  REQUIRE(ben.size() == 3);
  CHECK(class_mark(ben[0]) == ClassMark::slip);
  CHECK(class_mark(ben[1]) == ClassMark::own_figure);
  CHECK(class_mark(ben[2]) == ClassMark::slip);
  const auto other = handed_in("dora", {sum("net cost", "1"), sum("credits", "15.0")});
  CHECK(class_mark(other.sheet.trim_answers[0]) == ClassMark::right);
  CHECK(class_mark(other.sheet.trim_answers[1]) == ClassMark::wrong);
}

TEST_CASE("the slip of the most students comes first, whatever figures it was made on") {
  const auto slips = common_slips(three_students());
  REQUIRE(slips.size() >= 2);
  // Ben at the net cost and Carl at the cost per lb left the credits out; the ounces that both took
  // for pounds are met after it. Carl's are on his own cost per lb.
  CHECK(slips[0].slip.what == "credits left out");
  CHECK(slips[0].students == std::vector<std::string>{"ben", "carl"});
  CHECK(slips[0].steps == std::vector<std::string>{"net cost", "cost per lb"});
  CHECK(slips[1].slip.what == "the portion's ounces were taken for pounds");
  CHECK(slips[1].answers == 2);
  CHECK(slips[1].slip.own.empty());
}
