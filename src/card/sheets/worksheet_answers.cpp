// SPDX-License-Identifier: MIT
#include "card/sheets/worksheet_answers.hpp"

#include <algorithm>

#include "card/sheets/safety_boxes.hpp"
#include "card/sheets/worksheet_figures.hpp"

namespace platewright::card {
namespace {

std::string mark_text(const MarkedAnswer& marked, const Worksheet& worksheet) {
  switch (marked.verdict) {
    case Verdict::right:
      return "right";
    case Verdict::right_as_rounded:
      return "right to the rounding shown";
    case Verdict::right_from_own:
      return "right from your own figure above: " + listed(marked.own);
    case Verdict::wrong:
      break;
  }
  if (marked.slips.empty()) return "WRONG: no slip that is known gives this";
  std::string out;
  for (const FoundSlip& slip : marked.slips) {
    out += out.empty() ? "WRONG: " : "; or: ";
    out += slip_text(slip);
    if (marked.difference) {
      const Mass& apart = std::get<Mass>(*marked.difference);
      out +=
          ": " + exact_weight_cell(apart, worksheet.weights).text +
          (slip.astray == Astray::parts_too_much ? " more than the whole" : " not accounted for");
    }
    if (!slip.own.empty()) out += ", worked on from your own " + listed(slip.own);
  }
  return out;
}

Cell count(const std::vector<MarkedAnswer>& answers, Verdict verdict) {
  const auto number =
      std::count_if(answers.begin(), answers.end(),
                    [&](const MarkedAnswer& marked) { return marked.verdict == verdict; });
  return figure(Rational(number), std::to_string(number));
}

}  // namespace

std::string slip_text(const FoundSlip& slip) {
  switch (slip.astray) {
    case Astray::truncated:
      return "cut off, not rounded";
    case Astray::rounded_up:
      return "rounded up, not to the nearest";
    case Astray::no_percent:
      return "the per cent sign is missing";
    case Astray::added:
      return "added where it is taken off";
    case Astray::subtracted:
      return "taken off where it is added";
    case Astray::upside_down:
      return "divided the wrong way round";
    case Astray::left_out:
    case Astray::known_slip:
      return slip.what;
    case Astray::parts_too_much:
    case Astray::parts_too_little:
      return "the parts do not add up";
  }
  return "";
}

void add_answers(Sheet& sheet, const std::string& key, const std::vector<MarkedAnswer>& answers,
                 const Working& working, const Worksheet& worksheet, const FigureWriter& writer) {
  if (answers.empty()) return;
  Table table{key + "_answers",
              "Your answers",
              {words_column("step", "Step"), words_column("answer", "Answer"),
               words_column("mark", "Mark"), words_column("working", "Right working")},
              {},
              {},
              {}};
  for (const MarkedAnswer& marked : answers) {
    const WorkingStep* step = find_step(working, marked.answer.step);
    const unsigned places = places_of(marked.answer, *step, worksheet.weights);
    const bool right =
        marked.verdict == Verdict::right || marked.verdict == Verdict::right_as_rounded;
    table.add(
        {words(marked.answer.step), words(marked.answer.written),
         words(mark_text(marked, worksheet)),
         right ? writer.cell(step->form, step->value, places) : words(writer.line(*step, places))});
  }
  sheet.add(std::move(table));
  Facts facts{key + "_marks", "", {}};
  facts.add("right", "Right", count(answers, Verdict::right));
  facts.add("right_as_rounded", "Right to the rounding shown",
            count(answers, Verdict::right_as_rounded));
  facts.add("right_from_own", "Right from your own figure above",
            count(answers, Verdict::right_from_own));
  facts.add("wrong", "Wrong", count(answers, Verdict::wrong));
  const auto first = std::find_if(answers.begin(), answers.end(), [](const MarkedAnswer& marked) {
    return marked.verdict == Verdict::wrong;
  });
  if (first != answers.end()) {
    facts.kind = ColumnKind::words;
    facts.add("first_astray", "Went astray first at", words(first->answer.step));
  }
  sheet.add(std::move(facts));
}

}  // namespace platewright::card
