// SPDX-License-Identifier: MIT
#include "card/sheets/quote_parts.hpp"
#include "card/sheets/reasons.hpp"

namespace platewright::card {
namespace {

class QuoteReasons {
 public:
  QuoteReasons(const EventCost& cost, const Quote& quote, const PriceList& prices)
      : cost_(cost), quote_(quote), prices_(prices) {}

  std::vector<Reason> all() {
    add_guests();
    for (const QuoteStep& step : charge_steps(quote_, prices_)) add_step(step);
    add_bill();
    add_price();
    for (const QuoteStep& step : cost_steps(quote_, prices_)) add_step(step);
    add_cost();
    add_outcome();
    add_conditions();
    for (const PlateCost& dish : cost_.dishes) {
      for (Reason& reason : reasons_of_plate(dish, prices_)) out_.push_back(std::move(reason));
    }
    return std::move(out_);
  }

 private:
  Fact input(const std::string& label, const Money& value) const {
    return {"", label, money(value, prices_)};
  }
  void add(std::vector<std::string> names, const std::string& formula, std::vector<Fact> inputs,
           Cell result) {
    out_.push_back({std::move(names), formula, std::move(inputs), std::move(result)});
  }

  void add_kind(const QuoteLine& line) {
    if (line.guests.own_price) {
      add({line.guests.kind}, "guests \u00D7 price of their own",
          {{"", "guests", number_cell(line.guests.count, 2)}, input("price", line.price)},
          money(line.amount, prices_));
      return;
    }
    add({line.guests.kind}, "guests \u00D7 price; price = full price \u00D7 price share",
        {{"", "guests", number_cell(line.guests.count, 2)},
         input("full price", quote_.price),
         {"", "price share", percent_cell(line.guests.price_share, 2)},
         input("price", line.price)},
        money(line.amount, prices_));
  }

  void add_guests() {
    for (const QuoteLine& line : quote_.lines) add_kind(line);
    if (!quote_.missing) return;
    Reason reason{{quote_.missing->guests.kind},
                  "(guests paid at least - guests who pay) \u00D7 full price",
                  {},
                  money(quote_.missing->amount, prices_)};
    reason.inputs.push_back(
        {"", "guests paid at least", number_cell(*quote_.terms.conditions.guaranteed_guests, 2)});
    reason.inputs.push_back({"", "of these missing", number_cell(quote_.missing->guests.count, 2)});
    reason.inputs.push_back(input("full price", quote_.price));
    out_.push_back(std::move(reason));
  }

  void add_step(const QuoteStep& step) {
    std::vector<Fact> inputs;
    if (step.kind == QuoteStepKind::food) {
      for (const PlateCost& dish : cost_.dishes) inputs.push_back(input(dish.recipe, dish.total));
      if (cost_.saved > Money()) {
        inputs.push_back(input("by-products used, not bought", -cost_.saved));
      }
    }
    add({step.name, step.name + ", " + step.working}, step.working, std::move(inputs),
        money(step.sum, prices_));
  }

  void add_bill() {
    std::vector<Fact> lines;
    const auto line_of = [&](const QuoteLine& line) {
      return input(as_short_decimal(line.guests.count, 2) + " " + line.guests.kind + " at " +
                       money(line.price, prices_).text,
                   line.amount);
    };
    for (const QuoteLine& line : quote_.lines) lines.push_back(line_of(line));
    if (quote_.missing) lines.push_back(line_of(*quote_.missing));
    for (const QuoteStep& step : discount_steps(quote_.discounts, prices_)) {
      lines.push_back(input(step.name, step.sum));
      add_step(step);
    }
    if (quote_.minimum_raise > Money()) {
      lines.push_back(input("up to the minimum charge", quote_.minimum_raise));
      add({"up to the minimum charge"}, "minimum charge - what the guests pay",
          {input("minimum charge", *quote_.terms.minimum_charge)},
          money(quote_.minimum_raise, prices_));
    }
    add({"Subtotal"}, "the sum of these", std::move(lines), money(quote_.subtotal, prices_));
    std::vector<Fact> charges{input("subtotal", quote_.subtotal)};
    for (const QuoteStep& step : charge_steps(quote_, prices_)) {
      charges.push_back(input(step.name, step.sum));
    }
    add({"Total"}, "the sum of these", std::move(charges), money(quote_.total, prices_));
    if (!quote_.terms.prices_include_tax) return;
    for (const QuoteStep& step : tax_steps(quote_, prices_)) add_step(step);
  }

