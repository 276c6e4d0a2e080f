// SPDX-License-Identifier: MIT
// What is wrong with a step is said by every sheet and every check alike.

#include <rapidcheck.h>

#include <algorithm>

#include "platewright/book/check_book.hpp"
#include "platewright/card/kitchen_notices.hpp"
#include "platewright/card/number_text.hpp"
#include "platewright/card/recipe_card.hpp"
#include "platewright/card/timeline_sheet.hpp"
#include "platewright/card/writers.hpp"
#include "platewright/event/safety_warnings.hpp"
#include "support/catch.hpp"
#include "support/change_each.hpp"
#include "support/random_kitchen.hpp"
#include "support/random_steps.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Book stepped_book() {
  TestKitchen kitchen = random_kitchen();
  change_each(kitchen.book.ingredients, [&](Ingredient& ingredient) {
    if (*rc::gen::arbitrary<bool>()) ingredient.safety = FoodKind("poultry");
  });
  change_each(kitchen.book.recipes, [&](Recipe& recipe) {
    if (*rc::gen::arbitrary<bool>()) {
      recipe.tested = TestedPieces{1, "bird", Mass::of(random_number(20), units::pound)};
    }
    recipe.steps = random_steps(recipe);
  });
  Book book;
  book.recipes = kitchen.book;
  book.prices = kitchen.prices;
  book.events.push_back(random_event());
  return book;
}

/// The warnings about one step.
std::size_t warnings_at(const ProblemList& list, const std::string& recipe, int step) {
  return static_cast<std::size_t>(
      std::count_if(list.all().begin(), list.all().end(), [&](const Problem& problem) {
        return problem.place.file == recipe && problem.place.line == step;
      }));
}

/// For the report of a step that passed.
std::string text_of(const MethodStep& step) {
  std::string out(name_of(step.control->kind));
  if (step.control->at) out += " at " + fahrenheit_text(*step.control->at, Rounding::half_up);
  for (const ReachedTemperature& mark : step.control->reaches) {
    out += ", " + fahrenheit_text(mark.at, Rounding::half_up);
    if (mark.in) out += " in " + duration_text(mark.in->in(units::minute), Rounding::half_up);
  }
  return out;
}

bool has_words(const std::string& text, const char* words) {
  return text.find(words) != std::string::npos;
}

const char* const box_title = "STEPS NOT SAFE AS WRITTEN";

Duration hours(int count) {
  return Duration::of(count, units::hour);
}

/// At 41 F within six hours, and at the end.
bool is_cold_in_time(const std::vector<ReachedTemperature>& marks) {
  const auto is_cold = [](const ReachedTemperature& mark) {
    return mark.at <= Temperature::fahrenheit(41);
  };
  const auto first = std::find_if(marks.begin(), marks.end(), is_cold);
  return first != marks.end() && first->in <= hours(6) && is_cold(marks.back());
}

/// A place that the law of its own kind refuses, a temperature on the wrong side, a time past its
/// limit: told from the figures of the Food Code alone.
bool plainly_unsafe(const MethodStep& step) {
  if (!step.control) return false;
  const StepControl& control = *step.control;
  const auto warmer = [&](int degrees) {
    return control.at && *control.at > Temperature::fahrenheit(degrees);
  };
  switch (control.kind) {
    case StepKind::thaw:  // 3-501.13
      return control.where == StepPlace::counter ||
             (control.where == StepPlace::refrigerator && warmer(41));
    case StepKind::brine:  // 3-501.16(A)(2)
    case StepKind::marinate:
    case StepKind::dry_salt:
    case StepKind::hold_cold:
      return control.where == StepPlace::counter || warmer(41);
    case StepKind::hold_hot:  // 3-501.16(A)(1)
      return control.at && *control.at < Temperature::fahrenheit(135);
    case StepKind::chill:  // 3-501.14(A)
      return control.reaches.empty() ? step.takes && step.takes->most > hours(6)
                                     : !is_cold_in_time(control.reaches);
    case StepKind::reheat:  // 3-403.11(A) and (D)
      return std::none_of(control.reaches.begin(), control.reaches.end(),
                          [](const ReachedTemperature& mark) {
                            return mark.at >= Temperature::fahrenheit(165);
                          }) &&
             !control.reaches.empty();
    default:
      return false;
  }
}

}  // namespace

