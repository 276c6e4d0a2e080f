// Ingredients: what is lost of them, what they weigh, how they are bought, what they contain.

#include <algorithm>

#include "book/reading.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/larders.hpp"
#include "platewright/problem/catalogue/numbers.hpp"

namespace platewright::reading {
namespace {

/// Decimals of a currency's minor unit (ISO 4217, list one); two where it is not named here.
unsigned minor_digits_of(std::string_view currency) {
  for (const std::string_view code : {"BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG",
                                      "RWF", "UGX", "UYI", "VND", "VUV", "XAF", "XOF", "XPF"}) {
    if (code == currency) return 0;
  }
  for (const std::string_view code : {"BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"}) {
    if (code == currency) return 3;
  }
  return 2;
}

class EntryReader {
 public:
  EntryReader(const Reading& reading, yaml::Fields& fields, Ingredient& ingredient)
      : reading_(reading), fields_(fields), ingredient_(ingredient) {}

  void read(PriceEntry& prices) {
    read_yields();
    read_weights();
    read_allergens();
    if (const auto safety = fields_.text("safety")) ingredient_.safety = *safety;
    prices.free = fields_.flag("free");
    for (const yaml::Node& node : fields_.list("buy")) {
      yaml::Fields buy(node, reading_.context(), fields_.path() + " > buy");
      if (!buy.is_map()) continue;
      reading_.problems.attempt(buy.place(), [&] { prices.purchases.push_back(purchase(buy)); });
      buy.finish();
    }
  }

 private:
  const Tables& tables() const { return reading_.book.tables; }

  void read_yields() {
    int rows = 0;
    const auto take = [&](std::string_view key, auto&& use) {
      if (const yaml::Node* node = fields_.find(key); node != nullptr && node->is_scalar()) {
        ++rows;
        reading_.problems.attempt(fields_.place(*node, key), [&] { use(node->text); });
      }
    };
    take("cut", [&](const std::string& name) {
      const Cut& cut = tables().yields.cut(name);
      use_ladder(cut.name, cut.ladder);
      ingredient_.is_cut = true;
      ingredient_.safety = cut.safety;
      ingredient_.species = cut.species;
    });
    take("produce", [&](const std::string& name) {
      const Produce& row = tables().yields.produce(name);
      use_ladder(key_of(row), ladder_of(row));
    });
    take("grain", [&](const std::string& name) {
      const Grain& row = tables().yields.grain(name);
      use_ladder(row.name, ladder_of(row));
    });
    if (rows > 1) {
      reading_.problems.add(
          at(problems::yields_exclude_each_other(ingredient_.name), fields_.place()));
    }
    for (const yaml::Node& node : fields_.list("tested yields")) {
      yaml::Fields test(node, reading_.context(), fields_.path() + " > tested yields");
      reading_.problems.attempt(test.place(), [&] { use_test(test); });
      test.finish();
    }
  }

  void use_ladder(const std::string& name, Ladder ladder) {
    ingredient_.yield_name = name;
    ingredient_.ladder = std::move(ladder);
  }

  /// The cook's own figure in place of the table's between two stages.
  void use_test(yaml::Fields& test) {
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
    const Ladder& known = ingredient_.ladder;
    const bool goes_on = !known.loses_nothing() && from == known.last() && !known.has(to);
    ingredient_.ladder =
        goes_on ? known.with_further_rung({from, to, *yield, {Loss::carving}, {}, spread, source, true})
                : known.with_tested_yield(from, to, *yield, source, std::move(spread));
    if (ingredient_.yield_name.empty()) ingredient_.yield_name = source.text;
  }