  void add_price() {
    const QuoteTerms& terms = quote_.terms;
    add({"Asks for", "Target", "Rule"}, rule_text(terms),
        {input("cost", quote_.cost), input("food with Q", quote_.food + quote_.q_factor)},
        money(quote_.target, prices_));
    add({"Full prices"}, "guests who pay \u00D7 price share, added up", share_inputs(),
        number_cell(quote_.full_prices, 2));
    std::vector<Fact> inputs{input("target", quote_.target),
                             {"", "full prices", number_cell(quote_.full_prices, 2)}};
    std::string formula = "target";
    if (quote_.net_share != 1) {
      inputs.push_back({"", "left without tax", percent_cell(quote_.net_share, 4)});
      formula += " / what is left without tax";
    }
    if (quote_.own_prices > Money()) {
      inputs.push_back(input("prices of their own", quote_.own_prices));
      formula = "(" + formula + " - prices of their own)";
    }
    formula += " / full prices";
    if (quote_.step_off > 0) {
      inputs.push_back({"", "off", percent_cell(quote_.step_off, 2)});
      formula += " \u00D7 (1 - what is off)";
      add_step_off();
    }
    add({"For one, exactly"}, formula, inputs, money(quote_.exact_price, prices_));
    inputs = {input("for one, exactly", quote_.exact_price)};
    formula = "rounded up to the minor unit";
    if (terms.round_up_to) {
      inputs.push_back(input("step", *terms.round_up_to));
      formula = "rounded up to the step";
    }
    if (terms.minimum_price) {
      inputs.push_back(input("minimum for a guest", *terms.minimum_price));
      formula += ", at least the minimum for a guest";
    }
    if (terms.agreed_price) formula = "agreed already, whatever it would be now";
    add({"PRICE FOR A GUEST", "PRICE, AS AGREED", "Price"}, formula, std::move(inputs),
        money(quote_.price, prices_));
  }

  void add_step_off() {
    std::vector<Fact> inputs{{"", "guests", number_cell(quote_.guests, 2)}};
    for (const PriceStep& step : quote_.terms.price_steps) {
      inputs.push_back({"", "from " + as_short_decimal(step.from, 2), percent_cell(step.off, 2)});
    }
    add({"Off for so many"}, "the step with the most guests that are reached", std::move(inputs),
        percent_cell(quote_.step_off, 2));
  }

  std::vector<Fact> share_inputs() const {
    std::vector<Fact> out;
    for (const QuoteLine& line : quote_.lines) {
      if (line.guests.own_price) continue;
      out.push_back({"", as_short_decimal(line.guests.count, 2) + " " + line.guests.kind,
                     percent_cell(line.guests.price_share, 2)});
    }
    if (quote_.missing) {
      const PayingGuests& missing = quote_.missing->guests;
      out.push_back({"", as_short_decimal(missing.count, 2) + " " + missing.kind,
                     percent_cell(missing.price_share, 2)});
    }
    return out;
  }

  void add_cost() {
    std::vector<Fact> costs;
    for (const QuoteStep& step : cost_steps(quote_, prices_)) {
      costs.push_back(input(step.name, step.sum));
    }
    add({"Cost of the event", "Cost"}, "the sum of these", std::move(costs),
        money(quote_.cost, prices_));
  }

  void add_outcome() {
    const bool whole = quote_.income == quote_.subtotal;
    const std::string of = whole ? "subtotal" : "what we keep";
    const Fact income = input(of, quote_.income);
    const Fact cost = input("cost", quote_.cost);
    const Fact margin = input("margin", quote_.margin);
    if (!whole) {
      add({income_label}, "subtotal without its tax - what is off extras, without its tax",
          {input("subtotal", quote_.subtotal),
           {"", "left without tax", percent_cell(quote_.net_share, 4)},
           input("off extras", quote_.lost_on_extras)},
          money(quote_.income, prices_));
    }
    add({"Margin"}, of + " - cost", {income, cost}, money(quote_.margin, prices_));
    add({"on the price"}, "margin / " + of, {margin, income}, percent_cell(quote_.margin_share));
    add({"on the cost"}, "margin / cost", {margin, cost}, percent_cell(quote_.mark_up_share));
    add({"Food cost of price", "Food cost"}, "food with Q / " + of,
        {input("food with Q", quote_.food + quote_.q_factor), income},
        percent_cell(quote_.food_share));
  }

  void add_conditions() {
    const Conditions& conditions = quote_.terms.conditions;
    if (!conditions.deposit) return;
    std::vector<Fact> inputs{input("total", quote_.total), input("deposit", quote_.deposit)};
    add_deposit("Deposit", *conditions.deposit, quote_.deposit);
    if (conditions.second_deposit) {
      add_deposit("Second deposit", *conditions.second_deposit, quote_.second_deposit);
      inputs.push_back(input("second deposit", quote_.second_deposit));
    }
    add({"Balance"}, inputs.size() == 2 ? "total - deposit" : "total - deposits", inputs,
        money(quote_.balance, prices_));
  }

  void add_deposit(const std::string& name, const Deposit& deposit, const Money& sum) {
    if (deposit.share) {
      add({name}, "total \u00D7 share",
          {input("total", quote_.total), {"", "share", percent_cell(*deposit.share, 2)}},
          money(sum, prices_));
    } else {
      add({name}, "the sum that was asked", {}, money(sum, prices_));
    }
  }

  const EventCost& cost_;
  const Quote& quote_;
  const PriceList& prices_;
  std::vector<Reason> out_;
};

}  // namespace

std::vector<Reason> reasons_of_quote(const EventCost& cost, const Quote& quote,
                                     const PriceList& prices) {
  return QuoteReasons(cost, quote, prices).all();
}

}  // namespace platewright::card
