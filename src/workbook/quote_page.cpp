#include "workbook/quote_page.hpp"

#include "platewright/costing/round_money.hpp"
#include "workbook/quote_columns.hpp"
#include "workbook/quote_costs.hpp"
#include "workbook/unfollowed_terms.hpp"

namespace platewright::pages {
namespace {

/// The rows of the guests, written first, so that costs and bill can name them.
struct GuestPlaces {
  std::vector<CellPlace> counts;
  std::vector<CellPlace> price_shares;
  std::optional<CellPlace> missing;
  CellPlace guests;
  CellPlace full_prices;
};

/// What a price is made of and paid by.
struct BillPlaces {
  CellPlace subtotal;
  std::vector<CellPlace> billed;
};

class QuotePage {
 public:
  QuotePage(Page& page, const Quote& quote, const TermPlaces& terms)
      : page_(page), quote_(quote), terms_(terms) {}

  void write(const CellPlace& food) {
    const GuestPlaces guests = write_guests();
    const QuoteCosts costs = write_quote_costs(page_, quote_, terms_, guests.guests, food);
    const CellPlace price = write_price(guests, costs);
    const BillPlaces bill = write_bill(guests, price);
    const CellPlace total = write_charges(bill);
    write_deposit(total);
    write_outcome(bill.subtotal, costs);
  }

 private:
  Rational shown(const Money& value) const {
    return plain(round_money(value, minor_unit(quote_.currency), Rounding::half_up));
  }

  /// A sum of this sheet: its exact figure, and rounded half up.
  CellPlace write_sum(const std::string& label, const std::string& formula, const Money& value) {
    const auto out = write_exact(label, formula, value);
    page_.next();
    return out;
  }
  CellPlace write_exact(const std::string& label, const std::string& formula, const Money& value) {
    page_.words(QuoteColumn::line, label);
    const auto out = page_.formula(QuoteColumn::exact, formula, value, CellLook::price);
    page_.formula(QuoteColumn::rounded, half_up_formula(page_.at(out), quote_.currency),
                  shown(value), CellLook::money);
    page_.number(QuoteColumn::planned, shown(value), CellLook::money);
    return out;
  }

  /// A sum that is to be paid, rounded by its formula already.
  CellPlace write_paid(const std::string& label, const std::string& formula, const Money& value,
                       CellRole role = CellRole::figure) {
    page_.words(QuoteColumn::line, label);
    const auto out = page_.formula(QuoteColumn::rounded, formula, value, CellLook::money, role);
    page_.number(QuoteColumn::planned, plain(value), CellLook::money);
    page_.next();
    return out;
  }

  std::string column_sum(unsigned column, unsigned first) const {
    const std::string sheet = page_.here(0).sheet;
    return "SUM(" + page_.range({sheet, first, column}, {sheet, page_.row() - 1, column}) + ")";
  }

  GuestPlaces write_guests() {
    page_.headings({"The guests", "Guests", "Price share", "Full prices"});
    GuestPlaces out;
    const unsigned first = page_.row();
    for (const QuoteLine& line : quote_.lines) {
      page_.words(QuoteColumn::line, line.guests.kind);
      out.counts.push_back(page_.number(QuoteColumn::count, line.guests.count));
      out.price_shares.push_back(
          page_.number(QuoteColumn::price, line.guests.price_share, CellLook::share));
      page_.formula(QuoteColumn::beside,
                    page_.at(out.counts.back()) + "*" + page_.at(out.price_shares.back()),
                    line.guests.count * line.guests.price_share, CellLook::number);
      page_.next();
    }
    const std::string heads = column_sum(QuoteColumn::count, first);
    if (quote_.missing) out.missing = write_missing();
    page_.words(QuoteColumn::line, "Together");
    out.guests = page_.formula(QuoteColumn::count, heads, quote_.guests, CellLook::number);
    out.full_prices = page_.formula(QuoteColumn::beside, column_sum(QuoteColumn::beside, first),
                                    quote_.full_prices, CellLook::number);
    page_.next(2);
    return out;
  }

  /// They are no heads of the event, and pay.
  CellPlace write_missing() {
    page_.words(QuoteColumn::line, quote_.missing->guests.kind);
    const CellPlace out = page_.number(QuoteColumn::beside, quote_.missing->guests.count);
    page_.next();
    return out;
  }

  std::string target_formula(const QuoteCosts& costs) const {
    const std::string share = page_.at(terms_.rule_share);
    switch (quote_.terms.rule) {
      case PricingRule::margin:
        return page_.at(costs.cost) + "/(1-" + share + ")";
      case PricingRule::mark_up:
        return page_.at(costs.cost) + "*(1+" + share + ")";
      case PricingRule::food_cost:
        return "(" + page_.at(costs.food) + "+" + page_.at(costs.q_factor) + ")/" + share;
    }
    return {};
  }

