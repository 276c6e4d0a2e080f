// SPDX-License-Identifier: MIT
#include "card/sheets/rung_texts.hpp"
#include "platewright/card/figures.hpp"
#include "platewright/card/worksheet_sheet.hpp"

namespace platewright {

Sheet trials_sheet(const KeptResult& kept) {
  Sheet sheet(SheetKind::trials);
  sheet.title = "Trials: " + kept.name;
  Table table{"steps",
              "",
              {words_column("step", "Step"), figures_column("trials", "n"),
               figures_column("mean_of_ratios", "Mean of ratios"),
               figures_column("ratio_of_totals", "Ratio of totals"),
               figures_column("deviation", "SD, points"), figures_column("low", "Low"),
               figures_column("high", "High")},
              {},
              {},
              {}};
  for (const KeptRung& rung : kept.rungs) {
    const TrialsResult& trials = rung.trials;
    const auto& deviation = trials.standard_deviation;
    table.add({words(words_for(rung.rung)),
               figure(Rational(trials.trials), std::to_string(trials.trials)),
               percent_cell(trials.mean_of_ratios, 2), percent_cell(trials.ratio_of_totals, 2),
               deviation ? number_cell(*deviation * 100, 2) : words("one trial"),
               percent_cell(trials.low, 2), percent_cell(trials.high, 2)});
  }
  table.notes = {
      "Mean of ratios: each piece counts alike. Ratio of totals: each counts by its weight."};
  sheet.add(std::move(table));
  const bool mean = kept.average == TrialAverage::mean_of_ratios;
  Facts facts{"kept", "Kept as the book's own yield", {}};
  const Rational& overall = mean ? kept.overall.mean_of_ratios : kept.overall.ratio_of_totals;
  facts.add("yield",
            std::string(name_of(kept.ladder.first())) + " to " +
                std::string(name_of(kept.ladder.last())) +
                (mean ? ", mean of ratios" : ", ratio of totals"),
            percent_cell(overall, 2));
  if (kept.ladder.yield() != overall) {
    facts.add("steps_multiplied", "The steps' means multiplied, as a book uses them",
              percent_cell(kept.ladder.yield(), 2));
  }
  sheet.add(std::move(facts));
  return sheet;
}

}  // namespace platewright
