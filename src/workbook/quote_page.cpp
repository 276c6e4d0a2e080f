// SPDX-License-Identifier: MIT
#include "workbook/quote_page.hpp"

#include "platewright/costing/round_money.hpp"
#include "workbook/quote_bill.hpp"
#include "workbook/quote_columns.hpp"
#include "workbook/quote_costs.hpp"

namespace platewright::pages {
namespace {

class QuotePage {
 public:
  QuotePage(Page& page, const Quote& quote, const PricePlaces& prices)
      : page_(page),
        rows_(page, quote.currency),
        quote_(quote),
        prices_(prices),
        terms_(*prices.terms) {}

  void write(const CellPlace& food) {
    const GuestPlaces guests = write_guests();
    const QuoteCosts costs = write_quote_costs(page_, quote_, prices_, guests.guests, food);
    if (quote_.terms.prices_include_tax) write_net();
    const CellPlace price = write_price(guests, costs);
    const BillPlaces bill = write_bill(rows_, quote_, terms_, guests, price);
    write_deposits(bill.total);
    write_outcome(bill, costs);
  }

 private:
  GuestPlaces write_guests() {
    page_.headings({"The guests", "Guests", "Price share", "Full prices", "", "Own prices"});
    GuestPlaces out;
    const unsigned first = page_.row();
    for (const QuoteLine& line : quote_.lines) {
      const PayingGuests& kind = line.guests;
      page_.words(QuoteColumn::line, kind.kind);
      out.counts.push_back(page_.number(QuoteColumn::count, kind.count));
      const Rational share = kind.own_price ? Rational(0) : kind.price_share;
      out.price_shares.push_back(page_.number(QuoteColumn::price, share, CellLook::share));
      page_.formula(QuoteColumn::beside,
                    page_.at(out.counts.back()) + "*" + page_.at(out.price_shares.back()),
                    kind.count * share, CellLook::number);
      if (kind.own_price) {
        page_.formula(QuoteColumn::exact,
                      page_.at(out.counts.back()) + "*" + page_.at(terms_.own_prices.at(kind.kind)),
                      line.amount, CellLook::money);
      }
      page_.next();
    }
    const std::string heads = rows_.column_sum(QuoteColumn::count, first);
    if (quote_.missing) out.missing = write_missing();
    page_.words(QuoteColumn::line, "Together");
    out.guests = page_.formula(QuoteColumn::count, heads, quote_.guests, CellLook::number);
    out.full_prices =
        page_.formula(QuoteColumn::beside, rows_.column_sum(QuoteColumn::beside, first),
                      quote_.full_prices, CellLook::number);
    if (!terms_.own_prices.empty()) {
      out.own_prices =
          page_.formula(QuoteColumn::exact, rows_.column_sum(QuoteColumn::exact, first),
                        quote_.own_prices, CellLook::money);
    }
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

  void write_net() {
    net_ =
        rows_.share("Left of a price without its tax",
                    without_tax_formula(rows_, quote_.terms.price_taxed, terms_), quote_.net_share);
    page_.next();
  }

  /// What a full price has to be; 0 where others bring it in, or no one pays a full price.
  std::string exact_price(const GuestPlaces& guests, const CellPlace& target) const {
    if (quote_.full_prices == 0) return "0";
    std::string out = page_.at(target);
    if (net_) out += "/" + page_.at(*net_);
    if (guests.own_prices) out = "(" + out + "-" + page_.at(*guests.own_prices) + ")";
    return "MAX(0," + out + "/" + page_.at(guests.full_prices) + ")";
  }

  CellPlace write_price(const GuestPlaces& guests, const QuoteCosts& costs) {
    page_.headings({"The price", "", "", "", "", "Exact", "", "Sum", "As planned"});
    const auto target = rows_.sum("Asks for", target_formula(costs), quote_.target);
    std::string exact = exact_price(guests, target);
    if (terms_.steps) {
      const StepPlaces& steps = *terms_.steps;
      const auto off = rows_.share("Off for so many",
                                   "IFERROR(LOOKUP(" + page_.at(guests.guests) + "," +
                                       page_.range(steps.first_from, steps.last_from) + "," +
                                       page_.range(steps.first_off, steps.last_off) + "),0)",
                                   quote_.step_off);
      exact += "*(1-" + page_.at(off) + ")";
    }
    const auto one = rows_.sum("For one, exactly", exact, quote_.exact_price);
    const auto out =
        rows_.paid(terms_.agreed_price ? "PRICE, AS AGREED" : "PRICE FOR A GUEST, up to the step",
                   price_formula(one), quote_.price, CellRole::total);
    page_.next();
    return out;
  }

  std::string price_formula(const CellPlace& one) const {
    if (terms_.agreed_price) return page_.at(*terms_.agreed_price);
    const std::string up = up_to_formula(page_.at(one), page_.at(terms_.price_step));
    if (!terms_.minimum_price) return up;
    return "MAX(" + up + "," + page_.at(*terms_.minimum_price) + ")";
  }

  std::string deposit_formula(const Deposit& deposit, const CellPlace& term, const CellPlace& total,
                              const std::string& left) const {
    const std::string asked =
        deposit.sum
            ? page_.at(term)
            : half_up_formula("(" + page_.at(total) + "*" + page_.at(term) + ")", quote_.currency);
    return "MIN(" + left + "," + asked + ")";
  }

  void write_deposits(const CellPlace& total) {
    const Conditions& conditions = quote_.terms.conditions;
    std::string left = page_.at(total);
    const auto add = [&](const std::string& label, const std::optional<Deposit>& deposit,
                         const std::optional<CellPlace>& term, const Money& sum) {
      if (!deposit) return;
      left += "-" + page_.at(rows_.paid(label, deposit_formula(*deposit, *term, total, left), sum));
    };
    add("Deposit", conditions.deposit, terms_.deposit, quote_.deposit);
    add("Second deposit", conditions.second_deposit, terms_.second_deposit, quote_.second_deposit);
    if (!conditions.deposit && !conditions.second_deposit) return;
    rows_.paid("Balance", left, quote_.balance);
    page_.next();
  }

  /// What is off extras on the bill, without the tax that is in it; empty where nothing is.
  std::string lost_formula(const BillPlaces& bill) const {
    std::string out;
    for (std::size_t i = 0; i < bill.billed.size(); ++i) {
      if (bill.billed[i].off.empty()) continue;
      out += (out.empty() ? "(" : "+(") + rows_.added(bill.billed[i].off) + ")";
      if (!quote_.terms.prices_include_tax) continue;
      out += "*(" + without_tax_formula(rows_, quote_.billed[i].cost.line.taxed, terms_) + ")";
    }
    return out;
  }

  /// The subtotal, or what is left of it.
  CellPlace write_income(const BillPlaces& bill) {
    std::string lost = lost_formula(bill);
    if (!lost.empty()) {
      const auto cell =
          rows_.sum("Off extras, without tax", "-(" + lost + ")", quote_.lost_on_extras);
      lost = "-" + page_.at(cell);
    }
    if (!net_ && lost.empty()) return bill.subtotal;
    const std::string net = net_ ? "*" + page_.at(*net_) : "";
    return rows_.sum("What we keep of it, without tax", page_.at(bill.subtotal) + net + lost,
                     quote_.income);
  }

  void write_outcome(const BillPlaces& bill, const QuoteCosts& costs) {
    page_.headings({"What it leaves", "", "", "", "", "Exact", "", "Sum", "As planned"});
    const std::string income = page_.at(write_income(bill));
    const std::string margin =
        page_.at(rows_.sum("Margin", income + "-" + page_.at(costs.cost), quote_.margin));
    const auto of_income = [&](const std::string& sum) {
      return "IF(" + income + ">0," + sum + "/" + income + ",0)";
    };
    rows_.share("  on the price", of_income(margin), quote_.margin_share);
    rows_.share("  on the cost", margin + "/" + page_.at(costs.cost), quote_.mark_up_share);
    rows_.share("Food cost of price",
                of_income("(" + page_.at(costs.food) + "+" + page_.at(costs.q_factor) + ")"),
                quote_.food_share);
  }

  Page& page_;
  QuoteRows rows_;
  const Quote& quote_;
  const PricePlaces& prices_;
  const TermPlaces& terms_;
  std::optional<CellPlace> net_;  ///< where prices include their tax
};

}  // namespace

void write_quote(Page& page, const EventPlan& plan, const Quote& quote, const PricePlaces& prices,
                 const CellPlace& food) {
  page.begin(
      "Quote: " + plan.event().name,
      {"The caterer's own sheet: costs and margin are not for the client. What is taxable is "
       "the law's business where the event takes place.",
       "\"As planned\" is what the program found and does not follow. The number from which "
       "the event breaks even is not here: each number of guests is another plan."});
  QuotePage(page, quote, prices).write(food);
}

}  // namespace platewright::pages