  CellPlace write_price(const GuestPlaces& guests, const QuoteCosts& costs) {
    page_.headings({"The price", "", "", "", "", "Exact", "", "Sum", "As planned"});
    const auto target = write_sum("Asks for", target_formula(costs), quote_.target);
    std::string exact = page_.at(target) + "/" + page_.at(guests.full_prices);
    if (terms_.steps) {
      const StepPlaces& steps = *terms_.steps;
      page_.words(QuoteColumn::line, "Off for so many");
      const auto off = page_.formula(QuoteColumn::exact,
                                     "IFERROR(LOOKUP(" + page_.at(guests.guests) + "," +
                                         page_.range(steps.first_from, steps.last_from) + "," +
                                         page_.range(steps.first_off, steps.last_off) + "),0)",
                                     quote_.step_off, CellLook::share);
      exact += "*(1-" + page_.at(off) + ")";
      page_.next();
    }
    const auto one = write_sum("For one, exactly", exact, quote_.exact_price);
    const std::string price = terms_.agreed_price
                                  ? page_.at(*terms_.agreed_price)
                                  : up_to_formula(page_.at(one), page_.at(terms_.price_step));
    const auto out =
        write_paid(terms_.agreed_price ? "PRICE, AS AGREED" : "PRICE FOR A GUEST, up to the step",
                   price, quote_.price, CellRole::total);
    page_.next();
    return out;
  }

  /// A share of the price is rounded up to the minor unit.
  std::string price_formula(const QuoteLine& line, const CellPlace& price,
                            const CellPlace& share) const {
    if (line.guests.price_share == 1) return page_.at(price);
    return up_to_formula(page_.at(price) + "*" + page_.at(share),
                         as_exact(plain(minor_unit(quote_.currency))));
  }

  void write_bill_line(const QuoteLine& line, const CellPlace& count, const std::string& price) {
    page_.words(QuoteColumn::line, line.guests.kind);
    const auto many =
        page_.formula(QuoteColumn::count, page_.at(count), line.guests.count, CellLook::number);
    const auto each = page_.formula(QuoteColumn::price, price, line.price, CellLook::money);
    page_.formula(QuoteColumn::rounded, page_.at(many) + "*" + page_.at(each), line.amount,
                  CellLook::money);
    page_.number(QuoteColumn::planned, plain(line.amount), CellLook::money);
    page_.next();
  }

  BillPlaces write_bill(const GuestPlaces& guests, const CellPlace& price) {
    page_.headings({"The quote", "Guests", "Price", "", "", "", "", "Amount", "As planned"});
    const unsigned first = page_.row();
    for (std::size_t i = 0; i < quote_.lines.size(); ++i) {
      write_bill_line(quote_.lines[i], guests.counts[i],
                      price_formula(quote_.lines[i], price, guests.price_shares[i]));
    }
    if (quote_.missing) write_bill_line(*quote_.missing, *guests.missing, page_.at(price));
    if (terms_.minimum_charge) {
      write_paid("up to the minimum charge",
                 "MAX(0," + page_.at(*terms_.minimum_charge) + "-" +
                     column_sum(QuoteColumn::rounded, first) + ")",
                 quote_.minimum_raise);
    }
    BillPlaces out;
    out.subtotal = write_paid("Subtotal", column_sum(QuoteColumn::rounded, first), quote_.subtotal,
                              CellRole::total);
    write_billed(guests, out);
    return out;
  }

  /// The extras that stand on the bill.
  void write_billed(const GuestPlaces& guests, BillPlaces& out) {
    std::size_t next = 0;
    for (std::size_t i = 0; i < quote_.terms.extras.size(); ++i) {
      if (!quote_.terms.extras[i].billed) continue;
      const ExtraCost& extra = quote_.billed[next++].cost;
      const auto count = extra.line.per_guest
                             ? page_.formula(QuoteColumn::count, page_.at(guests.guests),
                                             extra.count, CellLook::number)
                             : page_.number(QuoteColumn::count, extra.count);
      const auto price = page_.formula(QuoteColumn::price, page_.at(terms_.extras[i]),
                                       extra.line.price, CellLook::price);
      const std::string sum = "(" + page_.at(count) + "*" + page_.at(price) + ")";
      out.billed.push_back(
          write_paid(extra.line.name, half_up_formula(sum, quote_.currency), extra.cost));
    }
  }

