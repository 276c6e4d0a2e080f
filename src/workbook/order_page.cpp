// SPDX-License-Identifier: MIT
#include "workbook/order_page.hpp"

#include "platewright/event/order_warnings.hpp"
#include "workbook/rounding_formulas.hpp"

namespace platewright::pages {
namespace {

struct OrderColumn {
  enum : unsigned {
    name,
    needed,
    there,
    to_buy,
    unit,
    holds,
    least,
    packs,
    ordered,
    left,
    pack_cost,
    exact,
    remainder,
    rounded,
    planned,
    left_value,
    deposit,
    delivery,
    day
  };
};

constexpr RoundedColumns order_columns{OrderColumn::exact, OrderColumn::remainder,
                                       OrderColumn::rounded};

/// What is in store or left over from cuts, in the pack's unit.
Rational already_there(const OrderLine& line) {
  Rational out;
  if (line.in_store) out += in_unit(*line.in_store, line.need.unit).number;
  if (line.from_by_products) out += in_unit(*line.from_by_products, line.need.unit).number;
  return out;
}

class OrderPage {
 public:
  OrderPage(Page& page, const Currency& currency, const PricePlaces& prices)
      : page_(page), currency_(currency), prices_(prices) {}

  void write(const Order& order) {
    for (const SupplierOrder& supplier : order.suppliers) write_supplier(supplier);
    page_.headings({"Together", "", "", "", "", "", "", "", "", "", "", "Cost, exact", "", "COST",
                    "As planned", "Left, worth", "Deposits", "Deliveries"});
    const unsigned first = page_.row();
    for (std::size_t i = 0; i < totals_.size(); ++i) repeat(order.suppliers[i], totals_[i]);
    const std::string goods =
        write_sum("Goods", column_sum(OrderColumn::exact, first), order.total);
    const unsigned last = page_.row() - 2;
    const std::string left = column_sum(OrderColumn::left_value, first, last);
    write_sum("  of it used", goods + "-" + left, order.used_value);
    write_sum("  of it left over", left, order.left_over_value);
    const std::string deposits = write_sum(
        "Deposits, which come back", column_sum(OrderColumn::deposit, first, last), order.deposit);
    const std::string deliveries = write_sum(
        "Deliveries", column_sum(OrderColumn::delivery, first, last), order.delivery_charges);
    write_sum("To pay", goods + "+" + deposits + "+" + deliveries, order.to_pay());
  }

 private:
  struct LineRows {
    unsigned first;
    unsigned last;
  };

  /// The sums of one supplier.
  struct Totals {
    CellPlace goods;
    CellPlace left_over;
    CellPlace deposits;
    Money left_over_value;
    std::optional<CellPlace> deliveries;
  };

  void repeat(const SupplierOrder& order, const Totals& totals) {
    page_.words(OrderColumn::name, order.supplier.empty() ? "No supplier named" : order.supplier);
    page_.formula(OrderColumn::exact, page_.at(totals.goods), order.total, CellLook::price);
    page_.formula(OrderColumn::left_value, page_.at(totals.left_over), totals.left_over_value,
                  CellLook::price);
    page_.formula(OrderColumn::deposit, page_.at(totals.deposits), order.deposit, CellLook::money);
    if (totals.deliveries) {
      page_.formula(OrderColumn::delivery, page_.at(*totals.deliveries), order.delivery_charges,
                    CellLook::money);
    }
    page_.next();
  }

  Rational rounded_figure(const Money& value) const {
    return plain(round_money(value, minor_unit(currency_), Rounding::half_up));
  }

  /// A sum with its rounding and what was planned; gives the exact cell as formulas name it.
  std::string write_sum(const std::string& label, const std::string& sum, const Money& value) {
    page_.words(OrderColumn::name, label);
    const auto cell =
        page_.formula(OrderColumn::exact, sum, value, CellLook::price, CellRole::total);
    page_.formula(OrderColumn::rounded, half_up_formula(page_.at(cell), currency_),
                  rounded_figure(value), CellLook::money, CellRole::total);
    page_.number(OrderColumn::planned, rounded_figure(value), CellLook::money);
    page_.next();
    return page_.at(cell);
  }

  std::string cells(unsigned column, const LineRows& rows) const {
    const std::string sheet = page_.here(0).sheet;
    return page_.range({sheet, rows.first, column}, {sheet, rows.last, column});
  }

  /// Of the rows from `first` to `last`, which may be none.
  std::string column_sum(unsigned column, unsigned first, unsigned last) const {
    if (last < first) return "0";
    return "SUM(" + cells(column, {first, last}) + ")";
  }
  /// To the row before the one under way.
  std::string column_sum(unsigned column, unsigned first) const {
    return column_sum(column, first, page_.row() - 1);
  }

  void write_supplier(const SupplierOrder& order) {
    page_.words(0, order.supplier.empty() ? "No supplier named" : order.supplier,
                CellLook::heading);
    page_.next();
    page_.headings({"Goods", "Needed", "There already", "To buy", "", "A pack holds", "At least",
                    "PACKS", "Ordered", "Left", "A pack costs", "Cost, exact", "Remainder", "COST",
                    "As planned", "Left, worth", "Deposits", "", "There on"});
    const unsigned first = page_.row();
    std::vector<std::optional<Money>> costs;
    Totals totals;
    for (const OrderLine& line : order.lines) {
      write_line(line);
      costs.push_back(line.cost);
      totals.left_over_value += line.left_over_value;
      page_.next();
    }
    page_.words(OrderColumn::name, "Total");
    const LineRows lines{first, page_.row() - 1};
    totals.goods = page_.here(OrderColumn::exact);
    round_lines(page_, first, costs, order_columns, currency_);
    page_.number(OrderColumn::planned, rounded_figure(order.total), CellLook::money);
    totals.left_over =
        page_.formula(OrderColumn::left_value, column_sum(OrderColumn::left_value, first),
                      totals.left_over_value, CellLook::price, CellRole::total);
    totals.deposits = page_.formula(OrderColumn::deposit, column_sum(OrderColumn::deposit, first),
                                    order.deposit, CellLook::money, CellRole::total);
    page_.next();
    write_terms_of(order, lines, totals);
    totals_.push_back(totals);
    page_.next();
  }

