// SPDX-License-Identifier: MIT
// Worksheets: a trim test, the cooking loss test that goes on from it, and a student's answers.

#include "platewright/files/read_worksheet.hpp"

#include "files/one_file.hpp"
#include "files/worksheet_texts.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/worksheets.hpp"
#include "platewright/quantity/currency.hpp"
#include "platewright/worksheet/hold_against.hpp"

namespace platewright {
namespace reading {
namespace {

/// The parts of one kind: one weight, or a map of names and weights.
void read_parts(yaml::Fields& fields, std::string_view key, PartKind kind, const TextUnits& units,
                ProblemList& problems, std::vector<TrimPart>& parts) {
  const yaml::Node* node = fields.find(key);
  if (node != nullptr && node->is_scalar()) {
    problems.attempt(fields.place(*node, key), [&] {
      parts.push_back(read_trim_part(kind, std::string(key), node->text, units));
    });
    return;
  }
  for (const TextPair& pair : text_pairs(fields, key)) {
    problems.attempt(pair.value_place,
                     [&] { parts.push_back(read_trim_part(kind, pair.key, pair.value, units)); });
  }
}

class WorksheetReader {
 public:
  WorksheetReader(const Reading& reading, yaml::Fields& top)
      : reading_(reading), top_(top), units_{reading.book.tables.units, reading.file.measures} {}

  Worksheet read() {
    sheet_.name = top_.needed_text("worksheet", "worksheet: leg of veal").value_or("");
    top_.find("measures");
    const auto bought = top_.read<std::string>("bought", [](const std::string& word) {
      check_bought(word);
      return word;
    });
    sheet_.bought = bought.value_or(std::string(bought_in(sheet_.name)));
    top_.read<bool>("currency", [&](const std::string& code) {
      sheet_.currency = Currency(code);
      return true;
    });
    sheet_.new_price = top_.read<PricePerMass>(
        "new price", [&](const std::string& text) { return read_price_by_weight(text, units_); });
    const yaml::Node* trim = top_.find("trim test");
    const yaml::Node* cooking = top_.find("cooking loss test");
    if (trim != nullptr) read_trim(*trim);
    // Without the trim test that it goes on from, nothing sensible can be said of the second test.
    if (cooking != nullptr && (trim == nullptr || sheet_.trim)) read_cooking(*cooking);
    if (trim == nullptr && cooking == nullptr) {
      reading_.problems.add(at(problems::worksheet_empty(), top_.place()));
    }
    top_.read<bool>("handbook", [&](const std::string& name) {
      sheet_.handbook = held_against(sheet_, name, reading_.book.tables.yields);
      return true;
    });
    if (sheet_.handbook && sheet_.handbook->has_other_cut()) {
      const HandbookRow& row = *sheet_.handbook;
      reading_.problems.add(at(problems::handbook_other_cut(row.name, row.bought, row.instead),
                               top_.place(*top_.find("handbook"), "handbook")));
    }
    top_.finish();
    return std::move(sheet_);
  }

 private:
  std::optional<Mass> mass(yaml::Fields& fields, std::string_view key) {
    return fields.read<Mass>(key, [&](const std::string& text) { return units_.mass(text); });
  }

  std::optional<PricedWeight> priced(yaml::Fields& fields, std::string_view key,
                                     std::string_view example) {
    if (fields.need(key, example) == nullptr) return std::nullopt;
    return fields.read<PricedWeight>(
        key, [&](const std::string& text) { return read_priced_weight(text, units_); });
  }

  void read_trim(const yaml::Node& node) {
    yaml::Fields fields(node, reading_.context(), "trim test", trim_test_keys());
    if (!fields.is_map()) return;
    TrimTest test;
    test.cut = sheet_.name;
    const auto purchased = priced(fields, "purchased", "purchased: 12 lb at 6.65 per lb");
    test.labour = fields.read<PricePerMass>(
        "labour", [&](const std::string& text) { return read_price_by_weight(text, units_); });
    read_parts(fields, "usable", PartKind::usable, units_, reading_.problems, test.parts);
    read_parts(fields, "by-products", PartKind::by_product, units_, reading_.problems, test.parts);
    read_parts(fields, "waste", PartKind::waste, units_, reading_.problems, test.parts);
    read_parts(fields, "cutting loss", PartKind::cutting_loss, units_, reading_.problems,
               test.parts);
    test.portion = mass(fields, "portion");
    if (purchased && !reading_.problems.has_errors()) {
      sheet_.weights = weighed_in(purchased->weight);
      reading_.problems.attempt(fields.place(), [&] {
        test.purchased = to_mass(purchased->weight);
        test.price = purchased->price;
        sheet_.trim = work_out(test);
        sheet_.trim_working = working_of(*sheet_.trim, sheet_.weights, sheet_.new_price);
      });
    }
    sheet_.trim_answers = read_answers(fields, sheet_.trim_working, own_);
    fields.finish();
  }

  void read_cooking(const yaml::Node& node) {
    yaml::Fields fields(node, reading_.context(), "cooking loss test", cooking_test_keys());
    if (!fields.is_map()) return;
    const auto base = read_base(fields);
    CookingLossTest test{sheet_.name, {}, TrimmedCost::from_invoice({}), {}, {}, {}, {}, {}};
    const bool begun = begin_cooking(fields, base.value_or(CostBase::invoice), test);
    const bool cooked = fields.need("cooked", "cooked: 5 lb 8 oz") != nullptr;
    test.cooked = mass(fields, "cooked").value_or(Mass{});
    test.bones_and_trim = mass(fields, "bones and trim").value_or(Mass{});
    test.saleable = mass(fields, "saleable");
    test.portion = mass(fields, "portion");
    if (base && begun && cooked && !reading_.problems.has_errors()) {
      reading_.problems.attempt(fields.place(), [&] {
        sheet_.cooking = work_out(test);
        sheet_.cooking_working = working_of(*sheet_.cooking, sheet_.weights, sheet_.new_price,
                                            sheet_.trim ? &*sheet_.trim : nullptr);
      });
    }
    OwnFigures brought;
    if (sheet_.trim && base) brought = brought_from(own_, *sheet_.trim, *base);
    sheet_.cooking_answers = read_answers(fields, sheet_.cooking_working, brought);
    fields.finish();
  }

