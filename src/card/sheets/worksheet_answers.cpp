#include "card/sheets/worksheet_answers.hpp"

#include <algorithm>

#include "card/sheets/worksheet_figures.hpp"

namespace platewright::card {
namespace {

std::string astray_text(const MarkedAnswer& marked, const Worksheet& worksheet) {
  const auto apart = [&] {
    return exact_weight_cell(std::get<Mass>(*marked.difference), worksheet.weights).text;
  };
  switch (marked.astray) {
    case Astray::nowhere:
      return "";
    case Astray::truncated:
      return "cut off, not rounded";
    case Astray::no_percent:
      return "the per cent sign is missing";
    case Astray::carried_on:
      return "this step is right, worked on from your own " + marked.what;
    case Astray::left_out:
      return marked.what + " left out";
    case Astray::added:
      return "added where it is taken off";
    case Astray::subtracted:
      return "taken off where it is added";
    case Astray::upside_down:
      return "divided the wrong way round";
    case Astray::known_slip:
      return marked.what;
    case Astray::parts_too_much:
      return "the parts do not add up: " + apart() + " more than the whole";
    case Astray::parts_too_little:
      return "the parts do not add up: " + apart() + " not accounted for";
    case Astray::not_known:
      return "no slip that is known gives this";
  }
  return "";
}

std::string mark_text(const MarkedAnswer& marked, const Worksheet& worksheet) {
  if (marked.verdict == Verdict::right) return "right";
  if (marked.verdict == Verdict::right_as_rounded) return "right to the rounding shown";
  return "WRONG: " + astray_text(marked, worksheet);
}

Cell count(const std::vector<MarkedAnswer>& answers, Verdict verdict) {
  const auto number =
      std::count_if(answers.begin(), answers.end(),
                    [&](const MarkedAnswer& marked) { return marked.verdict == verdict; });
  return figure(Rational(number), std::to_string(number));
}

}  // namespace

void add_answers(Sheet& sheet, const std::string& key, const std::vector<MarkedAnswer>& answers,
                 const Working& working, const Worksheet& worksheet) {
  if (answers.empty()) return;
  const FigureWriter writer(worksheet);
  Table table{key + "_answers",
              "Your answers",
              {words_column("step", "Step"), words_column("answer", "Answer"),
               words_column("mark", "Mark"), words_column("working", "Right working")},
              {},
              {},
              {}};
  for (const MarkedAnswer& marked : answers) {
    const WorkingStep* step = find_step(working, marked.answer.step);
    const bool wrong = marked.verdict == Verdict::wrong;
    table.add({words(marked.answer.step), words(marked.answer.written),
               words(mark_text(marked, worksheet)),
               wrong ? words(writer.line(*step)) : writer.cell(step->form, step->value)});
  }
  sheet.add(std::move(table));
  Facts facts{key + "_marks", "", {}};
  facts.add("right", "Right", count(answers, Verdict::right));
  facts.add("right_as_rounded", "Right to the rounding shown",
            count(answers, Verdict::right_as_rounded));
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
