// SPDX-License-Identifier: MIT
// A million plates costed again after every price has changed: against one reading of as much
// memory, and against plain fractions. With `--results FILE` it measures in pairs and writes the
// page; else it is an ordinary Google Benchmark.

#include <benchmark/benchmark.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <fstream>
#include <functional>
#include <iomanip>
#include <memory>
#include <string>
#include <thread>

#include "benchmark/many_plates.hpp"

using namespace platewright;
using namespace platewright::benchmarks;

namespace {

/// What all measurements share. Two sets of prices take turns, so that each costing is one after a
/// change of every price.
struct Data {
  explicit Data(std::size_t packs) : plates(many_plates(packs)) {}

  ManyPlates plates;
  PlatePrices prices[2] = {PlatePrices(plates.prices, Currency("USD")),
                           PlatePrices(raised(plates.prices), Currency("USD"))};
  std::vector<std::int64_t> costs = std::vector<std::int64_t>(ManyPlates::plates);
  std::size_t turn = 0;

  static std::vector<Money> raised(std::vector<Money> prices) {
    for (std::size_t i = 0; i < prices.size(); ++i) {
      const auto cents = static_cast<std::int64_t>(i % 97) + 1;
      prices[i] += Money::of(fraction(cents, 100), units::currency_unit);
    }
    return prices;
  }
  const PlatePrices& next_prices() { return prices[turn++ % 2]; }
};

/// More than the nearest caches hold the prices of, and fewer.
constexpr std::size_t many_packs = 200'000;
constexpr std::size_t few_packs = 5'000;

/// One at a time: each is two gigabytes.
std::unique_ptr<Data>& kept_data() {
  static std::unique_ptr<Data> kept;
  return kept;
}
Data& data() {
  if (!kept_data()) kept_data() = std::make_unique<Data>(many_packs);
  return *kept_data();
}

/// What is read to compare with. The same for all data, and taken first: some memory is a third
/// slower than other, and a slow reading would flatter what stands beside it.
const std::vector<std::uint64_t>& as_many_bytes() {
  static const std::vector<std::uint64_t> memory(ManyPlates::table_bytes / sizeof(std::uint64_t),
                                                 1);
  return memory;
}

/// Reads all of it, 64 bytes at a time, into sums that do not wait for each other.
std::uint64_t read_once(std::span<const std::uint64_t> memory) {
  using Vector __attribute__((vector_size(64))) = std::uint64_t;
  constexpr std::size_t step = sizeof(Vector) / sizeof(std::uint64_t);
  Vector sums[4] = {};
  for (std::size_t i = 0; i + 4 * step <= memory.size(); i += 4 * step) {
    for (std::size_t j = 0; j < 4; ++j) {
      Vector next;
      __builtin_memcpy(&next, memory.data() + i + j * step, sizeof next);
      sums[j] += next;
    }
  }
  std::uint64_t out = 0;
  for (const Vector& sum : sums) {
    for (std::size_t i = 0; i < step; ++i) out += sum[i];
  }
  return out;
}

/// The measurements go part by part, so that a machine that does other things meanwhile leaves some
/// of them alone. All parts are far more than a cache holds: each is read from memory.
constexpr std::size_t parts = 4;

/// The whole numbers from `part` on of `count`, for each of `parts`.
template <class Value>
std::span<Value> part_of(std::span<Value> all, std::size_t part) {
  const std::size_t begin = all.size() * part / parts;
  return all.subspan(begin, all.size() * (part + 1) / parts - begin);
}

void read_part(std::size_t part) {
  const std::span<const std::uint64_t> memory = as_many_bytes();
  std::uint64_t sum = read_once(part_of(memory, part));
  benchmark::DoNotOptimize(sum);
}

void recost_plates(const PlatePrices& prices, std::span<std::int64_t> costs) {
  const auto first = static_cast<std::size_t>(costs.data() - data().costs.data());
  data().plates.table.recost(prices, first, costs);
}

void recost_part(const PlatePrices& prices, std::size_t part) {
  recost_plates(prices, part_of(std::span(data().costs), part));
}

void recost_part_on_two_cores(const PlatePrices& prices, std::size_t part) {
  const std::span<std::int64_t> costs = part_of(std::span(data().costs), part);
  const std::size_t half = costs.size() / 2;
  std::thread other([&] { recost_plates(prices, costs.subspan(half)); });
  recost_plates(prices, costs.first(half));
  other.join();
}

double milliseconds(const std::function<void()>& work) {
  const auto before = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - before)
      .count();
}