  void read_weights() {
    const std::string row = fields_.text("weighs as").value_or(ingredient_.name);
    if (const IngredientWeights* known = tables().weights.find(row)) {
      ingredient_.weights = *known;
    } else if (const yaml::Node* node = fields_.find("weighs as")) {
      reading_.problems.add(
          at(problems::name_unknown("food in the table of weights", row, tables().weights.names(),
                                    "see `platewright tables densities`"),
             fields_.place(*node, "weighs as")));
    }
    ingredient_.weights.name = ingredient_.name;
    ingredient_.prepared_weights = tables().weights.prepared(row);
    for (const TextPair& pair : text_pairs(fields_, "weighs")) {
      reading_.problems.attempt(pair.key_place, [&] {
        const Amount measure = reading_.amount(pair.key);
        const Amount weight = reading_.amount(pair.value);
        if (measure.number <= 0 || weight.number <= 0) {
          throw Failure(problems::number_not_positive("a weight", pair.key + ": " + pair.value));
        }
        MeasureWeight own;
        own.measure = measure;
        own.weighs = to_mass(weight);
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

  Purchase purchase(yaml::Fields& buy) {
    Purchase out;
    out.place = buy.place();
    const auto piece = buy.text("piece");
    const auto pack = buy.text("pack");
    const auto price = buy.needed_text("price", "price: 12.50");
    const auto weighs = buy.text("weighs");
    const auto spread = buy.text("spread");
    out.supplier = buy.text("from").value_or("");
    if (const auto days = buy.number("days")) {
      if (!is_whole(*days) || *days > 365) {
        throw Failure(problems::number_malformed(as_exact(*days), "whole days, at most 365"));
      }
      out.days = static_cast<int>(floor_of(*days));
    }
    if (!piece && !pack) throw Failure(problems::price_without_pack(ingredient_.name));
    if (piece) {
      out.content = reading_.amount(*piece);
      out.by_the_piece = true;
      out.pack_text = "piece of about " + *piece;
    } else {
      out.content = pack_content(*pack);
      out.pack_text = *pack;
    }
    if (out.content.number <= 0) {
      throw Failure(problems::number_not_positive("a pack", piece ? *piece : *pack));
    }
    if (weighs) out.weighs = reading_.amount(*weighs);
    if (spread) out.spread = reading_.amount(*spread);
    if (price) out.price = price_of(*price, out);
    return out;
  }

  /// `6 x 2.5 kg` is 15 kg; `30` is thirty pieces.
  Amount pack_content(const std::string& text) const {
    for (const std::string_view sign : {" x ", " \u00D7 "}) {
      if (text.find(sign) == std::string::npos) continue;
      const SplitText parts = split_at(text, sign);
      return scaled(reading_.amount(parts.after), read_number(parts.before));
    }
    return reading_.amount(text);
  }

  /// `12.50` is for the pack; `8.95 per lb` is worked out for it.
  Money price_of(const std::string& text, const Purchase& purchase) const {
    const SplitText parts = split_at(text, " per ");
    const Money money = read_money(parts.before);
    if (parts.after.empty()) return money;
    const Amount unit = reading_.amount("1 " + parts.after);
    const Amount& content =
        purchase.weighs && same_measure(purchase.weighs->unit, unit.unit) ? *purchase.weighs
                                                                          : purchase.content;
    return money * convert(content, unit.unit, ingredient_.weights).amount.number;
  }

  const Reading& reading_;
  yaml::Fields& fields_;
  Ingredient& ingredient_;
};

void read_currency(yaml::Fields& top, const Reading& reading) {
  const auto code = top.needed_text("currency", "currency: USD");
  if (!code) return;
  const Place place = top.place(*top.find("currency"), "currency");
  const bool capitals = std::all_of(code->begin(), code->end(),
                                    [](char c) { return c >= 'A' && c <= 'Z'; });
  PriceList& prices = reading.book.prices;
  if (code->size() != 3 || !capitals) {
    reading.problems.add(at(problems::currency_malformed(*code), place));
  } else if (!prices.entries.empty() && prices.currency != *code) {
    reading.problems.add(at(problems::currency_differs(*code, prices.currency), place));
  } else {
    prices.currency = *code;
    prices.minor_digits = minor_digits_of(*code);
  }
}

}  // namespace

void read_larder(const Reading& reading) {
  yaml::Fields top(reading.file.root, reading.context(), {});
  read_currency(top, reading);
  top.find("measures");
  top.find("with");
  const yaml::Node* larder = top.find("larder");
  if (larder != nullptr && !larder->is_map()) {
    reading.problems.add(at(problems::wrong_shape(yaml::shape_of(*larder), "a map of ingredients"),
                            top.place(*larder, "larder")));
  } else if (larder != nullptr) {
    for (const auto& [name, node] : larder->entries) {
      const std::string path = "larder > " + in_quotes(name.text);
      yaml::Fields fields(node, reading.context(), path);
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
