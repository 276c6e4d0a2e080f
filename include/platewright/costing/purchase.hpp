// SPDX-License-Identifier: MIT
#pragma once
// How an ingredient is bought.

#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "platewright/costing/keeping.hpp"
#include "platewright/problem/place.hpp"
#include "platewright/quantity/amount.hpp"
#include "platewright/quantity/money.hpp"

namespace platewright {

/// The currency of a price that is not written in the book's own.
struct ForeignCurrency {
  Currency currency;
  Rational rate;       ///< what 1 of it is in the book's currency
  std::string source;  ///< whose rate, and of which day; may be empty
};

/// One offer of one supplier: a pack at a price, or goods by the piece whose weight varies.
struct Purchase {
  /// What one pack holds: `40 lb`, `6 x 2.5 kg` (15 kg), `1 bunch`; for goods bought by the piece,
  /// the average weight of a piece as purchased.
  Amount content;
  /// For one pack or one average piece, in the book's currency: what `8.95 per lb` comes to is
  /// worked out when it is read.
  Money price = {};
  /// A second measure of the same pack, where the first is a count: a bunch weighs 2 oz.
  std::optional<Amount> weighs = std::nullopt;
  /// `content` is one whole piece of varying weight, priced by weight (a leg, a bird).
  bool by_the_piece = false;
  /// How far single pieces lie from the average weight (one standard deviation), where it is known.
  std::optional<Amount> spread = std::nullopt;
  std::optional<ForeignCurrency> written_in = std::nullopt;
  /// The currency that a program named with the price, for the list to compare with its own.
  std::optional<Currency> said_in = std::nullopt;
  std::string supplier = {};
  /// How the pack is called on an order: `case of 6 x 2.5 kg`; as the book writes it.
  std::string pack_text = {};
  /// Whole days between ordering and delivery: 3 for what is ordered on a Monday and there on the
  /// Thursday.
  std::optional<int> days = std::nullopt;
  /// From which day the price counts; none for one that always did.
  std::optional<std::chrono::local_days> on = std::nullopt;
  /// Paid for each pack's container and given back for it: never a part of a cost.
  Money deposit = {};
  /// The fewest packs that the supplier delivers.
  std::optional<Integer> least = std::nullopt;
  Place place = {};
};

/// What is left of a piece and is worth something: bones, fat.
struct ByProduct {
  std::string name;
  Rational share;  ///< of the weight as purchased
  Money worth;     ///< for `unit` of it; nothing where it is used and not credited
  Unit unit;
  /// The ingredient that it is used as; empty where it is credited instead. Never both.
  std::string used_as = {};
};

/// An ingredient's offers; the first is the preferred one. `free` needs none (tap water).
struct PriceEntry {
  std::vector<Purchase> purchases = {};
  bool free = false;
  std::optional<Amount> in_store = std::nullopt;  ///< as purchased, there already
  Keeping keeping = {};
  std::vector<ByProduct> by_products = {};
  /// The first day that has a price, where no price counts on the day asked for.
  std::optional<std::chrono::local_days> first_price = std::nullopt;
};

}  // namespace platewright