/// As one writes it down, without a table: a sum of fractions for each plate, rounded half up, here
/// of as many plates as there are shares.
template <class Number, class RoundHalfUp>
std::vector<std::int64_t> plain_costs(const std::vector<Number>& shares,
                                      const std::vector<Number>& prices, RoundHalfUp&& rounded) {
  std::vector<std::int64_t> out;
  out.reserve(shares.size() / ManyPlates::lines);
  for (std::size_t i = 0; i < shares.size(); i += ManyPlates::lines) {
    Number sum = 0;
    for (std::size_t j = i; j < i + ManyPlates::lines; ++j) {
      sum += shares[j] * prices[data().plates.shares[j].price];
    }
    out.push_back(rounded(sum));
  }
  return out;
}

/// The library's numbers.
std::vector<std::int64_t> plain_costs_in_ours(std::size_t plates, double& time) {
  std::vector<Rational> shares;
  std::vector<Rational> prices;
  for (std::size_t i = 0; i < plates * ManyPlates::lines; ++i) {
    shares.push_back(data().plates.shares[i].share);
  }
  for (std::size_t i = 0; i < data().prices[0].size(); ++i) {
    prices.push_back(data().prices[0].exact(i));
  }
  std::vector<std::int64_t> out;
  time = milliseconds([&] {
    out = plain_costs(shares, prices, [](const Rational& sum) {
      return steps_of(sum, 1, Rounding::half_up).convert_to<std::int64_t>();
    });
  });
  return out;
}

/// Boost's, as they are.
std::vector<std::int64_t> plain_costs_in_boosts(std::size_t plates, double& time) {
  using Fraction = boost::multiprecision::cpp_rational;
  const auto as_boosts = [](const Rational& value) {
    return Fraction(numerator_of(value), denominator_of(value));
  };
  std::vector<Fraction> shares;
  std::vector<Fraction> prices;
  for (std::size_t i = 0; i < plates * ManyPlates::lines; ++i) {
    shares.push_back(as_boosts(data().plates.shares[i].share));
  }
  for (std::size_t i = 0; i < data().prices[0].size(); ++i) {
    prices.push_back(as_boosts(data().prices[0].exact(i)));
  }
  std::vector<std::int64_t> out;
  time = milliseconds([&] {
    out = plain_costs(shares, prices, [](const Fraction& sum) {
      const boost::multiprecision::cpp_int doubled = 2 * numerator(sum) + denominator(sum);
      return boost::multiprecision::cpp_int(doubled / (2 * denominator(sum)))
          .convert_to<std::int64_t>();
    });
  });
  return out;
}

void read_bytes(benchmark::State& state) {
  for (auto _ : state) {
    for (std::size_t part = 0; part < parts; ++part) read_part(part);
  }
}
void recost_plates_on_one_core(benchmark::State& state) {
  for (auto _ : state) recost_plates(data().next_prices(), data().costs);
}
BENCHMARK(read_bytes)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(recost_plates_on_one_core)->Unit(benchmark::kMillisecond)->UseRealTime();

using Work = void (*)(const PlatePrices& prices, std::size_t part);

/// Of each part, reading and working, one right after the other, again and again.
class Pairs {
 public:
  explicit Pairs(Work work) {
    constexpr int rounds = 101;
    for (int i = 0; i < rounds; ++i) {
      const PlatePrices& prices = data().next_prices();
      for (std::size_t part = 0; part < parts; ++part) {
        read_[part].push_back(milliseconds([&] { read_part(part); }));
        work_[part].push_back(milliseconds([&] { work(prices, part); }));
        ratios_.push_back(work_[part].back() / read_[part].back());
      }
    }
  }
  /// All parts, each at its least.
  double least_read() const { return least(read_); }
  double least_work() const { return least(work_); }
  double median_read() const { return all_medians(read_); }
  double median_work() const { return all_medians(work_); }
  double median_ratio() const { return median(ratios_); }

 private:
  using Times = std::array<std::vector<double>, parts>;

  static double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
  }
  static double least(const Times& times) {
    double sum = 0;
    for (const auto& of_part : times) sum += *std::min_element(of_part.begin(), of_part.end());
    return sum;
  }
  static double all_medians(const Times& times) {
    double sum = 0;
    for (const auto& of_part : times) sum += median(of_part);
    return sum;
  }

  Times read_, work_;
  std::vector<double> ratios_;
};

