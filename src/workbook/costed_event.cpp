// SPDX-License-Identifier: MIT
#include <set>

#include "workbook/cost_page.hpp"

namespace platewright::pages {
namespace {

class Batches {
 public:
  Batches(PlateCosting& costing, std::vector<PlateCost>& out) : costing_(costing), out_(out) {}

  void add_below(const PlateCost& cost) {
    for (const CostLine& line : cost.lines) {
      if (!line.is_recipe || !line.used || !seen_.insert(line.name).second) continue;
      const PlateCost& batch = costing_.batch(line.name);
      add_below(batch);
      out_.push_back(batch);
    }
  }

 private:
  PlateCosting& costing_;
  std::vector<PlateCost>& out_;
  std::set<std::string> seen_;
};

}  // namespace

CostedEvent costed(const EventPlan& plan) {
  CostedEvent out{plan.cost(), {}, needs_of(plan.production(), plan.recipes(), plan.prices())};
  PlateCosting costing(plan.recipes(), plan.prices());
  Batches batches(costing, out.batches);
  for (const PlateCost& dish : out.cost.dishes) batches.add_below(dish);
  return out;
}

}  // namespace platewright::pages
