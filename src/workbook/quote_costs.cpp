// SPDX-License-Identifier: MIT
#include "workbook/quote_costs.hpp"

#include "platewright/costing/round_money.hpp"
#include "workbook/quote_columns.hpp"
#include "workbook/quote_rows.hpp"

namespace platewright::pages {
namespace {

class CostTable {
 public:
  CostTable(Page& page, const Quote& quote, const PricePlaces& prices, const CellPlace& guests)
      : page_(page),
        quote_(quote),
        suppliers_(prices.suppliers),
        terms_(*prices.terms),
        guests_(guests) {}

  QuoteCosts write(const CellPlace& food) {
    page_.headings({"What it costs us", "Number", "Price", "Hours", "On top", "Exact", "Remainder",
                    "COST", "As planned"});
    first_ = page_.row();
    QuoteCosts out;
    out.food = add("Food", page_.at(food), quote_.food);
    out.q_factor = add_share("Q factor", page_.at(out.food), terms_.q_factor, quote_.terms.q_factor,
                             quote_.q_factor);
    for (std::size_t i = 0; i < quote_.labour.size(); ++i) add_labour(i);
    add_extras();
    for (const DeliveryCost& supplier : quote_.deliveries) add_deliveries(supplier);
    add_overhead();
    if (terms_.contingency) {
      add_share("Contingency", so_far(), *terms_.contingency, quote_.terms.contingency,
                quote_.contingency);
    }
    page_.words(QuoteColumn::line, "Cost of the event");
    out.cost = page_.here(QuoteColumn::exact);
    round_lines(page_, first_, costs_, quote_columns, quote_.currency);
    page_.number(QuoteColumn::planned,
                 plain(round_money(quote_.cost, minor_unit(quote_.currency), Rounding::half_up)),
                 CellLook::money);
    page_.next(2);
    return out;
  }

 private:
  CellPlace add(const std::string& label, const std::string& formula, const Money& cost) {
    page_.words(QuoteColumn::line, label);
    const auto out = page_.formula(QuoteColumn::exact, formula, cost, CellLook::price);
    costs_.push_back(cost);
    page_.next();
    return out;
  }

  CellPlace add_share(const std::string& label, const std::string& of, const CellPlace& share,
                      const Rational& value, const Money& cost) {
    const auto own = page_.formula(QuoteColumn::of, page_.at(share), value, CellLook::share);
    return add(label, of + "*" + page_.at(own), cost);
  }

  /// All lines above the row under way.
  std::string so_far() const {
    const CellPlace here = page_.here(QuoteColumn::exact);
    return "SUM(" +
           page_.range({here.sheet, first_, here.column}, {here.sheet, here.row - 1, here.column}) +
           ")";
  }

  void add_labour(std::size_t i) {
    const LabourCost& labour = quote_.labour[i];
    const auto workers = write_workers(labour);
    const Money hourly = labour.line.rate * Duration::of(1, units::hour);
    const auto rate =
        page_.formula(QuoteColumn::price, page_.at(terms_.labour[i].rate), hourly, CellLook::price);
    const auto hours = page_.number(QuoteColumn::beside, labour.line.time.in(units::hour));
    const auto benefits = page_.formula(QuoteColumn::of, page_.at(terms_.labour[i].benefits),
                                        labour.line.benefits, CellLook::share);
    add(labour.line.role,
        page_.at(workers) + "*" + page_.at(hours) + "*" + page_.at(rate) + "*(1+" +
            page_.at(benefits) + ")",
        labour.cost);
  }

  CellPlace write_workers(const LabourCost& labour) {
    const auto& each = labour.line.guests_per_worker;
    if (!each) return page_.number(QuoteColumn::count, labour.workers);
    return page_.formula(QuoteColumn::count,
                         whole_up_formula(page_.at(guests_) + "/" + number_formula(*each)),
                         labour.workers, CellLook::number);
  }

  void add_extras() {
    std::size_t next = 0;
    for (std::size_t i = 0; i < quote_.terms.extras.size(); ++i) {
      if (quote_.terms.extras[i].billed) continue;
      const ExtraCost& extra = quote_.extras[next++];
      const auto count = write_count(extra);
      const auto price = page_.formula(QuoteColumn::price, page_.at(terms_.extras[i]),
                                       extra.line.price, CellLook::price);
      add(extra.line.name, page_.at(count) + "*" + page_.at(price), extra.cost);
    }
  }

  /// How often it comes is planned; the charge is the one of the prices.
  void add_deliveries(const DeliveryCost& supplier) {
    const auto count = page_.number(QuoteColumn::count, Rational(supplier.deliveries));
    const auto& charge = suppliers_.at(supplier.supplier).delivery_charge;
    const auto each =
        page_.formula(QuoteColumn::price, page_.at(*charge), supplier.charge, CellLook::price);
    add("Deliveries, " + supplier.supplier, page_.at(count) + "*" + page_.at(each),
        supplier.cost());
  }

  CellPlace write_count(const ExtraCost& extra) {
    if (!extra.line.per_guest) return page_.number(QuoteColumn::count, extra.count);
    return page_.formula(QuoteColumn::count, page_.at(guests_), extra.count, CellLook::number);
  }

  void add_overhead() {
    const std::string above = so_far();
    const auto share = page_.formula(QuoteColumn::of, page_.at(terms_.overhead),
                                     quote_.terms.overhead, CellLook::share);
    const auto sum = page_.formula(QuoteColumn::price, page_.at(terms_.overhead_of_event),
                                   quote_.terms.overhead_of_event, CellLook::price);
    add("Overhead", above + "*" + page_.at(share) + "+" + page_.at(sum), quote_.overhead);
  }

  Page& page_;
  const Quote& quote_;
  const std::map<std::string, SupplierPlaces>& suppliers_;
  const TermPlaces& terms_;
  const CellPlace& guests_;
  unsigned first_ = 0;
  std::vector<std::optional<Money>> costs_;
};

}  // namespace

QuoteCosts write_quote_costs(Page& page, const Quote& quote, const PricePlaces& prices,
                             const CellPlace& guests, const CellPlace& food) {
  return CostTable(page, quote, prices, guests).write(food);
}

}  // namespace platewright::pages