/// How the data came out, every plate held against plain fractions.
struct Met {
  std::size_t different = 0;
  std::size_t ties = 0;
  std::size_t in_fractions = 0;
  double ours = 0;    ///< milliseconds for all plates
  double boosts = 0;  ///< for all, from a tenth of them
};

Met hold_against_fractions() {
  Met out;
  const PlatePrices& prices = data().prices[0];
  const RecostedPlates costed = recost(data().plates.table, prices);
  out.in_fractions = costed.in_fractions;
  const auto count_differences = [&](const std::vector<std::int64_t>& plain) {
    for (std::size_t i = 0; i < plain.size(); ++i) {
      if (plain[i] != costed.costs[i]) ++out.different;
    }
  };
  count_differences(plain_costs_in_ours(ManyPlates::plates, out.ours));
  count_differences(plain_costs_in_boosts(ManyPlates::plates / 10, out.boosts));
  out.boosts *= 10;
  for (std::size_t i = 0; i < costed.costs.size(); ++i) {
    if (denominator_of(data().plates.table.exact_cost(i, prices)) == 2) ++out.ties;
  }
  return out;
}

/// What the system says of it.
std::string processor() {
  std::ifstream file("/proc/cpuinfo");
  for (std::string line; std::getline(file, line);) {
    if (line.starts_with("model name")) return line.substr(line.find(':') + 2);
  }
  return "unknown processor";
}

void add_row(std::ostream& page, const char* what, const Pairs& pairs) {
  page << "| " << what << " | " << pairs.least_work() << " | " << pairs.least_read() << " | "
       << pairs.least_work() / pairs.least_read() << " | " << pairs.median_work() << " | "
       << pairs.median_read() << " | " << pairs.median_ratio() << " |\n";
}

/// What was measured with so many packs.
void add_results(std::ostream& page, std::size_t packs) {
  as_many_bytes();
  kept_data().reset();
  kept_data() = std::make_unique<Data>(packs);
  const Met met = hold_against_fractions();
  const Pairs one(recost_part);
  const Pairs two(recost_part_on_two_cores);
  const double whole = milliseconds([] { PlatePrices(data().plates.prices, Currency("USD")); });
  page << "\n## " << packs << " packs\n\n"
       << "Held against plain fractions, " << met.different << " of " << ManyPlates::plates
       << " plates differ. " << met.ties << " are true half cents; " << met.in_fractions
       << " do not fit and are costed in fractions. " << ManyPlates::table_bytes / 1'000'000
       << " MB are read from end to end.\n\n"
       << "| work | least | reading | ratio | median | reading | ratio |\n"
       << "|---|--:|--:|--:|--:|--:|--:|\n";
  add_row(page, "all plates on one core", one);
  add_row(page, "all plates on two cores", two);
  page << "\nThe same as plain fractions on one core: " << met.boosts << " ms in Boost's numbers ("
       << met.boosts / one.median_work() << " times as long, medians; from a tenth of the plates), "
       << met.ours << " ms in the library's own (" << met.ours / one.median_work()
       << " times). Making whole numbers of all prices, before the first plate, takes " << whole
       << " ms and is in none of these.\n";
}

void write_results(const std::string& name) {
  std::ofstream page(name);
  page << std::fixed << std::setprecision(2);
  page << "# A million plates costed again\n\n"
       << "Made by `platewright_recost_benchmark --results FILE`; nothing here is written by "
          "hand.\n\n"
       << "- Machine: " << processor() << ", " << std::thread::hardware_concurrency() << " cores.\n"
       << "- Compiler: version " << __VERSION__ << ", `-O2 -DNDEBUG`.\n"
       << "- Data: " << ManyPlates::plates << " plates of " << ManyPlates::lines
       << " lines; all prices are others at each costing.\n"
       << "- Times are in milliseconds. The data is worked through in " << parts
       << " parts; right before each, as many bytes are read, vectorised, on one core. \"Least\" "
          "adds up the least time of each part of 101 rounds, \"median\" their medians; the last "
          "ratio is the median of all ratios of a part to the reading before it.\n";
  add_results(page, many_packs);
  add_results(page, few_packs);
}

}  // namespace

int main(int count, char** arguments) {
  if (count == 3 && std::string(arguments[1]) == "--results") {
    write_results(arguments[2]);
    return 0;
  }
  benchmark::Initialize(&count, arguments);
  if (benchmark::ReportUnrecognizedArguments(count, arguments)) return 2;
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
