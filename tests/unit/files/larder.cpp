// SPDX-License-Identifier: MIT
// Entries of a larder.

#include "platewright/quantity/read_amount.hpp"
#include "support/catch.hpp"
#include "support/small_book.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

using Ids = std::vector<std::string>;

namespace {

/// A larder with one entry, which ends in its allergens.
std::string entry(const std::string& lines) {
  return "currency: USD\nlarder:\n  thing: {" + lines + ", allergens: none}\n";
}

Purchase purchase_of(const std::string& buy) {
  SmallBook files(Files{{"l.yaml", entry("weighs: {1 cup: 100 g}, buy: [{" + buy + "}]")}});
  const auto book = files.read({"l.yaml"});
  REQUIRE(book);
  return book->prices.entries.at("thing").purchases.at(0);
}

Ids ids_of_entry(const std::string& lines) {
  return ids_of(entry(lines));
}

}  // namespace

TEST_CASE("packs as they are sold") {
  CHECK(amount_text(purchase_of("pack: 40 lb, price: 1").content) == "40 lb");
  CHECK(amount_text(purchase_of("pack: 6 x 2.5 kg, price: 1").content) == "15 kg");
  CHECK(amount_text(purchase_of("pack: 1 bunch, weighs: 2 oz, price: 1").content) == "1 bunch");
  CHECK(purchase_of("pack: 30, price: 1").content.unit.name() == "each");
  const Purchase piece =
      purchase_of("piece: 7.5 lb, spread: 0.6 lb, price: 1 per piece, days: 3, from: a");
  CHECK(piece.by_the_piece);
  CHECK(piece.days == 3);
  CHECK(piece.supplier == "a");
  CHECK(amount_text(*piece.spread) == "3/5 lb");
}

TEST_CASE("a price is for the pack, or for a unit of it") {
  CHECK(amount_of(purchase_of("pack: 40 lb, price: 62.00").price) == 62);
  CHECK(amount_of(purchase_of("pack: 40 lb, price: 1.55 per lb").price) == 62);
  CHECK(amount_of(purchase_of("pack: 2 lb, price: 0.25 per oz").price) == 8);
  CHECK(amount_of(purchase_of("pack: 1 bunch, weighs: 2 oz, price: 8 per lb").price) == 1);
  CHECK(amount_of(purchase_of("pack: 1 kg, price: 2 per cup").price) == 20);
}

TEST_CASE("prices and packs that can't be") {
  CHECK(ids_of_entry("buy: [{price: 3}]") == Ids{"price-without-pack"});
  CHECK(ids_of_entry("buy: [{pack: 3 lb}]") == Ids{"key-missing"});
  CHECK(ids_of_entry("buy: [{pack: 3 lb, price: 12.50 dollars}]") == Ids{"price-malformed"});
  CHECK(ids_of_entry("buy: [{pack: 3 lb, price: -3}]") == Ids{"number-signed"});
  CHECK(ids_of_entry("buy: [{pack: a case, price: 3}]") == Ids{"pack-malformed"});
  CHECK(ids_of_entry("buy: [{pack: 0 lb, price: 3}]") == Ids{"number-not-positive"});
  CHECK(ids_of_entry("buy: [{pack: 1 bunch, weighs: 0 oz, price: 3 per lb}]") ==
        Ids{"number-not-positive"});
  CHECK(ids_of_entry("buy: [{pack: 3 lb, price: 3, days: 1.5}]") == Ids{"number-malformed"});
  CHECK(ids_of_entry("buy: [{pack: 3 lb, price: 3, days: 400}]") == Ids{"number-malformed"});
  CHECK(ids_of_entry("buy: [{pack: 3 lb, price: 3 per cup}]") == Ids{"density-missing"});
}

TEST_CASE("by-products are parts of what they are left from") {
  const auto with = [](const std::string& by_products) {
    return ids_of_entry("buy: [{pack: 5 lb, price: 10.00}], by-products: [" + by_products + "]");
  };
  CHECK(with("{name: fat, share: 10 %, worth: 0.50 per lb}").empty());
  CHECK(with("{name: fat, share: 60 %, worth: 0.50 per lb}, "
             "{name: bones, share: 40 %, worth: 0.10 per lb}") == Ids{"by-products-above-whole"});
  CHECK(with("{name: fat, share: 50 %, worth: 4.00 per lb}") == Ids{"by-products-worth-more"});
  CHECK(with("{name: fat, share: 50 %, used as: tallow}") == Ids{"name-unknown"});
  SmallBook files(Files{{"l.yaml",
                         "currency: USD\nlarder:\n"
                         "  leg: {buy: [{pack: 5 lb, price: 10.00}], allergens: none, "
                         "by-products: [{name: bones, share: 20 %, used as: leg}]}\n"}});
  CHECK_FALSE(files.read({"l.yaml"}));
  CHECK(files.ids() == Ids{"by-product-of-itself"});
}

TEST_CASE("what costs nothing is called free") {
  CHECK(ids_of_entry("buy: [{pack: 3 lb, price: 0}]") == Ids{"price-of-nothing"});
}

TEST_CASE("a currency is stated once, in three capitals") {
  const auto with = [](const std::string& line) { return ids_of(line + "larder: {}\n"); };
  CHECK(with("currency: USD\n").empty());
  CHECK(with("") == Ids{"key-missing"});
  CHECK(with("currency: usd\n") == Ids{"currency-malformed"});
  CHECK(with("currency: dollars\n") == Ids{"currency-malformed"});
  CHECK(with("currency: \xE2\x82\xAC\n") == Ids{"currency-malformed"});
  SmallBook files(Files{{"a.yaml", larder_text()}, {"b.yaml", "currency: EUR\nlarder: {}\n"}});
  CHECK_FALSE(files.read({"a.yaml", "b.yaml"}));
  CHECK(files.ids() == Ids{"exchange-rate-missing"});
  CHECK(with("currency: UDS\n") == Ids{"currency-malformed"});
}

