// SPDX-License-Identifier: MIT
#include "workbook/quote_bill.hpp"

#include "workbook/quote_charges.hpp"
#include "workbook/quote_columns.hpp"

namespace platewright::pages {
namespace {

class BillTable {
 public:
  BillTable(const QuoteRows& rows, const Quote& quote, const TermPlaces& terms,
            const GuestPlaces& guests)
      : rows_(rows), page_(rows.page()), quote_(quote), terms_(terms), guests_(guests) {}

  BillPlaces write(const CellPlace& price) {
    page_.headings({"The quote", "Guests", "Price", "", "", "", "", "Amount", "As planned"});
    const unsigned first = page_.row();
    for (std::size_t i = 0; i < quote_.lines.size(); ++i) {
      write_line(quote_.lines[i], guests_.counts[i], price_formula(i, price));
    }
    if (quote_.missing) write_line(*quote_.missing, *guests_.missing, rows_.at(price));
    write_discounts({}, rows_.column_sum(QuoteColumn::rounded, first), quote_.discounts);
    if (terms_.minimum_charge) {
      rows_.paid("up to the minimum charge",
                 "MAX(0," + rows_.at(*terms_.minimum_charge) + "-" +
                     rows_.column_sum(QuoteColumn::rounded, first) + ")",
                 quote_.minimum_raise);
    }
    BillPlaces out;
    out.subtotal = rows_.paid("Subtotal", rows_.column_sum(QuoteColumn::rounded, first),
                              quote_.subtotal, CellRole::total);
    write_billed(out);
    return out;
  }

 private:
  /// A share of the price is rounded up to the minor unit.
  std::string price_formula(std::size_t i, const CellPlace& price) const {
    const PayingGuests& kind = quote_.lines[i].guests;
    if (kind.own_price) return rows_.at(terms_.own_prices.at(kind.kind));
    if (kind.price_share == 1) return rows_.at(price);
    return up_to_formula(rows_.at(price) + "*" + rows_.at(guests_.price_shares[i]),
                         as_exact(plain(minor_unit(quote_.currency))));
  }

  void write_line(const QuoteLine& line, const CellPlace& count, const std::string& price) {
    page_.words(QuoteColumn::line, line.guests.kind);
    const auto many =
        page_.formula(QuoteColumn::count, rows_.at(count), line.guests.count, CellLook::number);
    const auto each = page_.formula(QuoteColumn::price, price, line.price, CellLook::money);
    page_.formula(QuoteColumn::rounded, rows_.at(many) + "*" + rows_.at(each), line.amount,
                  CellLook::money);
    page_.number(QuoteColumn::planned, plain(line.amount), CellLook::money);
    page_.next();
  }

  /// What is off `base`, each no more than the others leave of it. A share is rounded down.
  std::vector<CellPlace> write_discounts(const std::string& of, const std::string& base,
                                         const std::vector<DiscountLine>& lines) {
    std::vector<CellPlace> out;
    std::size_t next = 0;
    std::string left = base;
    for (std::size_t i = 0; i < quote_.terms.discounts.size(); ++i) {
      const Discount& discount = quote_.terms.discounts[i];
      if (discount.of != of) continue;
      const std::string term = rows_.at(terms_.discounts[i]);
      const std::string wanted =
          discount.share ? down_formula("(" + base + "*" + term + ")", quote_.currency) : term;
      out.push_back(
          rows_.paid(discount.name, "-MIN(" + wanted + "," + left + ")", -lines[next++].amount));
      left += "+" + rows_.at(out.back());
    }
    return out;
  }

  /// The extras that stand on the bill.
  void write_billed(BillPlaces& out) {
    std::size_t next = 0;
    for (std::size_t i = 0; i < quote_.terms.extras.size(); ++i) {
      if (!quote_.terms.extras[i].billed) continue;
      const BilledExtra& billed = quote_.billed[next++];
      const ExtraCost& extra = billed.cost;
      const auto count = extra.line.per_guest
                             ? page_.formula(QuoteColumn::count, rows_.at(guests_.guests),
                                             extra.count, CellLook::number)
                             : page_.number(QuoteColumn::count, extra.count);
      const auto price = page_.formula(QuoteColumn::price, rows_.at(terms_.extras[i]),
                                       extra.line.price, CellLook::price);
      const std::string sum = "(" + rows_.at(count) + "*" + rows_.at(price) + ")";
      const auto cost =
          rows_.paid(extra.line.name, half_up_formula(sum, quote_.currency), extra.cost);
      out.billed.push_back(
          {cost, write_discounts(extra.line.name, rows_.at(cost), billed.discounts)});
    }
  }

  const QuoteRows& rows_;
  Page& page_;
  const Quote& quote_;
  const TermPlaces& terms_;
  const GuestPlaces& guests_;
};

}  // namespace

BillPlaces write_bill(const QuoteRows& rows, const Quote& quote, const TermPlaces& terms,
                      const GuestPlaces& guests, const CellPlace& price) {
  BillPlaces out = BillTable(rows, quote, terms, guests).write(price);
  out.total = write_charges(rows, quote, terms, out);
  return out;
}

std::string without_tax_formula(const QuoteRows& rows, const Taxed& taxed,
                                const TermPlaces& terms) {
  std::string out = "1";
  for (const TaxedPart& part : taxed.parts()) {
    const std::string rate = rows.at(terms.tax[part.rate]);
    out += "-" + number_formula(part.share) + "*" + rate + "/(1+" + rate + ")";
  }
  return out;
}

}  // namespace platewright::pages
