// What a recipe's lines weigh, and what follows from it: shares of other lines, and the room that
// meat takes up in a vessel.

#include <algorithm>

#include "files/reading.hpp"
#include "platewright/costing/bought_line.hpp"
#include "platewright/problem/catalogue/recipes.hpp"

namespace platewright::reading {
namespace {

/// What `work` gives; nothing where a figure for it is missing.
template <class Work>
auto if_known(Work&& work) -> std::optional<decltype(work())> {
  try {
    return work();
  } catch (const Failure&) {
    return std::nullopt;
  }
}

class WeightLinker {
 public:
  WeightLinker(Recipe& recipe, const Book& book, ProblemList& problems)
      : recipe_(recipe), book_(book), problems_(problems) {}

  void run() {
    set_piece_volume();
    check_cover();
    for (RecipeLine& line : recipe_.lines) {
      const Ingredient* ingredient = book_.recipes.find_ingredient(line.name);
      if (!line.amount.low) continue;
      const IngredientWeights none{line.name, {}};
      const IngredientWeights& weights =
          ingredient == nullptr ? none : weights_of(*ingredient, line.preparation);
      line.weight = if_known([&] { return weight_of(*line.amount.low, weights); });
    }
    for (RecipeLine& line : recipe_.lines) {
      if (line.share_of) problems_.attempt(line.place, [&] { set_share(line); });
    }
  }

 private:
  Unit unit(const char* name) const {
    return read_amount(name, book_.tables.units, MeasuringSystem::metric).unit;
  }

  void set_piece_volume() {
    const RecipeLine* line = piece_line(recipe_, book_.recipes);
    const Ingredient* ingredient =
        line == nullptr ? nullptr : book_.recipes.find_ingredient(line->name);
    if (ingredient == nullptr) return;
    TestedPieces& tested = *recipe_.tested;
    const Amount weight = to_amount(tested.weight, unit("1 g"));
    tested.volume = if_known(
        [&] { return to_volume(convert(weight, unit("1 mL"), ingredient->weights).amount); });
  }

  /// A line by cover needs to know what the vessel holds.
  void check_cover() {
    if (!recipe_.vessel || recipe_.vessel->volume) return;
    std::vector<std::string> names;
    for (const Vessel& row : book_.tables.vessels) names.push_back(row.name);
    for (const RecipeLine& line : recipe_.lines) {
      if (line.scale != ScalingRule::by_cover) continue;
      problems_.add(at(problems::vessel_without_volume(recipe_.vessel->name, names), line.place));
    }
  }

  bool is_cut(const std::string& name) const {
    const Ingredient* ingredient = book_.recipes.find_ingredient(name);
    return ingredient != nullptr && ingredient->is_cut;
  }

  /// `meat` stands for every line that is a cut.
  std::vector<std::string> lines_meant(const std::string& name) const {
    std::vector<std::string> out;
    std::vector<std::string> known;
    for (const RecipeLine& line : recipe_.lines) {
      if (!line.weight || line.share_of) continue;
      known.push_back(line.name);
      if (line.name == name || (name == "meat" && is_cut(line.name))) out.push_back(line.name);
    }
    if (out.empty()) throw Failure(problems::share_of_unknown(name, known));
    return out;
  }

  void set_share(RecipeLine& line) const {
    std::vector<std::string> names;
    for (const std::string& name : line.share_of->of) {
      for (std::string& meant : lines_meant(name)) names.push_back(std::move(meant));
    }
    Mass base;
    for (const RecipeLine& other : recipe_.lines) {
      const bool counts = std::find(names.begin(), names.end(), other.name) != names.end();
      if (counts && other.weight && !other.share_of) base += *other.weight;
    }
    line.share_of->of = std::move(names);
    line.amount.low = to_amount(base * line.share_of->share, unit("1 g"));
    line.weight = base * line.share_of->share;
  }

  Recipe& recipe_;
  const Book& book_;
  ProblemList& problems_;
};

}  // namespace

void link_weights(Recipe& recipe, const Book& book, ProblemList& problems) {
  WeightLinker(recipe, book, problems).run();
}

}  // namespace platewright::reading
