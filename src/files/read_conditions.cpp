// SPDX-License-Identifier: MIT
// What a client signs besides the price: dates, deposits, cancellation.

#include "files/terms_of_quote.hpp"
#include "platewright/costing/quote_checks.hpp"
#include "platewright/event/local_time.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/catalogue/quotes.hpp"

namespace platewright::reading {

bool says_share(std::string_view what, const std::string& text) {
  if (text.find('%') != std::string::npos) return true;
  const Rational number = read_number(text);
  if (number < 1) return true;
  if (number <= 100 && text.find('.') == std::string::npos) {
    throw Failure(problems::share_or_sum_unclear(what, text));
  }
  return false;
}

namespace {

std::optional<LocalDay> read_day(yaml::Fields& fields, std::string_view key) {
  return fields.read<LocalDay>(key, [](const std::string& text) { return read_local_day(text); });
}

/// A share or a sum, and its day, whose key is that of the deposit with ` by`.
std::optional<Deposit> read_deposit(yaml::Fields& fields, const std::string& key) {
  auto out = fields.read<Deposit>(key, [](const std::string& text) {
    Deposit deposit;
    if (says_share("a deposit", text)) {
      deposit.share = read_share(text);
      platewright::check_share("a deposit", *deposit.share);
    } else {
      deposit.sum = read_money(text);
    }
    return deposit;
  });
  const auto by = read_day(fields, key + " by");
  if (out) out->by = by;
  return out;
}

/// `{30 days before: 25 %, 7 days before: 80 %}`.
void read_cancellation(yaml::Fields& fields, Conditions& out) {
  for (const TextPair& pair : text_pairs(fields, "cancellation")) {
    fields.context().problems.attempt(pair.value_place, [&] {
      const SplitText days = split_at(pair.key, " day");
      const bool named = days.after == "s before" || days.after == "before";
      if (!named) throw Failure(problems::cancellation_malformed(pair.key));
      const CancellationStep step{read_number(days.before), read_share(pair.value)};
      if (!is_whole(step.days_before) || step.days_before > 1000) {
        throw Failure(problems::cancellation_malformed(pair.key));
      }
      platewright::check_share("what a cancellation costs", step.share);
      for (const CancellationStep& other : out.cancellation) {
        if (other.days_before > step.days_before && other.share < step.share) continue;
        throw Failure(problems::cancellation_not_rising(pair.key));
      }
      out.cancellation.push_back(step);
    });
  }
}

/// Reports `key` where its day lies after `last`, which is `what`.
void check_day(yaml::Fields& fields, std::string_view key, const std::optional<LocalDay>& day,
               std::string_view what, const std::optional<LocalDay>& last) {
  if (!day || !last || *day <= *last) return;
  fields.context().problems.add(at(problems::dates_out_of_order(key, date_text(LocalTime(*day)),
                                                                what, date_text(LocalTime(*last))),
                                   fields.place(*fields.find(key), key)));
}

}  // namespace

void read_conditions(yaml::Fields& fields, Conditions& out) {
  out.valid_until = read_day(fields, "valid until");
  out.guarantee_by = read_day(fields, "guarantee by");
  out.guaranteed_guests = fields.read<Rational>("guaranteed guests", [](const std::string& text) {
    const Rational count = read_number(text);
    if (!is_whole(count)) throw Failure(problems::number_malformed(text, "guests come whole"));
    return count;
  });
  out.deposit = read_deposit(fields, "deposit");
  out.second_deposit = read_deposit(fields, "second deposit");
  if (out.second_deposit && !out.deposit) fields.need("deposit", "deposit: 30 %");
  out.balance_by = read_day(fields, "balance by");
  read_cancellation(fields, out);
}

void check_days(yaml::Fields& fields, const Event& event) {
  const Conditions& conditions = event.terms.conditions;
  const std::optional<LocalDay> served = day_of(event);
  std::optional<LocalDay> deposit;
  if (conditions.deposit) deposit = conditions.deposit->by;
  check_day(fields, "quote date", event.paper.written, "the event", served);
  check_day(fields, "quote date", event.paper.written, "the last day on which it is valid",
            conditions.valid_until);
  check_day(fields, "valid until", conditions.valid_until, "the event", served);
  check_day(fields, "guarantee by", conditions.guarantee_by, "the event", served);
  check_day(fields, "deposit by", deposit, "the event", served);
  check_day(fields, "deposit by", deposit, "the balance", conditions.balance_by);
  if (!conditions.second_deposit) return;
  const auto& second = conditions.second_deposit->by;
  check_day(fields, "deposit by", deposit, "the second deposit", second);
  check_day(fields, "second deposit by", second, "the event", served);
  check_day(fields, "second deposit by", second, "the balance", conditions.balance_by);
}

}  // namespace platewright::reading
