// SPDX-License-Identifier: MIT
// Ingredients: what is lost of them, what they weigh, how they are bought, what they contain.

#include "files/larder_slips.hpp"
#include "files/reading.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/larders.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/recipe/ingredient_rows.hpp"

namespace platewright::reading {
namespace {

class EntryReader {
 public:
  EntryReader(const Reading& reading, yaml::Fields& fields, Ingredient& ingredient)
      : reading_(reading), fields_(fields), ingredient_(ingredient) {}

  void read(PriceEntry& prices) {
    read_yields();
    read_weights();
    read_allergens();
    read_traces();
    if (const auto kind = fields_.read<FoodKind>(
            "safety", [&](const std::string& text) { return tables().safety.kind_called(text); })) {
      ingredient_.safety = kind;
    }
    prices.free = fields_.flag("free");
    for (const yaml::Node& node : fields_.list("buy")) {
      yaml::Fields buy(node, reading_.context(), fields_.path() + " > buy", offer_keys());
      if (!buy.is_map()) continue;
      buy.finish(reading_.problems.attempt(buy.place(), [&] {
        prices.purchases.push_back(read_purchase(buy, reading_, ingredient_));
      }));
    }
    read_store(fields_, reading_, ingredient_, prices);
  }

 private:
  const Tables& tables() const { return reading_.book.tables; }

  void read_yields() {
    int rows = 0;
    const auto take = [&](std::string_view key, auto&& use) {
      if (fields_.find(key) != nullptr) ++rows;
      fields_.read<bool>(key, [&](const std::string& name) {
        use(name);
        return true;
      });
    };
    take("cut", [&](const std::string& name) {
      const auto& row = tables().yields.cut(name);
      ingredient_ = with_row(std::move(ingredient_), row);
    });
    take("produce", [&](const std::string& name) {
      const auto& row = tables().yields.produce(name);
      ingredient_ = with_row(std::move(ingredient_), row);
    });
    take("grain", [&](const std::string& name) {
      const auto& row = tables().yields.grain(name);
      ingredient_ = with_row(std::move(ingredient_), row);
    });
    if (rows > 1) {
      reading_.problems.add(
          at(problems::yields_exclude_each_other(ingredient_.name), fields_.place()));
    }
    std::vector<Rung> tests;
    for (const yaml::Node& node : fields_.list("tested yields")) {
      yaml::Fields test(node, reading_.context(), fields_.path() + " > tested yields",
                        tested_yield_keys());
      test.finish(reading_.problems.attempt(test.place(), [&] { read_test(test, tests); }));
    }
    if (tests.empty()) return;
    reading_.problems.attempt(fields_.place(*fields_.find("tested yields"), "tested yields"), [&] {
      ingredient_.ladder = ingredient_.ladder.with_own_rungs(std::move(tests));
    });
  }

  /// The cook's own figure between two stages.
  void read_test(yaml::Fields& test, std::vector<Rung>& tests) {
    const Stage from = stage_from(test.text("from").value_or("purchased"));
    const Stage to = stage_from(test.needed_text("to", "to: trimmed").value_or("trimmed"));
    const auto yield = test.share("yield");
    if (!yield) {
      test.need("yield", "yield: 88 %");
      return;
    }
    Spread spread;
    if (const auto samples = test.number("samples")) {
      spread.samples = static_cast<std::int64_t>(floor_of(*samples));
    }
    spread.standard_deviation = test.share("deviation");
    const Source source{test.text("source").value_or("our own test"), {}};
    const Rung rung{from, to, *yield, {}, {}, std::move(spread), source, true};
    check_rung(rung);
    tests.push_back(rung);
    if (ingredient_.yield_name.ends_with(source.text)) return;
    if (!ingredient_.yield_name.empty()) ingredient_.yield_name += "; ";
    ingredient_.yield_name += source.text;
  }

