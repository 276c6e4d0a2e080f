// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/worksheets.hpp.

#include <utility>

#include "platewright/problem/catalogue/worksheets.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem worksheet_price_missing(std::string_view text) {
  return make_problem("worksheet-price-missing", in_quotes(text) + " without a price",
                      "a weight with its price: `12 lb at 6.65 per lb`, or `12 lb for 79.80`",
                      "take it from the invoice; a by-product that is worth nothing is `at 0`");
}

PLATEWRIGHT_BODY Problem worksheet_price_malformed(std::string_view text) {
  return make_problem("worksheet-price-malformed", "the price " + in_quotes(text),
                      "a price by weight such as 6.65 per lb or 14.50 per kg",
                      "write which weight the price is for; what is paid for the whole piece "
                      "follows the word `for`");
}

PLATEWRIGHT_BODY Problem cost_base_not_stated() {
  return make_problem("cost-base-not-stated",
                      "a cooking loss test that does not say what its cost starts from",
                      "`starts from: invoice` or `starts from: net of credits`",
                      "the two give different portion costs, so say which one your kitchen uses");
}

PLATEWRIGHT_BODY Problem worksheet_empty() {
  return make_problem("worksheet-empty", "a worksheet without a test",
                      "`trim test:` or `cooking loss test:`, or both", "add the test");
}

PLATEWRIGHT_BODY Problem answer_unknown(std::string_view name, std::string help) {
  return make_problem("answer-unknown", "an answer to " + in_quotes(name),
                      "an answer to a step of this sheet",
                      help.empty() ? "run it without the answers: each line begins with the name "
                                     "of its step"
                                   : std::move(help));
}

PLATEWRIGHT_BODY Problem handbook_other_cut(std::string_view row, std::string_view bought,
                                            std::string_view instead) {
  return as_warning(make_problem(
      "handbook-other-cut",
      "the row " + in_quotes(row) + " of goods bought " + in_quotes(bought) +
          " beside a test of another cut: only one of the two has the bone in it",
      "a row of the cut that was tested",
      instead.empty()
          ? "take a row of that cut; if the sheet is wrong about its goods, say how they "
            "are bought, as in `bought: boneless`"
          : "hold it against " + in_quotes(instead)));
}

PLATEWRIGHT_BODY Problem class_without_answers(std::string_view student) {
  return as_warning(make_problem("class-without-answers",
                                 "no answers on the sheet of " + in_quotes(student),
                                 "`answers:` below a test, with a figure for each step",
                                 "its row stays empty; look whether the right file was handed in"));
}

PLATEWRIGHT_BODY Problem class_folder_empty(std::string_view folder) {
  return make_problem("class-folder-empty", "no worksheet in the folder " + in_quotes(folder, 200),
                      "files that end in .yaml or .yml right in it",
                      "name the folder that the answers were handed in to");
}

PLATEWRIGHT_BODY Problem class_too_large(std::size_t most) {
  return make_problem("class-too-large", "more than " + std::to_string(most) + " worksheets",
                      "at most " + std::to_string(most), "mark them a class at a time");
}

PLATEWRIGHT_BODY Problem no_cut_to_draw() {
  return make_problem("cut-to-draw-missing",
                      "tables in which no cut says what the oven alone takes",
                      "a cut whose first rung is from purchased to cooked and holds cooking",
                      "use the built-in tables, or add such a cut to your own");
}

PLATEWRIGHT_BODY Problem trial_stages_too_few() {
  return make_problem("trial-stages-too-few", "trials that were weighed once",
                      "two stages or more, such as [purchased, cooked, served]",
                      "name the stages at which each piece was weighed");
}

PLATEWRIGHT_BODY Problem trial_weights_differ(std::size_t weights, std::size_t stages) {
  return make_problem("trial-weights-differ",
                      "a trial of " + std::to_string(weights) + " weights for " +
                          std::to_string(stages) + " stages",
                      "one weight for each stage", "weigh at every stage, or leave the trial out");
}

PLATEWRIGHT_BODY Problem portion_size_malformed(std::string_view text) {
  return make_problem("portion-size-malformed", "the portion " + in_quotes(text),
                      "a portion such as 6 oz, \"2 slices of 3 oz\", \"2 slices of 3/4 in, 3 oz "
                      "each\" or \"1 rib of 7\"",
                      "write it in one of these forms");
}

PLATEWRIGHT_BODY Problem ribs_without_piece() {
  return make_problem("ribs-without-piece", "a portion by the rib without the weight of a piece",
                      "the average weight of a whole piece as purchased",
                      "add what a rack or roast weighs, as in --piece \"16 lb\"");
}

PLATEWRIGHT_BODY Problem test_malformed(std::string_view text) {
  return make_problem("test-malformed", "the tested yield " + in_quotes(text),
                      "two stages and a yield, as in \"cooked to served 70 %\"",
                      "write it in this form");
}

}  // namespace platewright::problems
