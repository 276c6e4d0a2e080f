// SPDX-License-Identifier: MIT
#pragma once
// The keys of every kind of map that a book, a worksheet or a price list has. A key is added here,
// with its meaning, before a reader may ask for it.

#include "platewright/book/file_kind.hpp"
#include "yaml/mapping.hpp"

namespace platewright::reading {

using yaml::Key;
using yaml::KeyNeed;
using yaml::KeyShape;
using yaml::Mapping;

/// Those of a whole file.
const Mapping& keys_of(FileKind kind);

// recipe_keys.cpp
const Mapping& recipe_keys();
const Mapping& part_keys();
const Mapping& line_keys();
const Mapping& step_keys();

// larder_keys.cpp
const Mapping& larder_keys();
const Mapping& supplier_keys();
const Mapping& ingredient_keys();
const Mapping& tested_yield_keys();
const Mapping& offer_keys();
const Mapping& by_product_keys();

// price_keys.cpp
const Mapping& prices_keys();
const Mapping& price_list_keys();
const Mapping& column_keys();
const Mapping& exchange_rate_keys();

// event_keys.cpp
const Mapping& event_keys();
const Mapping& diet_keys();
const Mapping& quote_keys();
const Mapping& labour_keys();
const Mapping& extra_keys();
const Mapping& discount_keys();
const Mapping& payment_keys();
const Mapping& invoice_keys();

// kitchen_keys.cpp
const Mapping& kitchen_keys();
const Mapping& oven_keys();
const Mapping& crew_keys();

// own_table_keys.cpp
const Mapping& own_tables_keys();
const Mapping& own_unit_keys();
const Mapping& density_keys();
const Mapping& density_measure_keys();
const Mapping& piece_weight_keys();
const Mapping& step_rule_keys();

// own_yield_keys.cpp
const Mapping& own_cut_keys();
const Mapping& rung_keys();
const Mapping& own_produce_keys();
const Mapping& own_grain_keys();

// worksheet_keys.cpp
const Mapping& worksheet_keys();
const Mapping& trim_test_keys();
const Mapping& cooking_test_keys();
const Mapping& trials_keys();
const Mapping& trial_worksheet_keys();

/// Which words mean a file's measures, the same in every kind of file.
inline constexpr std::string_view measures_meaning =
    "what a bare cup, pint or spoon means: us, imperial, metric, australian or japanese";
inline constexpr std::string_view with_meaning = "the files that this one needs, found beside it";
inline constexpr std::string_view kitchen_meaning =
    "what the kitchen measures with, cooks in, and who works there";

}  // namespace platewright::reading
