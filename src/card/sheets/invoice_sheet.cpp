// SPDX-License-Identifier: MIT
// What is to be paid after an event.

#include "card/sheets/paper_parts.hpp"
#include "card/sheets/quote_parts.hpp"
#include "platewright/card/quote_sheet.hpp"

namespace platewright {
namespace {

/// Each kind as it was quoted and as it came, and how many pay at least.
Table came_table(const Invoice& invoice) {
  Table table{"guests",
              "Who came",
              {words_column("guests", "Guests"), figures_column("quoted", "Quoted"),
               figures_column("came", "Came")},
              {},
              {},
              {}};
  Rational quoted_paying;
  Rational came_paying;
  for (std::size_t i = 0; i < invoice.billed.lines.size(); ++i) {
    const PayingGuests& quoted = invoice.quoted.lines[i].guests;
    const PayingGuests& came = invoice.billed.lines[i].guests;
    table.add({words(came.kind), number_cell(quoted.count, 0), number_cell(came.count, 0)});
    if (!pays(came)) continue;
    quoted_paying += quoted.count;
    came_paying += came.count;
  }
  table.totals.push_back(
      {words("of them pay"), number_cell(quoted_paying, 0), number_cell(came_paying, 0)});
  if (const auto& guaranteed = invoice.billed.terms.conditions.guaranteed_guests) {
    table.totals.push_back({words("guaranteed to pay"), number_cell(*guaranteed, 0), {}});
  }
  return table;
}

/// Where nothing was paid the bill's total is due; else the table of payments says what is.
Facts due_facts(const Event& event, const Invoice& invoice, const PriceList& money) {
  Facts facts{"due", "", {}};
  facts.add("as_quoted", "Total as quoted", card::money(invoice.quoted.total, money));
  const Money due = std::max(invoice.billed.due, Money());
  facts.add("due", "TO BE PAID", money_cell(card::plain(due), money.currency));
  if (event.invoice->due_by) {
    facts.add("due_by", "by", words(date_text(LocalTime(*event.invoice->due_by))));
  }
  return facts;
}

}  // namespace

Sheet invoice_sheet(const Event& event, const Invoice& invoice) {
  const PriceList money{invoice.billed.currency};
  Sheet sheet(SheetKind::invoice);
  sheet.title = "Invoice " + event.invoice->number + ": " + event.name;
  sheet.date = date_text(LocalTime(event.invoice->written));
  if (const std::string served = card::served_text(event); !served.empty()) {
    sheet.subtitles.push_back(served);
  }
  sheet.subtitles.push_back("all prices in " + money.currency.code());
  card::add_paper_head(event.paper, sheet);
  sheet.add(came_table(invoice));
  sheet.add(card::bill_table(invoice.billed, money, "The bill"));
  card::add_payers(invoice.billed, money, sheet);
  card::add_payments(invoice.billed, money, sheet);
  sheet.add(due_facts(event, invoice, money));
  sheet.add(Paragraphs{"note",
                       "",
                       {"What an invoice must show, and how tax is rounded, is the "
                        "law's business where the caterer is taxed."}});
  return sheet;
}

}  // namespace platewright
