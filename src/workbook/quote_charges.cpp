// SPDX-License-Identifier: MIT
#include "workbook/quote_charges.hpp"

#include "workbook/quote_columns.hpp"

namespace platewright::pages {
namespace {

/// A sum of the bill and how it is taxed.
struct TaxedSum {
  std::string name;
  std::vector<CellPlace> cells;  ///< which sum to it
  Money sum;
  const Taxed* taxed;

  /// Whether it is at one rate, or not taxed at all.
  bool is_whole() const {
    const auto& parts = taxed->parts();
    return parts.empty() || (parts.size() == 1 && parts.front().share == 1);
  }
};

class ChargeTable {
 public:
  ChargeTable(const QuoteRows& rows, const Quote& quote, const TermPlaces& terms,
              const BillPlaces& bill)
      : rows_(rows), page_(rows.page()), quote_(quote), terms_(terms), bill_(bill) {}

  CellPlace write() {
    const QuoteTerms& terms = quote_.terms;
    all_.push_back(bill_.subtotal);
    sums_.push_back({"Subtotal", {bill_.subtotal}, quote_.subtotal, &terms.price_taxed});
    for (std::size_t i = 0; i < bill_.billed.size(); ++i) add_billed(i);
    const bool after_tax = terms.service && terms.service->after_tax;
    if (terms.service && !after_tax) {
      add_charge("Service charge", *terms_.service, *terms.service, quote_.service);
    }
    if (terms.gratuity) {
      add_charge("Gratuity", *terms_.gratuity, *terms.gratuity, quote_.gratuity);
    }
    // The rows of taxes and total name those of the parts, which stand below them.
    const unsigned taxes = page_.row();
    page_.next(static_cast<unsigned>(quote_.taxes.size()) + (after_tax ? 3 : 2));
    const std::vector<std::vector<CellPlace>> bases = write_parts();
    const unsigned below = page_.row();
    page_.go_to(taxes);
    const CellPlace out = write_total(bases, after_tax);
    page_.go_to(below);
    return out;
  }

 private:
  void add_billed(std::size_t i) {
    const BilledExtra& extra = quote_.billed[i];
    std::vector<CellPlace> cells{bill_.billed[i].cost};
    for (const CellPlace& off : bill_.billed[i].off) cells.push_back(off);
    for (const CellPlace& cell : cells) all_.push_back(cell);
    sums_.push_back({extra.cost.line.name, std::move(cells), extra.left, &extra.cost.line.taxed});
  }

  CellPlace write_share(const std::string& label, const std::string& of, const CellPlace& share,
                        const Rational& value, const Money& sum) {
    const auto own = page_.formula(QuoteColumn::of, rows_.at(share), value, CellLook::share);
    return rows_.paid(
        label, half_up_formula("((" + of + ")*" + rows_.at(own) + ")", quote_.currency), sum);
  }

  void add_charge(const std::string& label, const CellPlace& share, const Charge& by,
                  const Money& sum) {
    const auto out = write_share(label, rows_.at(bill_.subtotal), share, by.share, sum);
    all_.push_back(out);
    sums_.push_back({label, {out}, sum, &by.taxed});
  }

  /// The cells that sum to what is taxed at each rate; a sum of several rates is shared out among
  /// them to the minor unit.
  std::vector<std::vector<CellPlace>> write_parts() {
    std::vector<std::vector<CellPlace>> bases(quote_.taxes.size());
    for (const TaxedSum& one : sums_) {
      if (!one.is_whole()) {
        write_parts_of(one, bases);
      } else if (*one.taxed) {
        auto& base = bases[one.taxed->parts().front().rate];
        base.insert(base.end(), one.cells.begin(), one.cells.end());
      }
    }
    return bases;
  }

  void write_parts_of(const TaxedSum& one, std::vector<std::vector<CellPlace>>& bases) {
    page_.headings({"Taxed of: " + one.name, "", "", "", "Share", "Exact", "Remainder", "Sum"});
    const unsigned first = page_.row();
    const std::string sum = "(" + rows_.added(one.cells) + ")";
    std::vector<std::optional<Money>> parts;
    const auto add = [&](const std::string& label, const Rational& share) {
      page_.words(QuoteColumn::line, label);
      const auto own = page_.number(QuoteColumn::of, share, CellLook::share);
      parts.emplace_back(one.sum * share);
      page_.formula(QuoteColumn::exact, sum + "*" + rows_.at(own), *parts.back(), CellLook::price);
      page_.next();
    };
    Rational rest = 1;
    for (const TaxedPart& part : one.taxed->parts()) {
      const std::string& name = quote_.taxes[part.rate].rate.name;
      add(name.empty() ? "taxed" : "as " + name, part.share);
      bases[part.rate].push_back({page_.here(0).sheet, page_.row() - 1, QuoteColumn::rounded});
      rest -= part.share;
    }
    add("not taxed", rest);
    page_.words(QuoteColumn::line, "Together");
    round_lines(page_, first, parts, quote_columns, quote_.currency);
    page_.next(2);
  }

  /// Taxes that are in the prices come behind the total.
  CellPlace write_total(const std::vector<std::vector<CellPlace>>& bases, bool after_tax) {
    const bool included = quote_.terms.prices_include_tax;
    std::vector<CellPlace> taxes;
    if (!included) taxes = write_taxes(bases);
    all_.insert(all_.end(), taxes.begin(), taxes.end());
    if (after_tax) {
      taxes.insert(taxes.begin(), bill_.subtotal);
      all_.push_back(write_share("Service charge", rows_.added(taxes), *terms_.service,
                                 quote_.terms.service->share, quote_.service));
    }
    const auto out = rows_.paid("TOTAL", rows_.added(all_), quote_.total, CellRole::total);
    if (included) write_taxes(bases);
    return out;
  }

  std::vector<CellPlace> write_taxes(const std::vector<std::vector<CellPlace>>& bases) {
    const bool included = quote_.terms.prices_include_tax;
    std::vector<CellPlace> out;
    for (std::size_t i = 0; i < quote_.taxes.size(); ++i) {
      const TaxLine& line = quote_.taxes[i];
      std::string label = line.rate.name.empty() ? "Tax" : "Tax, " + line.rate.name;
      std::string base = rows_.added(bases[i]);
      if (included) {
        label = "of which t" + label.substr(1);
        base = "(" + base + ")/(1+" + rows_.at(terms_.tax[i]) + ")";
      }
      out.push_back(write_share(label, base, terms_.tax[i], line.rate.share, line.tax));
    }
    return out;
  }

  const QuoteRows& rows_;
  Page& page_;
  const Quote& quote_;
  const TermPlaces& terms_;
  const BillPlaces& bill_;
  std::vector<CellPlace> all_;  ///< what the total is of
  std::vector<TaxedSum> sums_;
};

}  // namespace

CellPlace write_charges(const QuoteRows& rows, const Quote& quote, const TermPlaces& terms,
                        const BillPlaces& bill) {
  return ChargeTable(rows, quote, terms, bill).write();
}

}  // namespace platewright::pages