  void read_weights() {
    const std::string row = fields_.text("weighs as").value_or(ingredient_.name);
    ingredient_ = with_weights(std::move(ingredient_), tables().weights, row);
    const yaml::Node* node = fields_.find("weighs as");
    if (node != nullptr && tables().weights.find(row) == nullptr) {
      reading_.problems.add(
          at(problems::name_unknown("food in the table of weights", row, tables().weights.names(),
                                    "see `platewright tables densities`"),
             fields_.place(*node, "weighs as")));
    }
    for (const TextPair& pair : text_pairs(fields_, "weighs")) {
      reading_.problems.attempt(pair.key_place, [&] {
        const Amount measure = reading_.amount(pair.key);
        const Amount weight = reading_.amount(pair.value);
        if (measure.number <= 0 || weight.number <= 0) {
          throw Failure(problems::number_not_positive("a weight", pair.key + ": " + pair.value));
        }
        MeasureWeight own{measure, to_mass(weight)};
        own.source = "our own weighing";
        own.own = true;
        for (auto& [preparation, weights] : ingredient_.prepared_weights) {
          weights.rows.push_back(own);
        }
        ingredient_.weights.rows.push_back(std::move(own));
      });
    }
  }

  void read_allergens() {
    const yaml::Node* node = fields_.find("allergens");
    const auto words = fields_.texts("allergens");
    if (node == nullptr || words.empty()) {
      reading_.problems.add(
          as_warning(at(problems::allergens_not_stated(ingredient_.name), fields_.place())));
      return;
    }
    ingredient_.allergens.emplace();
    if (words.size() == 1 && words.front() == "none") return;
    for (const std::string& word : words) {
      reading_.problems.attempt(fields_.place(*node, "allergens"), [&] {
        ingredient_.allergens->push_back(tables().allergens.key_for(word));
      });
    }
  }

  /// What the label says that it may contain, without being made of it.
  void read_traces() {
    const yaml::Node* node = fields_.find("may contain");
    for (const std::string& word : fields_.texts("may contain")) {
      reading_.problems.attempt(fields_.place(*node, "may contain"), [&] {
        ingredient_.may_contain.push_back(tables().allergens.key_for(word));
      });
    }
  }

  const Reading& reading_;
  yaml::Fields& fields_;
  Ingredient& ingredient_;
};

}  // namespace

void read_larder(const Reading& reading) {
  yaml::Fields top(reading.file.root(), reading.context(), {}, larder_keys());
  read_file_currency(top, reading);
  top.find("measures");
  top.find("kitchen");
  top.find("with");
  read_suppliers(top, reading);
  const yaml::Node* larder = top.find("larder");
  if (larder != nullptr && !larder->is_map()) {
    reading.problems.add(
        at(problems::wrong_shape(yaml::shape_of(*larder), "a map of ingredients",
                                 "write each ingredient without a dash, its name and a colon, and "
                                 "what belongs to it below, 2 spaces further in"),
           top.place(*larder, "larder")));
  } else if (larder != nullptr) {
    const std::set<std::size_t> reported = report_keys_too_far_left(*larder, reading);
    for (std::size_t i = 0; i < larder->entries.size(); ++i) {
      if (reported.count(i) > 0) continue;
      const auto& [name, node] = larder->entries[i];
      const std::string path = "larder > " + in_quotes(name.text);
      yaml::Fields fields(node, reading.context(), path, ingredient_keys());
      Ingredient ingredient;
      ingredient.name = name.text;
      ingredient.place = Place{reading.file.file, name.line, name.column, path};
      if (const Ingredient* first = reading.book.recipes.find_ingredient(name.text)) {
        report_twice(reading, "ingredient", name.text, first->place, ingredient.place);
        continue;
      }
      PriceEntry prices;
      if (fields.is_map()) EntryReader(reading, fields, ingredient).read(prices);
      fields.finish();
      reading.book.prices.entries.emplace(name.text, std::move(prices));
      reading.book.recipes.ingredients.emplace(name.text, std::move(ingredient));
    }
  }
  top.finish();
}

}  // namespace platewright::reading
