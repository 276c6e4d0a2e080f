// SPDX-License-Identifier: MIT
#include "card/sheets/order_deliveries.hpp"

#include <map>
#include <utility>

#include "platewright/event/order_warnings.hpp"

namespace platewright::card {
namespace {

/// `Tue, Fri`, in the order of the week from Monday.
std::string weekdays_text(const Supplier& supplier) {
  std::string out;
  // 2027-10-04 is a Monday; any would do.
  const std::chrono::local_days monday =
      std::chrono::local_days(std::chrono::year(2027) / std::chrono::October / std::chrono::day(4));
  for (int i = 0; i < 7; ++i) {
    const std::chrono::local_days day = monday + std::chrono::days(i);
    if (!supplier.comes_on(day)) continue;
    out += (out.empty() ? "" : ", ") + weekday_text(LocalTime(day));
  }
  return out;
}

std::string days_text(int days) {
  return std::to_string(days) + (days == 1 ? " day" : " days");
}

}  // namespace

std::string order_by_text(const SupplierOrder& order) {
  if (!order.order_by) return {};
  std::string out = "order by " + weekday_and_date(*order.order_by);
  const auto& cut_off = order.terms.cut_off;
  if (cut_off && cut_off->hour) out += " " + clock_text(*order.order_by + *cut_off->hour);
  return out;
}

std::string delivery_text(const SupplierOrder& order, const LocalTime& day) {
  const bool planned = order.terms.names_days() || order.terms.one_delivery;
  return (planned ? "there on " : "there by ") + weekday_and_date(day);
}

std::vector<std::string> contact_lines(const SupplierOrder& order) {
  const Supplier& terms = order.terms;
  std::vector<std::string> out;
  std::string reached = terms.telephone.empty() ? "" : "Telephone " + terms.telephone;
  if (!terms.address.empty()) reached += (reached.empty() ? "" : "; ") + terms.address;
  if (!reached.empty()) out.push_back(std::move(reached));
  if (!terms.delivers.empty()) out.push_back("Delivers on " + weekdays_text(terms) + ".");
  return out;
}

std::vector<std::string> waiting_notes(const SupplierOrder& order) {
  // By the day on which they come and where they are put.
  std::map<std::pair<LocalTime, std::string>, std::string> goods;
  for (const OrderLine& line : order.lines) {
    if (line.days_early() == 0) continue;
    const std::string place = line.keeping.at
                                  ? std::string(where_kept(*line.keeping.at))
                                  : std::string("waiting, where the book does not say,");
    std::string& names = goods[{*line.deliver_on, place}];
    names += (names.empty() ? "" : "; ") + line.ingredient + " " + days_text(line.days_early());
  }
  std::vector<std::string> out;
  for (const auto& [key, names] : goods) {
    std::string text = key.second + " from " + weekday_and_date(key.first) + ": " + names + ".";
    text.front() = static_cast<char>(text.front() - 'a' + 'A');
    out.push_back(std::move(text));
  }
  return out;
}

Box order_box(const Order& order, const PriceList& prices,
              const std::optional<LocalTime>& ordered) {
  Box out{"to_settle", "To settle before ordering", {}};
  const ProblemList problems = order_warnings(order, prices, {}, ordered);
  for (const Problem& problem : problems.all()) {
    std::string text = problem.found + ". Wanted: " + problem.expected + ". ";
    if (text.front() >= 'a' && text.front() <= 'z') {
      text.front() = static_cast<char>(text.front() - 'a' + 'A');
    }
    out.lines.push_back(text + "What would do: " + problem.remedy + ".");
  }
  return out;
}

}  // namespace platewright::card