TEST_CASE("a step is warned of by the check, and its recipe has the box, or neither") {
  CHECK(rc::check([] {
    const Book book = stepped_book();
    const ProblemList found = safety_warnings(book.recipes, book.tables.safety);
    RC_PRE(found.left_out() == 0U);
    for (const auto& [name, recipe] : book.recipes.recipes) {
      const auto notices = step_notices(recipe, book.recipes, book.tables.safety);
      std::size_t warned = 0;
      for (std::size_t i = 0; i < recipe.steps.size(); ++i) {
        const auto of_step =
            std::count_if(notices.begin(), notices.end(),
                          [&](const StepNotice& notice) { return notice.number == i + 1; });
        const std::size_t said = warnings_at(found, name, static_cast<int>(i + 1));
        RC_ASSERT((of_step > 0) == (said > 0));
        // A step without a kind is warned of where it pours out what raw food has lain in.
        const bool by_its_kind = recipe.steps[i].control.has_value() || said == 0U ||
                                 std::all_of(notices.begin(), notices.end(), [&](const auto& one) {
                                   return one.number != i + 1 || one.fault == StepFault::marinade;
                                 });
        RC_ASSERT(by_its_kind);
        warned += said;
      }
      ScaledRecipe scaled = scale(recipe, ScalePlan(), book.recipes);
      const std::string card = write_text(recipe_card(scaled, book));
      RC_CLASSIFY(warned > 0U);
      RC_ASSERT(has_words(card, box_title) == (warned > 0U));
    }
  }));
}

TEST_CASE("what the Food Code plainly forbids never passes") {
  CHECK(rc::check([] {
    const Book book = stepped_book();
    for (const auto& [name, recipe] : book.recipes.recipes) {
      const auto notices = step_notices(recipe, book.recipes, book.tables.safety);
      for (std::size_t i = 0; i < recipe.steps.size(); ++i) {
        if (!plainly_unsafe(recipe.steps[i])) continue;
        RC_TAG(std::string(name_of(recipe.steps[i].control->kind)));
        RC_LOG() << text_of(recipe.steps[i]) << "\n";
        RC_ASSERT(std::any_of(notices.begin(), notices.end(),
                              [&](const StepNotice& notice) { return notice.number == i + 1; }));
      }
    }
  }));
}

TEST_CASE("timeline and quote show the steps that the check of the event warns of") {
  CHECK(rc::check([] {
    const Book book = stepped_book();
    const SafetyTable& table = book.tables.safety;
    const EventPlan plan({book.events.front(), book.recipes, book.prices});
    const ProblemList of_plan = safety_warnings(plan, table);
    RC_PRE(of_plan.left_out() == 0U);
    std::size_t shown = 0;
    for (const DishNotice& notice : dish_notices(plan, book.tables.allergens, table)) {
      for (const UnsafeStep& step : notice.steps) {
        ++shown;
        RC_ASSERT(warnings_at(of_plan, step.recipe, static_cast<int>(step.notice.number)) > 0U);
      }
    }
    bool boxed = false;
    for (const Box& box : kitchen_notices(dish_notices(plan, book.tables.allergens, table))) {
      boxed = boxed || box.title == box_title;
    }
    RC_ASSERT(boxed == (shown > 0U));
    const Timeline timeline = plan.timeline(table);
    const std::string sheet = write_text(timeline_sheet(plan.event(), timeline));
    RC_ASSERT(has_words(sheet, "KEEPING NOT SAID") == !timeline.waiting.empty());
    RC_ASSERT(has_words(sheet, "Made ahead") == !timeline.kept.empty());
    for (const KeptFood& food : timeline.kept) {
      const bool warned =
          std::any_of(of_plan.all().begin(), of_plan.all().end(), [&](const Problem& problem) {
            return problem.id == "kept-too-long" && problem.found.find(in_quotes(food.recipe)) == 0;
          });
      RC_ASSERT(warned == !food.in_time());
      RC_ASSERT(food.made <= food.used);
    }
  }));
}

TEST_CASE(
    "a sub-recipe is ready for the first step that uses it, and not before the recipe begins") {
  CHECK(rc::check([] {
    const Book book = stepped_book();
    const EventPlan plan({book.events.front(), book.recipes, book.prices});
    Timeline timeline;
    timeline.served = plan.event().at->instant();
    const auto clocks = platewright::detail::add_recipes(plan.production(), timeline);
    for (const SubRecipePlan& sub : plan.production().sub_recipes) {
      const std::string& name = sub.scaled.recipe->name;
      const auto ready = platewright::detail::needed_by(sub, clocks);
      for (const std::string& user : sub.used_by) {
        RC_ASSERT(ready.latest() <= clocks.at(user).needed(name).latest());
        RC_ASSERT(clocks.at(user).begin.latest() <= clocks.at(user).needed(name).latest());
      }
      RC_ASSERT(clocks.at(name).begin.latest() <= ready.latest());
    }
  }));
}
