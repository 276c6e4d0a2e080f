// SPDX-License-Identifier: MIT
#include "card/sheets/paper_parts.hpp"

#include "platewright/costing/round_money.hpp"

namespace platewright::card {
namespace {

Cell day_cell(const LocalDay& day) {
  return words(date_text(LocalTime(day)));
}

void add_joined(const std::string& key, const std::string& label,
                const std::vector<std::string>& lines, Facts& facts) {
  std::string text;
  for (const std::string& line : lines) text += (text.empty() ? "" : ", ") + line;
  if (!text.empty()) facts.add(key, label, words(text));
}

void add_fact(const std::string& key, const std::string& label, const std::string& line,
              Facts& facts) {
  if (!line.empty()) facts.add(key, label, words(line));
}

/// `30 days before the event, from 2027-09-09 on`.
std::string cancellation_text(const CancellationStep& step, const std::optional<LocalDay>& served) {
  const std::string days = as_exact(step.days_before);
  std::string out = "Cancelled " + days + (days == "1" ? " day" : " days") + " before or later";
  if (!served) return out;
  const std::chrono::days before(floor_of(step.days_before).convert_to<int>());
  return "Cancelled on " + date_text(LocalTime(*served - before)) + " or later";
}

/// What is due in each case: its share of the total, half up to the minor unit.
void add_cancellation(const Event& event, const Quote& quote, const PriceList& money,
                      Facts& facts) {
  for (const CancellationStep& step : quote.terms.conditions.cancellation) {
    const Money due =
        round_money(quote.total * step.share, minor_unit(quote.currency), Rounding::half_up);
    facts.add("cancelled_" + as_exact(step.days_before), cancellation_text(step, day_of(event)),
              figure_as(percent_text(step.share, 2) +
                            " of the total: " + money_text(plain(due), money.currency),
                        plain(due), as_decimal(plain(due), money.currency.minor_digits()),
                        money.currency.code()));
  }
}

}  // namespace

std::string paper_line(const Paper& paper) {
  std::string out;
  if (!paper.number.empty()) out = "quote " + paper.number;
  if (!paper.client.empty()) out += (out.empty() ? "for " : " for ") + paper.client.front();
  return out;
}

void add_paper_head(const Paper& paper, Sheet& sheet) {
  Facts facts{"paper", "", {}, ColumnKind::words};
  add_fact("quote_number", "Quote", paper.number, facts);
  if (paper.written) facts.add("quote_date", "Date of the quote", day_cell(*paper.written));
  add_joined("caterer", "Caterer", paper.caterer, facts);
  add_joined("client", "Client", paper.client, facts);
  add_fact("contact", "Contact", paper.contact, facts);
  add_joined("venue", "Venue", paper.venue, facts);
  add_fact("service_style", "Service", paper.service_style, facts);
  if (!facts.facts.empty()) sheet.add(std::move(facts));
}

void add_texts(const std::string& key, const std::string& title,
               const std::vector<std::string>& texts, Sheet& sheet) {
  if (!texts.empty()) sheet.add(Paragraphs{key, title, texts});
}

void add_payments(const Quote& quote, const PriceList& money, Sheet& sheet) {
  if (quote.terms.conditions.payments.empty()) return;
  Table table{
      "payments",
      "Payments received",
      {words_column("day", "Day"), words_column("by", "By"), figures_column("amount", "Amount")},
      {},
      {},
      {}};
  for (const Payment& payment : quote.terms.conditions.payments) {
    table.add({day_cell(payment.on), words(payment.by), card::money(payment.sum, money)});
  }
  table.totals.push_back({words("Received"), {}, card::money(quote.received, money)});
  const bool over = quote.due < Money();
  table.totals.push_back({words(over ? "PAID TOO MUCH, TO BE PAID BACK" : "STILL TO BE PAID"),
                          {},
                          card::money(over ? -quote.due : quote.due, money)});
  sheet.add(std::move(table));
}

Facts condition_facts(const Event& event, const Quote& quote, const PriceList& money) {
  Facts facts{"conditions", "Conditions", {}, ColumnKind::words};
  const Conditions& conditions = quote.terms.conditions;
  if (conditions.guarantee_by) {
    facts.add("guarantee_by", "Number of guests settled by", day_cell(*conditions.guarantee_by));
  }
  if (conditions.guaranteed_guests) {
    facts.add("guaranteed_guests", "Guests paid at least",
              number_cell(*conditions.guaranteed_guests, 0));
  }
  if (conditions.deposit) {
    facts.add("deposit", "Deposit", card::money(quote.deposit, money));
    if (conditions.deposit->by) {
      facts.add("deposit_by", "Deposit by", day_cell(*conditions.deposit->by));
    }
    if (conditions.second_deposit) {
      facts.add("second_deposit", "Second deposit", card::money(quote.second_deposit, money));
      if (conditions.second_deposit->by) {
        facts.add("second_deposit_by", "Second deposit by",
                  day_cell(*conditions.second_deposit->by));
      }
    }
    facts.add("balance", "Balance", card::money(quote.balance, money));
  }
  if (conditions.balance_by) {
    facts.add("balance_by", "Balance by", day_cell(*conditions.balance_by));
  }
  if (conditions.valid_until) {
    facts.add("valid_until", "This quote is valid until", day_cell(*conditions.valid_until));
  }
  add_cancellation(event, quote, money, facts);
  return facts;
}

}  // namespace platewright::card
