// SPDX-License-Identifier: MIT
// Trials that a kitchen keeps, and the file of tables that they become.

#include <filesystem>

#include "files/one_file.hpp"
#include "files/quoted.hpp"
#include "platewright/files/read_worksheet.hpp"
#include "platewright/problem/catalogue/books.hpp"

namespace platewright {
namespace reading {
namespace {

/// What a worksheet weighed at a stage, bought oven-ready where it has no trim test.
std::optional<Mass> weight_at(const Worksheet& sheet, Stage stage) {
  const auto& trim = sheet.trim;
  const auto& cooking = sheet.cooking;
  if (stage == Stage::purchased && trim) return trim->purchased;
  if (stage == Stage::trimmed && trim) return trim->usable;
  if (!cooking || stage == Stage::thawed) return std::nullopt;
  if (stage <= Stage::trimmed) return cooking->trimmed;
  return stage == Stage::cooked ? cooking->cooked : cooking->saleable;
}

/// `worksheet: lamb.yaml`, found beside the trials: the weights at the stages wanted.
std::vector<Mass> read_worksheet_weights(const yaml::Node& node, const std::vector<Stage>& stages,
                                         const Reading& reading) {
  yaml::Fields fields(node, reading.context(), "weighed", trial_worksheet_keys());
  const std::string name = fields.needed_text("worksheet", "worksheet: lamb.yaml").value_or("");
  fields.finish();
  const auto beside = std::filesystem::path(reading.file.file).parent_path() / name;
  std::vector<Mass> out;
  const auto sheet =
      read_worksheet(beside.lexically_normal().string(), reading.book, reading.problems);
  if (!sheet) return out;
  for (const Stage stage : stages) {
    const auto weight = weight_at(*sheet, stage);
    if (!weight) {
      throw Failure(problems::stage_missing(name_of(stage), "those that the worksheet weighs"));
    }
    out.push_back(*weight);
  }
  return out;
}

/// `10 lb, 6.5 lb, 5 lb`, the same as a list, or a worksheet.
std::vector<Mass> read_weights(const yaml::Node& node, const std::vector<Stage>& stages,
                               const Reading& reading) {
  if (node.is_map()) return read_worksheet_weights(node, stages, reading);
  std::vector<Mass> out;
  if (node.is_list()) {
    for (const yaml::Node& item : node.items) out.push_back(to_mass(reading.amount(item.text)));
    return out;
  }
  SplitText parts = split_at(node.text, ", ");
  while (true) {
    out.push_back(to_mass(reading.amount(parts.before)));
    if (parts.after.empty()) return out;
    parts = split_at(std::string(parts.after), ", ");
  }
}

TrialAverage read_average(const std::string& text) {
  if (text == "mean of ratios") return TrialAverage::mean_of_ratios;
  if (text == "ratio of totals") return TrialAverage::ratio_of_totals;
  throw Failure(problems::word_unknown("average", text, {"mean of ratios", "ratio of totals"}));
}

KeptTests read_tests(yaml::Fields& top, const Reading& reading) {
  KeptTests tests;
  tests.name = top.needed_text("trials", "trials: lamb leg, our roast").value_or("");
  top.find("measures");
  tests.method = top.text("method").value_or("");
  tests.water_taken_up = top.flag("water taken up");
  tests.source = top.text("source").value_or("our own trials");
  tests.average =
      top.read<TrialAverage>("average", read_average).value_or(TrialAverage::mean_of_ratios);
  if (const yaml::Node* node = top.need("stages", "stages: [purchased, cooked, served]")) {
    reading.problems.attempt(top.place(*node, "stages"), [&] {
      for (const std::string& stage : top.texts("stages")) {
        tests.stages.push_back(stage_from(stage));
      }
    });
  }
  top.need("weighed", "weighed: [[10 lb, 6.5 lb, 5 lb]]");
  for (const yaml::Node& node : top.list("weighed")) {
    reading.problems.attempt(top.place(node, "weighed"), [&] {
      tests.weighed.push_back(read_weights(node, tests.stages, reading));
    });
  }
  top.finish();
  return tests;
}

std::string per_cent(const Rational& share) {
  return as_short_decimal(share * 100, 6) + " %";
}

std::string rung_text(const Rung& rung) {
  std::string holds;
  for (const Loss loss : rung.holds) {
    holds += (holds.empty() ? "" : ", ") + std::string(name_of(loss));
  }
  std::string out = "      - from: " + std::string(name_of(rung.from)) + "\n";
  const auto line = [&](const char* key, const std::string& value) {
    out += std::string("        ") + key + ": " + value + "\n";
  };
  line("to", std::string(name_of(rung.to)));
  line("yield", per_cent(rung.yield));
  line("holds", "[" + holds + "]");
  if (!rung.method.empty()) line("method", quoted(rung.method));
  const Spread& spread = rung.spread;
  if (spread.samples) line("samples", std::to_string(*spread.samples));
  if (spread.standard_deviation) line("deviation", per_cent(*spread.standard_deviation));
  if (spread.low) line("low", per_cent(*spread.low));
  if (spread.high) line("high", per_cent(*spread.high));
  line("source", quoted(rung.source.text));
  return out;
}

}  // namespace
}  // namespace reading

std::optional<KeptResult> read_trials(const std::string& file, const Book& book,
                                      ProblemList& problems) {
  const auto loaded = reading::read_one_file(file, FileKind::trials, book, problems);
  if (!loaded) return std::nullopt;
  Book known = book;
  const reading::Reading reading{*loaded, known, problems};
  yaml::Fields top(loaded->root(), reading.context(), {}, reading::trials_keys());
  const KeptTests tests = reading::read_tests(top, reading);
  if (problems.has_errors()) return std::nullopt;
  std::optional<KeptResult> out;
  problems.attempt(top.place(), [&] { out = work_out(tests); });
  return out;
}

std::string own_tables_text(const KeptResult& kept) {
  std::string out =
      "tables: our own trials\ncuts:\n  - cut: " + reading::quoted(kept.name) + "\n    rungs:\n";
  for (const KeptRung& rung : kept.rungs) out += reading::rung_text(rung.rung);
  return out;
}

}  // namespace platewright
