// SPDX-License-Identifier: MIT
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

/// Of guests who pay no share of the full price.
std::map<std::string, CellPlace> write_own_prices(Page& page,
                                                  const std::vector<GuestKind>& guests) {
  std::map<std::string, CellPlace> out;
  for (const GuestKind& kind : guests) {
    if (!kind.own_price) continue;
    if (out.empty()) page.headings({"Prices of their own", "", "", "", "", "A guest"});
    out.emplace(kind.name, sum_term(page, kind.name, *kind.own_price));
  }
  if (!out.empty()) page.next();
  return out;
}

CellPlace share_or_sum(Page& page, const std::string& label, const std::optional<Rational>& share,
                       const std::optional<Money>& sum) {
  return sum ? sum_term(page, label, *sum) : share_term(page, label, share.value_or(0));
}

std::vector<CellPlace> write_discounts(Page& page, const QuoteTerms& terms) {
  std::vector<CellPlace> out;
  if (terms.discounts.empty()) return out;
  page.headings({"Discounts", "", "", "", "", "Share or sum", "off"});
  for (const Discount& discount : terms.discounts) {
    page.words(beside_term, discount.of.empty() ? "what the guests pay" : discount.of);
    out.push_back(share_or_sum(page, discount.name, discount.share, discount.sum));
  }
  page.next();
  return out;
}

void write_charges(Page& page, const QuoteTerms& terms, TermPlaces& out) {
  if (terms.service) out.service = share_term(page, "Service charge", terms.service->share);
  if (terms.gratuity) out.gratuity = share_term(page, "Gratuity", terms.gratuity->share);
  for (const TaxRate& rate : terms.tax.all()) {
    std::string label = rate.name.empty() ? "Tax" : "Tax, " + rate.name;
    if (terms.prices_include_tax) label += ", in the prices";
    out.tax.push_back(share_term(page, label, rate.share));
  }
  const auto deposit = [&](const std::string& label, const std::optional<Deposit>& asked) {
    return asked ? std::optional(share_or_sum(page, label, asked->share, asked->sum))
                 : std::nullopt;
  };
  out.deposit = deposit("Deposit", terms.conditions.deposit);
  out.second_deposit = deposit("Second deposit", terms.conditions.second_deposit);
}

}  // namespace

TermPlaces write_terms(Page& page, const Event& event, const Currency& currency) {
  const QuoteTerms& terms = event.terms;
  TermPlaces out;
  out.labour = write_labour(page, terms);
  out.extras = write_extras(page, terms);
  out.own_prices = write_own_prices(page, event.guests);
  out.steps = write_steps(page, terms.price_steps);
  out.discounts = write_discounts(page, terms);
  page.headings({"Terms of the quote", "", "", "", "", "Share or sum"});
  out.q_factor = share_term(page, "Q factor, of the food", terms.q_factor);
  out.overhead = share_term(page, "Overhead, of all before it", terms.overhead);
  out.overhead_of_event = sum_term(page, "Overhead of the event", terms.overhead_of_event);
  if (terms.contingency > 0) {
    out.contingency = share_term(page, "Contingency, of all costs", terms.contingency);
  }
  out.rule_share = share_term(page, rule_label(terms.rule), terms.rule_share);
  out.price_step =
      sum_term(page, "Step of the price", terms.round_up_to.value_or(minor_unit(currency)));
  if (terms.agreed_price) out.agreed_price = sum_term(page, "Price agreed", *terms.agreed_price);
  if (terms.minimum_price) {
    out.minimum_price = sum_term(page, "Minimum for a guest", *terms.minimum_price);
  }
  if (terms.minimum_charge) {
    out.minimum_charge = sum_term(page, "Minimum charge", *terms.minimum_charge);
  }
  write_charges(page, terms, out);
  return out;
}

}  // namespace platewright::pages
