#include <algorithm>

#include "platewright/costing/round_money.hpp"
#include "workbook/prices_page.hpp"

namespace platewright::pages {
namespace {

/// The column of the prices above, and one more for what comes on top of a wage.
constexpr unsigned term_column = 5;
constexpr unsigned beside_term = 6;

CellPlace term(Page& page, const std::string& label, const Rational& value, CellLook look) {
  page.words(0, label);
  const CellPlace out = page.input(term_column, value, look);
  page.next();
  return out;
}

CellPlace share_term(Page& page, const std::string& label, const Rational& value) {
  return term(page, label, value, CellLook::share);
}

CellPlace sum_term(Page& page, const std::string& label, const Money& value) {
  return term(page, label, plain(value), CellLook::money);
}

std::string rule_label(PricingRule rule) {
  switch (rule) {
    case PricingRule::margin:
      return "Margin, share of the price";
    case PricingRule::mark_up:
      return "Mark-up, share of the cost";
    case PricingRule::food_cost:
      return "Food cost, share of the price";
  }
  return {};
}

std::vector<LabourPlaces> write_labour(Page& page, const QuoteTerms& terms) {
  std::vector<LabourPlaces> out;
  if (terms.labour.empty()) return out;
  page.headings({"Labour", "", "", "", "", "An hour", "Benefits"});
  for (const LabourLine& labour : terms.labour) {
    page.words(0, labour.role);
    const Money hourly = labour.rate * Duration::of(1, units::hour);
    const auto rate = page.input(term_column, plain(hourly), CellLook::price);
    const auto benefits = page.input(beside_term, labour.benefits, CellLook::share);
    out.push_back({rate, benefits});
    page.next();
  }
  page.next();
  return out;
}

std::vector<CellPlace> write_extras(Page& page, const QuoteTerms& terms) {
  std::vector<CellPlace> out;
  if (terms.extras.empty()) return out;
  page.headings({"Extras", "", "", "", "", "Price", "for"});
  for (const ExtraLine& extra : terms.extras) {
    page.words(beside_term, extra.per_guest ? "a guest" : "the event");
    out.push_back(term(page, extra.name, plain(extra.price), CellLook::price));
  }
  page.next();
  return out;
}

/// By the number of guests; of two of one number the first counts, as in the quote.
std::optional<StepPlaces> write_steps(Page& page, std::vector<PriceStep> steps) {
  if (steps.empty()) return std::nullopt;
  std::stable_sort(steps.begin(), steps.end(), [](const PriceStep& left, const PriceStep& right) {
    return left.from < right.from;
  });
  steps.erase(std::unique(steps.begin(), steps.end(),
                          [](const PriceStep& left, const PriceStep& right) {
                            return left.from == right.from;
                          }),
              steps.end());
  page.headings({"Price steps", "", "", "", "", "From guests", "Off"});
  StepPlaces out;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    out.last_from = page.input(term_column, steps[i].from, CellLook::number);
    out.last_off = page.input(beside_term, steps[i].off, CellLook::share);
    if (i == 0) {
      out.first_from = out.last_from;
      out.first_off = out.last_off;
    }
    page.next();
  }
  page.next();
  return out;
}

void write_charges(Page& page, const QuoteTerms& terms, TermPlaces& out) {
  if (terms.service) out.service = share_term(page, "Service charge", terms.service->share);
  if (terms.gratuity) out.gratuity = share_term(page, "Gratuity", terms.gratuity->share);
  out.tax = share_term(page, "Tax", terms.tax[0].share);
  const auto& deposit = terms.conditions.deposit;
  if (!deposit) return;
  out.deposit = deposit->sum ? sum_term(page, "Deposit", *deposit->sum)
                             : share_term(page, "Deposit", deposit->share.value_or(0));
}

}  // namespace

TermPlaces write_terms(Page& page, const QuoteTerms& terms, const Currency& currency) {
  TermPlaces out;
  out.labour = write_labour(page, terms);
  out.extras = write_extras(page, terms);
  out.steps = write_steps(page, terms.price_steps);
  page.headings({"Terms of the quote", "", "", "", "", "Share or sum"});
  out.q_factor = share_term(page, "Q factor, of the food", terms.q_factor);
  out.overhead = share_term(page, "Overhead, of food, labour and extras", terms.overhead);
  out.overhead_of_event = sum_term(page, "Overhead of the event", terms.overhead_of_event);
  if (terms.contingency > 0) {
    out.contingency = share_term(page, "Contingency, of all costs", terms.contingency);
  }
  out.rule_share = share_term(page, rule_label(terms.rule), terms.rule_share);
  out.price_step =
      sum_term(page, "Step of the price", terms.round_up_to.value_or(minor_unit(currency)));
  if (terms.agreed_price) out.agreed_price = sum_term(page, "Price agreed", *terms.agreed_price);
  if (terms.minimum_charge)
    out.minimum_charge = sum_term(page, "Minimum charge", *terms.minimum_charge);
  write_charges(page, terms, out);
  return out;
}

}  // namespace platewright::pages
