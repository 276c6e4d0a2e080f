#pragma once
// How an ingredient is bought.

#include <optional>
#include <string>
#include <vector>

#include "platewright/problem/place.hpp"
#include "platewright/quantity/amount.hpp"
#include "platewright/quantity/money.hpp"

namespace platewright {

/// One offer of one supplier: a pack at a price, or goods by the piece whose weight varies.
struct Purchase {
  /// What one pack holds: `40 lb`, `6 x 2.5 kg` (15 kg), `1 bunch`; for goods bought by the piece, the
  /// average weight of a piece as purchased.
  Amount content;
  /// A second measure of the same pack, where the first is a count: a bunch weighs 2 oz.
  std::optional<Amount> weighs;
  /// `content` is one whole piece of varying weight, priced by weight (a leg, a bird).
  bool by_the_piece = false;
  /// How far single pieces lie from the average weight (one standard deviation), where it is known.
  std::optional<Amount> spread;
  /// For one pack or one average piece: what `8.95 per lb` comes to is worked out when it is read.
  Money price;
  std::string supplier;
  /// How the pack is called on an order: `case of 6 x 2.5 kg`; as the book writes it.
  std::string pack_text;
  /// Whole days between ordering and delivery.
  std::optional<int> days;
  Place place;
};

/// An ingredient's offers; the first is the preferred one. `free` needs none (tap water).
struct PriceEntry {
  std::vector<Purchase> purchases;
  bool free = false;
};

}  // namespace platewright