  /// From the invoice or net of credits: asked for, never assumed.
  std::optional<CostBase> read_base(yaml::Fields& fields) {
    const auto base = fields.text("starts from");
    if (!base) {
      reading_.problems.add(at(problems::cost_base_not_stated(), fields.place()));
      return std::nullopt;
    }
    if (*base == "invoice") return CostBase::invoice;
    if (*base == "net of credits") return CostBase::net_of_credits;
    reading_.problems.add(at(problems::word_unknown("base", *base, {"invoice", "net of credits"}),
                             fields.place(*fields.find("starts from"), "starts from")));
    return std::nullopt;
  }

  /// The oven-ready weight and its cost: the trim test's, or what the sheet says.
  bool begin_cooking(yaml::Fields& fields, CostBase base, CookingLossTest& test) {
    if (sheet_.trim) {
      test.trimmed = sheet_.trim->usable;
      test.cost = TrimmedCost::from(*sheet_.trim, base);
      test.purchase_price = sheet_.trim->purchase_price;
      return true;
    }
    const auto ready = priced(fields, "oven-ready", "oven-ready: 6 lb for 79.80");
    const auto bought = fields.read<PricePerMass>(
        "bought at", [&](const std::string& text) { return read_price_by_weight(text, units_); });
    if (!ready) return false;
    sheet_.weights = weighed_in(ready->weight);
    return reading_.problems.attempt(fields.place(), [&] {
      test.trimmed = to_mass(ready->weight);
      const auto* by_weight = std::get_if<PricePerMass>(&ready->price);
      const Money cost =
          by_weight != nullptr ? *by_weight * test.trimmed : std::get<Money>(ready->price);
      test.cost = base == CostBase::invoice ? TrimmedCost::from_invoice(cost)
                                            : TrimmedCost::net_of_credits(cost);
      check_positive("an oven-ready weight", test.trimmed);
      // Bought oven-ready, the piece's own price is the purchase price.
      test.purchase_price = bought.value_or(cost / test.trimmed);
    });
  }

  std::vector<MarkedAnswer> read_answers(yaml::Fields& fields, const Working& working,
                                         OwnFigures& own) {
    std::vector<Answer> answers;
    for (const TextPair& pair : text_pairs(fields, "answers")) {
      if (working.empty()) continue;
      const WorkingStep* step = find_step(working, pair.key);
      if (step == nullptr) {
        std::vector<std::string> names;
        for (const WorkingStep& known : working) names.push_back(known.name);
        reading_.problems.add(
            at(problems::answer_unknown(pair.key, did_you_mean(pair.key, names)), pair.key_place));
        continue;
      }
      // As an exercise is handed out.
      if (pair.value == "____") continue;
      reading_.problems.attempt(pair.value_place, [&] {
        answers.push_back(read_answer(*step, pair.value, sheet_.weights, units_));
      });
    }
    return check_answers(working, answers, own);
  }

  const Reading& reading_;
  yaml::Fields& top_;
  TextUnits units_;
  Worksheet sheet_;
  /// The student's, of the trim test.
  OwnFigures own_;
};

}  // namespace
}  // namespace reading

std::optional<Worksheet> read_worksheet(const std::string& file, const Book& book,
                                        ProblemList& problems) {
  // A list of its own: what was wrong before with other files stops nothing here.
  ProblemList own;
  std::optional<Worksheet> sheet;
  if (const auto loaded = reading::read_one_file(file, FileKind::worksheet, book, own)) {
    Book known = book;
    const reading::Reading reading{*loaded, known, own};
    yaml::Fields top(loaded->root(), reading.context(), {}, reading::worksheet_keys());
    sheet = reading::WorksheetReader(reading, top).read();
  }
  for (const Problem& problem : own.all()) problems.add(problem);
  return own.has_errors() ? std::nullopt : std::move(sheet);
}

Worksheet worksheet_from(const TrimTestText& text, const Book& book) {
  const reading::TextUnits units{book.tables.units, book.measures};
  TrimTest test;
  test.cut = text.name;
  const reading::PricedWeight purchased = reading::read_priced_weight(text.purchased, units);
  test.purchased = to_mass(purchased.weight);
  test.price = purchased.price;
  if (!text.labour.empty()) test.labour = reading::read_price_by_weight(text.labour, units);
  for (const PartText& part : text.parts) {
    test.parts.push_back(reading::read_trim_part(part.kind, part.name, part.text, units));
  }
  if (!text.portion.empty()) test.portion = units.mass(text.portion);
  Worksheet sheet;
  sheet.name = text.name;
  sheet.currency = book.prices.currency;
  sheet.weights = reading::weighed_in(purchased.weight);
  if (!text.new_price.empty()) {
    sheet.new_price = reading::read_price_by_weight(text.new_price, units);
  }
  sheet.trim = work_out(test);
  sheet.trim_working = working_of(*sheet.trim, sheet.weights, sheet.new_price);
  if (!text.handbook.empty()) {
    sheet.handbook = held_against(sheet, text.handbook, book.tables.yields);
  }
  return sheet;
}

}  // namespace platewright
