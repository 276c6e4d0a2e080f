// SPDX-License-Identifier: MIT
#include "platewright/files/exercise_file.hpp"

#include "files/quoted.hpp"
#include "platewright/number/write.hpp"

namespace platewright {
namespace reading {
namespace {

/// `13 lb 4 oz`, or `2.4 kg`: as it is drawn, so that nothing is rounded.
std::string weighed(const Mass& weight, WeighedIn weights) {
  if (weights == WeighedIn::kilograms) {
    return as_short_decimal(weight.in(units::kilogram), 3) + " kg";
  }
  const Rational ounces = weight.in(units::ounce);
  const Rational pounds = floor_of(ounces / 16);
  const Rational left = ounces - pounds * 16;
  if (pounds == 0) return as_exact(left) + " oz";
  return as_exact(pounds) + " lb" + (left == 0 ? "" : " " + as_exact(left) + " oz");
}

std::string priced(const PricePerMass& price, WeighedIn weights) {
  const Money money = price * price_weight(weights);
  return as_decimal(money.in(units::currency_unit), 2) + " per " +
         std::string(price_weight_name(weights));
}

std::string trim_text(const Exercise& exercise) {
  const WeighedIn weights = exercise.weights;
  const TrimTest& test = exercise.trim;
  std::string out = "trim test:\n  purchased: " + weighed(test.purchased, weights) + " at " +
                    priced(std::get<PricePerMass>(test.price), weights) + "\n";
  if (test.labour) out += "  labour: " + priced(*test.labour, weights) + "\n";
  std::string usable;
  std::string credited;
  std::string others;
  for (const TrimPart& part : test.parts) {
    const std::string weight = part.weight ? weighed(*part.weight, weights) : "the rest";
    if (part.kind == PartKind::usable) {
      usable += "  usable: {" + part.name + ": " + weight + "}\n";
    } else if (part.kind == PartKind::by_product) {
      credited += "    " + part.name + ": " + weight + " at " + priced(part.value, weights) + "\n";
    } else {
      others += "  " + part.name + ": " + weight + "\n";
    }
  }
  return out + usable + "  by-products:\n" + credited + others +
         "  portion: " + weighed(*test.portion, weights) + "\n";
}

std::string answers_text(const Working& working) {
  std::string out = "  answers:\n";
  for (const WorkingStep& step : working) out += "    " + quoted(step.name) + ": ____\n";
  return out;
}

}  // namespace
}  // namespace reading

std::string exercise_file(const Exercise& exercise, const YieldTable& table) {
  using namespace reading;
  const Worksheet solution = solution_of(exercise, table);
  const bool invoice = exercise.base == CostBase::invoice;
  std::string out =
      "# Write your answer in place of each ____, then let the program mark the file.\n";
  out += "worksheet: " + quoted(name_of(exercise)) + "\n";
  if (!exercise.bought.empty()) out += "bought: " + quoted(exercise.bought) + "\n";
  out += "handbook: " + quoted(exercise.row) + "\n";
  out += "new price: " + priced(exercise.new_price, exercise.weights) + "\n";
  out += trim_text(exercise) + answers_text(solution.trim_working);
  out += "cooking loss test:\n  starts from: ";
  out += invoice ? "invoice" : "net of credits";
  out += "\n  cooked: " + weighed(exercise.cooked, exercise.weights) +
         "\n  bones and trim: " + weighed(exercise.bones_and_trim, exercise.weights) +
         "\n  portion: " + weighed(*exercise.trim.portion, exercise.weights) + "\n";
  return out + answers_text(solution.cooking_working);
}

}  // namespace platewright
