// SPDX-License-Identifier: MIT
#pragma once
// What a client's paper says besides sums: for whom, where, on which conditions.

#include <string>
#include <vector>

#include "card/sheets/shared.hpp"
#include "platewright/card/sheet.hpp"
#include "platewright/costing/quote.hpp"

namespace platewright::card {

/// `quote 2027-031 for the growers' club`, or nothing.
std::string paper_line(const Paper& paper);

/// Quote, caterer, client, contact, venue, kind of service: each line that the book has.
void add_paper_head(const Paper& paper, Sheet& sheet);

/// The texts under their title; nothing where there is none.
void add_texts(const std::string& key, const std::string& title,
               const std::vector<std::string>& texts, Sheet& sheet);

/// What was paid, and what is due then; nothing where nothing was paid.
void add_payments(const Quote& quote, const PriceList& money, Sheet& sheet);

/// What is signed besides the price; nothing where the book says nothing.
Facts condition_facts(const Event& event, const Quote& quote, const PriceList& money);

}  // namespace platewright::card