  /// What this supplier asks for beside the goods.
  void write_terms_of(const SupplierOrder& order, const LineRows& lines, Totals& totals) {
    const auto asked = prices_.suppliers.find(order.supplier);
    if (asked == prices_.suppliers.end()) return;
    if (asked->second.delivery_charge) {
      totals.deliveries = write_deliveries(order, *asked->second.delivery_charge);
    }
    if (!asked->second.minimum) return;
    for (const Delivery& delivery : order.deliveries) {
      write_minimum(delivery, *asked->second.minimum, lines);
    }
  }

  CellPlace write_deliveries(const SupplierOrder& order, const CellPlace& charge) {
    page_.words(OrderColumn::name, "Deliveries, at so much each");
    const auto count = page_.number(OrderColumn::packs,
                                    Rational(static_cast<std::int64_t>(order.deliveries.size())));
    const auto each = page_.formula(OrderColumn::pack_cost, page_.at(charge),
                                    order.terms.delivery_charge, CellLook::price);
    const auto out = page_.formula(OrderColumn::exact, page_.at(count) + "*" + page_.at(each),
                                   order.delivery_charges, CellLook::price);
    page_.next();
    return out;
  }

  /// What a delivery lacks to the least that this supplier comes for.
  void write_minimum(const Delivery& delivery, const CellPlace& least, const LineRows& lines) {
    page_.words(OrderColumn::name, "Below the least delivered for, by");
    const auto day = page_.words(OrderColumn::day, day_text(delivery.on));
    const std::string goods = "SUMIF(" + cells(OrderColumn::day, lines) + "," + page_.at(day) +
                              "," + cells(OrderColumn::exact, lines) + ")";
    const auto lacks =
        page_.formula(OrderColumn::exact, "MAX(0," + page_.at(least) + "-" + goods + ")",
                      delivery.below_minimum, CellLook::price);
    page_.formula(OrderColumn::rounded, half_up_formula(page_.at(lacks), currency_),
                  rounded_figure(delivery.below_minimum), CellLook::money);
    page_.next();
  }

  /// `Fri 2027-10-08`, which a spreadsheet takes for words.
  static std::string day_text(const std::optional<LocalTime>& day) {
    return day ? weekday_and_date(*day) : "no day known";
  }

  void write_line(const OrderLine& line) {
    const GoodsPlaces& goods = prices_.goods.at(line.ingredient);
    page_.words(OrderColumn::name, line.ingredient);
    page_.words(OrderColumn::day, day_text(line.deliver_on));
    page_.words(OrderColumn::unit, line.need.unit.symbol_for(line.need.number));
    const Rational known = already_there(line);
    const auto all = page_.number(OrderColumn::needed, line.need.number + known);
    const auto have = page_.number(OrderColumn::there, known);
    const auto buy =
        page_.formula(OrderColumn::to_buy, "MAX(0," + page_.at(all) + "-" + page_.at(have) + ")",
                      line.need.number, CellLook::number);
    const auto content = page_.formula(OrderColumn::holds, page_.at(goods.holds),
                                       line.purchase.content.number, CellLook::number);
    const auto fewest =
        page_.number(OrderColumn::least, line.purchase.least ? Rational(*line.purchase.least) : 0);
    const auto count =
        page_.formula(OrderColumn::packs,
                      "MAX(" + page_.at(fewest) + "," +
                          whole_up_formula(page_.at(buy) + "/" + page_.at(content)) + ")",
                      Rational(line.packs), CellLook::number);
    write_cost(line, goods, buy, content, count);
  }

  void write_cost(const OrderLine& line, const GoodsPlaces& goods, const CellPlace& buy,
                  const CellPlace& content, const CellPlace& count) {
    const auto all = page_.formula(OrderColumn::ordered, page_.at(count) + "*" + page_.at(content),
                                   line.ordered.number, CellLook::number);
    const auto rest = page_.formula(OrderColumn::left, page_.at(all) + "-" + page_.at(buy),
                                    line.left_over.number, CellLook::number);
    const auto price = page_.formula(OrderColumn::pack_cost, page_.at(goods.pack_cost),
                                     line.purchase.price, CellLook::price);
    page_.formula(OrderColumn::exact, page_.at(count) + "*" + page_.at(price), line.cost,
                  CellLook::price);
    page_.formula(OrderColumn::left_value,
                  page_.at(rest) + "/" + page_.at(content) + "*" + page_.at(price),
                  line.left_over_value, CellLook::price);
    if (!goods.deposit) return;
    page_.formula(OrderColumn::deposit, page_.at(count) + "*" + page_.at(*goods.deposit),
                  line.deposit, CellLook::money);
  }

  Page& page_;
  const Currency& currency_;
  const PricePlaces& prices_;
  std::vector<Totals> totals_;  ///< of each supplier
};

}  // namespace

void write_order(Page& page, const EventPlan& plan, const Order& order, const PricePlaces& prices) {
  page.begin("Order: " + plan.event().name,
             {"Packs = to buy / what a pack holds, rounded up, and no fewer than the supplier "
              "delivers. \"As planned\" is what the program found and does not follow."});
  OrderPage(page, plan.prices().currency, prices).write(order);
}

}  // namespace platewright::pages