// ISO 4217: the yen has no minor unit, the Kuwaiti dinar three digits.
TEST_CASE("the currency's minor unit") {
  const auto digits = [](const std::string& code) {
    SmallBook files(Files{{"l.yaml", "currency: " + code + "\nlarder: {}\n"}});
    return files.read({"l.yaml"})->prices.currency.minor_digits();
  };
  CHECK(digits("EUR") == 2);
  CHECK(digits("JPY") == 0);
  CHECK(digits("KWD") == 3);
}

TEST_CASE("allergens that are not stated are a warning, and stay not known") {
  SmallBook files(
      Files{{"l.yaml", "currency: USD\nlarder:\n  salt: {free: yes}\n  rye: {allergens: rye}\n"}});
  const auto book = files.read({"l.yaml"});
  REQUIRE(book);
  CHECK(files.ids() == Ids{"allergens-not-stated"});
  CHECK_FALSE(book->recipes.ingredient("salt").allergens);
  CHECK(book->recipes.ingredient("rye").allergens->size() == 1);
}

TEST_CASE("an allergen that is not known names the nearest") {
  SmallBook files(Files{{"l.yaml", "currency: USD\nlarder:\n  butter: {allergens: [mlik]}\n"}});
  CHECK_FALSE(files.read({"l.yaml"}));
  CHECK(files.ids() == Ids{"name-unknown"});
  CHECK(files.problems.all().front().remedy.find("milk") != std::string::npos);
}

TEST_CASE("a kind of food that is not known names the nearest") {
  SmallBook files(Files{{"l.yaml", entry("safety: poutlry")}});
  CHECK_FALSE(files.read({"l.yaml"}));
  CHECK(files.ids() == Ids{"word-unknown"});
  CHECK(files.problems.all().front().remedy == "did you mean \"poultry\"?");
  CHECK(ids_of_entry("safety: ground meat") == Ids{"word-unknown"});
  CHECK(ids_of_entry("safety: Whole cut").empty());
  CHECK(ids_of_entry("safety: none").empty());
}

TEST_CASE("one row of yields for an entry, and the cook's own test on top of it") {
  CHECK(ids_of_entry("cut: \"lamb leg, bone-in, roasted\", grain: \"pearl barley, boiled\"") ==
        Ids{"yield-chosen-twice"});
  CHECK(ids_of_entry("cut: lamb wing").front() == "cut-unknown");
  CHECK(ids_of_entry("produce: lamb wing").front() == "produce-unknown");
  CHECK(ids_of_entry("grain: lamb wing").front() == "grain-unknown");
  SmallBook files(Files{{"l.yaml", entry("tested yields: [{to: trimmed, yield: 88 %}]")}});
  const auto book = files.read({"l.yaml"});
  REQUIRE(book);
  CHECK(yield_to(book->recipes.ingredient("thing"), Stage::trimmed) == fraction(22, 25));
}

TEST_CASE("tested yields that can't be") {
  CHECK(ids_of_entry("tested yields: [{to: trimmed}]") == Ids{"key-missing"});
  CHECK(ids_of_entry("tested yields: [{to: trimmed, yield: 0 %}]") == Ids{"yield-not-positive"});
  CHECK(ids_of_entry("tested yields: [{to: boiled, yield: 88 %}]") == Ids{"stage-unknown"});
  CHECK(ids_of_entry("tested yields: [{to: trimmed, yield: 70}]") == Ids{"yield-too-large"});
}

TEST_CASE("what is in store is kept in the measure that it is bought in") {
  SmallBook files(Files{{"l.yaml",
                         "currency: USD\nlarder:\n"
                         "  flour: {weighs: {1 cup: 4 oz}, buy: [{pack: 5 lb, price: 3.00}],\n"
                         "          in store: 3 cups, allergens: none}\n"}});
  const auto book = files.read({"l.yaml"});
  REQUIRE(book);
  CHECK(amount_text(*book->prices.find("flour")->in_store) == "3/4 lb");
}

TEST_CASE("own weighing wins over the table, and a food of another name can stand for it") {
  SmallBook files(Files{{"l.yaml",
                         "currency: USD\nlarder:\n"
                         "  garlic: {weighs: {1 clove: 7 g}, allergens: none}\n"
                         "  our flour: {weighs as: all-purpose flour, allergens: wheat}\n"}});
  const auto book = files.read({"l.yaml"});
  REQUIRE(book);
  const auto weight = [&](const char* text, const std::string& of) {
    const Amount amount = read_amount(text, book->tables.units, MeasuringSystem::us);
    return weight_of(amount, book->recipes.ingredient(of).weights).in(units::gram);
  };
  CHECK(weight("2 cloves", "garlic") == 14);
  CHECK(weight("1 cup", "our flour") == 125);
  CHECK(ids_of_entry("weighs as: moon rock") == Ids{"name-unknown"});
  CHECK(ids_of_entry("weighs: {1 cup: 0 g}") == Ids{"number-not-positive"});
  CHECK(ids_of_entry("weighs: {1 cup: -5 g}") == Ids{"number-signed"});
}

TEST_CASE("an entry that stands in two files") {
  SmallBook files(Files{{"a.yaml", larder_text()}, {"b.yaml", larder_text()}});
  CHECK_FALSE(files.read({"a.yaml", "b.yaml"}));
  CHECK(files.ids().front() == "name-twice");
  CHECK(files.problems.all().front().found.find("a.yaml:3") != std::string::npos);
}