  CellPlace write_charge(const std::string& label, const std::string& of, const CellPlace& share,
                         const Rational& value, const Money& sum) {
    const auto own = page_.formula(QuoteColumn::of, page_.at(share), value, CellLook::share);
    return write_paid(
        label, half_up_formula("((" + of + ")*" + page_.at(own) + ")", quote_.currency), sum);
  }

  /// Service charge, gratuity and tax; then the total of all that is paid.
  CellPlace write_charges(const BillPlaces& bill) {
    const QuoteTerms& terms = quote_.terms;
    const std::string subtotal = page_.at(bill.subtotal);
    std::string taxed = terms.price_taxed ? subtotal : "0";
    std::string all = subtotal;
    for (std::size_t i = 0; i < bill.billed.size(); ++i) {
      all += "+" + page_.at(bill.billed[i]);
      if (quote_.billed[i].cost.line.taxed) taxed += "+" + page_.at(bill.billed[i]);
    }
    const auto charge = [&](const std::string& label, const std::string& of, const CellPlace& share,
                            const Charge& by, const Money& sum) {
      const auto out = write_charge(label, of, share, by.share, sum);
      all += "+" + page_.at(out);
      if (by.taxed) taxed += "+" + page_.at(out);
    };
    const bool after_tax = terms.service && terms.service->after_tax;
    if (terms.service && !after_tax) {
      charge("Service charge", subtotal, *terms_.service, *terms.service, quote_.service);
    }
    if (terms.gratuity) {
      charge("Gratuity", subtotal, *terms_.gratuity, *terms.gratuity, quote_.gratuity);
    }
    const auto tax = write_charge("Tax", taxed, terms_.tax, terms.tax[0].share, quote_.tax);
    all += "+" + page_.at(tax);
    if (after_tax) {
      charge("Service charge", subtotal + "+" + page_.at(tax), *terms_.service, *terms.service,
             quote_.service);
    }
    const auto out = write_paid("TOTAL", all, quote_.total, CellRole::total);
    page_.next();
    return out;
  }

  void write_deposit(const CellPlace& total) {
    const auto& deposit = quote_.terms.conditions.deposit;
    if (!deposit) return;
    const std::string asked =
        deposit->sum
            ? page_.at(*terms_.deposit)
            : half_up_formula("(" + page_.at(total) + "*" + page_.at(*terms_.deposit) + ")",
                              quote_.currency);
    const auto paid =
        write_paid("Deposit", "MIN(" + page_.at(total) + "," + asked + ")", quote_.deposit);
    write_paid("Balance", page_.at(total) + "-" + page_.at(paid), quote_.balance);
    page_.next();
  }

  void write_share(const std::string& label, const std::string& formula, const Rational& value) {
    page_.words(QuoteColumn::line, label);
    page_.formula(QuoteColumn::exact, formula, value, CellLook::share);
    page_.next();
  }

  void write_outcome(const CellPlace& subtotal, const QuoteCosts& costs) {
    page_.headings({"What it leaves", "", "", "", "", "Exact", "", "Sum", "As planned"});
    const auto margin =
        write_sum("Margin", page_.at(subtotal) + "-" + page_.at(costs.cost), quote_.margin);
    write_share("  on the price", page_.at(margin) + "/" + page_.at(subtotal), quote_.margin_share);
    write_share("  on the cost", page_.at(margin) + "/" + page_.at(costs.cost),
                quote_.mark_up_share);
    write_share(
        "Food cost of price",
        "(" + page_.at(costs.food) + "+" + page_.at(costs.q_factor) + ")/" + page_.at(subtotal),
        quote_.food_share);
  }

  Page& page_;
  const Quote& quote_;
  const TermPlaces& terms_;
};

}  // namespace

void write_quote(Page& page, const EventPlan& plan, const Quote& quote, const TermPlaces& terms,
                 const CellPlace& food) {
  if (const auto unfollowed = unfollowed_terms(quote); !unfollowed.empty()) {
    std::string all;
    for (const std::string& term : unfollowed) all += (all.empty() ? "" : ", ") + term;
    page.begin("Quote: " + plan.event().name,
               {"Not worked out here, since this quote has " + all +
                ", which a workbook does not follow. The command `quote` prints it."});
    return;
  }
  page.begin(
      "Quote: " + plan.event().name,
      {"The caterer's own sheet: costs and margin are not for the client. What is taxable is "
       "the law's business where the event takes place.",
       "\"As planned\" is what the program found and does not follow. The number from which "
       "the event breaks even is not here: each number of guests is another plan."});
  QuotePage(page, quote, terms).write(food);
}

}  // namespace platewright::pages
