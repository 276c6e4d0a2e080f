// Why a line of a quote is what it is.

#include "card/sheets/quote_parts.hpp"
#include "platewright/card/quote_sheet.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/yield/detail/folded_name.hpp"
#include "platewright/yield/detail/folded_name.hpp"

namespace platewright {
namespace {

/// One line with what it is worked out from.
struct Reason {
  std::string name;
  std::string formula;
  std::vector<Fact> inputs;
  Cell result;
};

class Reasons {
 public:
  Reasons(const EventCost& cost, const Quote& quote, const PriceList& prices)
      : cost_(cost), quote_(quote), prices_(prices) {}

  std::vector<Reason> all() {
    for (const auto& step : card::cost_steps(quote_, prices_)) add_step(step);
    for (const auto& step : card::charge_steps(quote_, prices_)) add_step(step);
    add_sums();
    add_outcome();
    for (const PlateCost& dish : cost_.dishes) {
      for (const CostLine& line : dish.lines) add_line(dish, line);
    }
    return std::move(out_);
  }

 private:
  Cell money(const Money& value) const { return card::money(value, prices_); }
  Fact input(const std::string& label, const Money& value) const {
    return {"", label, money(value)};
  }

  void add_step(const card::QuoteStep& step) {
    std::vector<Fact> inputs;
    if (step.name == "Food") {
      for (const PlateCost& dish : cost_.dishes) inputs.push_back(input(dish.recipe, dish.total));
    }
    out_.push_back({step.name, step.working, std::move(inputs), money(step.sum)});
  }

  void add_sums() {
    std::vector<Fact> costs;
    for (const auto& step : card::cost_steps(quote_, prices_)) {
      costs.push_back(input(step.name, step.sum));
    }
    out_.push_back({"Cost", "the sum of these", std::move(costs), money(quote_.cost)});
    out_.push_back(
        {"Target",
         card::rule_text(quote_.terms),
         {input("cost", quote_.cost), input("food with Q", quote_.food + quote_.q_factor)},
         money(quote_.target)});
    std::vector<Fact> price{input("target", quote_.target),
                            {"", "full prices", number_cell(quote_.full_prices, 2)}};
    if (quote_.step_off > 0) price.push_back({"", "off", percent_cell(quote_.step_off, 2)});
    if (const auto& step = quote_.terms.round_up_to) price.push_back(input("step", *step));
    out_.push_back({"Price", "target / full prices, rounded up to the step", std::move(price),
                    money(quote_.price)});
    std::vector<Fact> lines;
    for (const QuoteLine& line : quote_.lines) {
      lines.push_back(input(as_short_decimal(line.guests.count, 2) + " " + line.guests.kind +
                                " at " + money(line.price).text,
                            line.amount));
    }
    if (quote_.minimum_raise > Money()) {
      lines.push_back(input("up to the minimum charge", quote_.minimum_raise));
    }
    out_.push_back({"Subtotal", "the sum of these", std::move(lines), money(quote_.subtotal)});
    std::vector<Fact> charges{input("subtotal", quote_.subtotal)};
    for (const auto& step : card::charge_steps(quote_, prices_)) {
      charges.push_back(input(step.name, step.sum));
    }
    out_.push_back({"Total", "the sum of these", std::move(charges), money(quote_.total)});
  }

  void add_outcome() {
    out_.push_back({"Margin",
                    "subtotal - cost",
                    {input("subtotal", quote_.subtotal), input("cost", quote_.cost)},
                    money(quote_.margin)});
    if (!quote_.break_even) return;
    out_.push_back({"Break-even",
                    "the fewest guests with: guests × (subtotal a guest - cost a guest) >= cost "
                    "that does not follow the guests",
                    {input("subtotal", quote_.subtotal),
                     {"", "guests", number_cell(quote_.guests, 2)},
                     input("cost", quote_.cost)},
                    figure(Rational(*quote_.break_even), quote_.break_even->str(), "guests")});
  }

  void add_line(const PlateCost& dish, const CostLine& line) {
    if (line.to_taste || line.free || !line.used || !line.as_purchased) return;
    Reason reason{line.name, "as bought × AP price; as bought = used / yield", {}, {}};
    reason.inputs.push_back({"", "in", words(dish.recipe)});
    reason.inputs.push_back({"", "used", card::amount_cell(*line.used)});
    reason.inputs.push_back({"", "yield", percent_cell(line.yield)});
    if (!line.yield_name.empty())
      reason.inputs.push_back({"", "whose yield", words(line.yield_name)});
    if (line.purchased)
      reason.inputs.push_back({"", "as bought", card::amount_cell(*line.purchased)});
    reason.inputs.push_back({"", "AP price", card::unit_price_cell(*line.as_purchased, prices_)});
    if (!line.supplier.empty()) reason.inputs.push_back({"", "supplier", words(line.supplier)});
    if (line.credit > Money()) {
      reason.formula += "; less the credit for by-products";
      reason.inputs.push_back(input("credit", line.credit));
    }
    if (line.is_recipe) reason.formula = "cost of one batch × used / what a batch makes";
    reason.result = money(line.cost);
    out_.push_back(std::move(reason));
  }

  const EventCost& cost_;
  const Quote& quote_;
  const PriceList& prices_;
  std::vector<Reason> out_;
};

}  // namespace

Sheet why_sheet(const Event& event, const EventCost& cost, const Quote& quote,
                const std::string& line, const PriceList& prices) {
  const std::string wanted = platewright::detail::folded_name(line);
  std::vector<std::string> names;
  Sheet sheet;
  sheet.kind = "why";
  sheet.title = "Why: " + line;
  sheet.subtitles = {event.name};
  unsigned number = 0;
  for (Reason& reason : Reasons(cost, quote, prices).all()) {
    names.push_back(reason.name);
    if (platewright::detail::folded_name(reason.name) != wanted) continue;
    Facts facts{"line_" + std::to_string(++number), reason.name, {}, ColumnKind::words};
    unsigned inputs = 0;
    for (Fact& fact : reason.inputs) {
      fact.key = "input_" + std::to_string(++inputs);
      facts.facts.push_back(std::move(fact));
    }
    facts.add("formula", "formula", words(reason.formula));
    facts.add("result", "comes to", reason.result);
    sheet.add(std::move(facts));
  }
  if (number == 0) {
    throw Failure(problems::name_unknown("line of the quote", line, names,
                                         "name a line as the quote or a plate cost prints it"));
  }
  return sheet;
}

}  // namespace platewright
