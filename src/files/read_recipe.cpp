// SPDX-License-Identifier: MIT
// A recipe's file.

#include "files/line_suggestion.hpp"
#include "files/reading.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/catalogue/recipes.hpp"
#include "platewright/problem/catalogue/safety.hpp"
#include "platewright/quantity/read_temperature.hpp"

namespace platewright::reading {
namespace {

class RecipeReader {
 public:
  RecipeReader(const Reading& reading, yaml::Fields& top, Recipe& recipe)
      : reading_(reading), top_(top), recipe_(recipe) {}

  void read() {
    attempt("makes", true, "makes: 10 portions of 6 oz",
            [&](const std::string& text) { read_makes(text); });
    attempt("tested on", false, "", [&](const std::string& text) { read_tested(text); });
    attempt("rest", false, "", [&](const std::string& text) { read_rest(text); });
    read_recipe_size(reading_, top_, recipe_);
    read_lines();
    read_oven();
    read_steps(reading_, top_, recipe_);
    recipe_.notes = top_.texts("notes");
  }

 private:
  template <class Work>
  void attempt(std::string_view key, bool needed, std::string_view example, Work&& work) {
    const auto text = needed ? top_.needed_text(key, example) : top_.text(key);
    if (!text) return;
    reading_.problems.attempt([&] { return top_.place(*top_.find(key), key); },
                              [&] { work(*text); });
  }

  void read_makes(const std::string& text) {
    const NumberPrefix count = read_number_prefix(text);
    if (count.value <= 0) throw Failure(problems::number_not_positive("a yield", text));
    const std::string rest(trimmed_spaces(std::string_view(text).substr(count.length)));
    const SplitText parts = split_at(rest, " of ");
    refuse_other_portions(text, parts);
    if (parts.before == "portions" || parts.before == "portion") {
      recipe_.makes.portions = count.value;
      const SplitText size = split_at(parts.after, ",");
      if (!size.before.empty()) recipe_.makes.portion = reading_.amount(size.before);
      if (!size.after.empty() && size.after != "whole dish") {
        throw Failure(problems::word_unknown("word", size.after, {"whole dish"}));
      }
      recipe_.makes.of_whole_dish = !size.after.empty();
      if (recipe_.makes.portion && recipe_.makes.portion->number <= 0) {
        throw Failure(problems::number_not_positive("a portion", parts.after));
      }
    } else if (parts.after.empty()) {
      recipe_.makes.amount = reading_.amount(text);
    } else {
      throw Failure(problems::recipe_makes_malformed(text));
    }
  }

  /// `10-12 portions`, `10 servings`, `10 portions of 6`.
  static void refuse_other_portions(const std::string& text, const SplitText& parts) {
    const auto ends_with = [&](std::string_view word) {
      const std::string_view what = parts.before;
      return what.size() >= word.size() && what.substr(what.size() - word.size()) == word;
    };
    if (ends_with("serving") || ends_with("servings")) {
      throw Failure(problems::recipe_makes_malformed(text, "write `portions` for servings"));
    }
    if (!ends_with("portions") && !ends_with("portion")) return;
    if (parts.before.find_first_of("0123456789") != std::string::npos) {
      throw Failure(problems::recipe_makes_malformed(
          text, "write one number: a range can't be scaled, and its lower end is the careful one"));
    }
    const bool bare =
        !parts.after.empty() && parts.after.find_first_not_of("0123456789./ ") == std::string::npos;
    if (bare) {
      throw Failure(problems::recipe_makes_malformed(
          text, "say " + parts.after + " of what: oz, g or pieces"));
    }
  }

  void read_tested(const std::string& text) {
    const NumberPrefix count = read_number_prefix(text);
    const std::string rest(trimmed_spaces(std::string_view(text).substr(count.length)));
    const SplitText parts = split_at(rest, " of ");
    if (parts.before.empty() || parts.after.empty()) {
      throw Failure(problems::tested_on_malformed(text));
    }
    const Mass weight = to_mass(reading_.amount(parts.after));
    if (count.value <= 0 || weight <= Mass()) {
      throw Failure(problems::number_not_positive("a tested piece", text));
    }
    const std::string piece = count.value > 1 ? one_of(parts.before) : parts.before;
    recipe_.tested = TestedPieces{count.value, piece, weight};
  }

  void read_lines() {
    if (top_.need("ingredients", "ingredients:\n  - garlic: 8 cloves, grated") == nullptr) return;
    const yaml::Node& lines = *top_.find("ingredients");
    read_line_list(lines_of(top_, "ingredients"), "");
    if (lines.is_nothing() || (lines.is_list() && lines.items.empty())) {
      reading_.problems.add(at(problems::wrong_shape("no ingredients", "at least one line",
                                                     "write, for example, `- garlic: 8 cloves`"),
                               top_.place(lines, "ingredients")));
    }
  }

  /// Ingredients without dashes are the slip to be expected here.
  const std::vector<yaml::Node>& lines_of(yaml::Fields& fields, std::string_view key) const {
    const yaml::Node* node = fields.find(key);
    if (node == nullptr || node->is_list()) return fields.list(key);
    return fields.list(key, node->is_map()      ? with_dashes(*node)
                            : node->is_scalar() ? "write each on a line of its own, as in `" +
                                                      suggested_line(node->text, reading_) + "`"
                                                : std::string());
  }

  void read_line_list(const std::vector<yaml::Node>& items, const std::string& part) {
    recipe_.lines.reserve(recipe_.lines.size() + items.size());
    for (const yaml::Node& item : items) {
      const bool is_part = item.is_map() && !item.entries.empty() &&
                           item.entries.front().first.text == "part" && part.empty();
      if (is_part) {
        yaml::Fields fields(item, reading_.context(), top_.path() + " > part", part_keys());
        const auto name = fields.text("part");
        if (fields.need("lines", "lines:\n  - garlic: 8 cloves") != nullptr && name) {
          read_line_list(lines_of(fields, "lines"), *name);
        }
        fields.finish();
      } else {
        read_line(item, part);
      }
    }
  }

  void read_line(const yaml::Node& item, const std::string& part) {
    const std::string path = top_.path() + " > line " + std::to_string(recipe_.lines.size() + 1);
    if (item.is_scalar()) {
      reading_.problems.add(
          at(problems::wrong_shape(in_quotes(item.text), "a name, a colon, a space and an amount",
                                   "write `" + suggested_line(item.text, reading_) + "`"),
             Place{reading_.file.file, item.line, item.column, path}));
      return;
    }
    yaml::Fields fields(item, reading_.context(), path, line_keys());
    if (!item.is_map() || item.entries.empty()) return;
    const yaml::Node& name = item.entries.front().first;
    const yaml::Node& amount = item.entries.front().second;
    RecipeLine line;
    line.name = name.text;
    line.part = part;
    line.place = Place{reading_.file.file, name.line, name.column, path};
    fields.find(name.text);
    if (!amount.is_scalar()) {
      reading_.problems.add(at(
          problems::wrong_shape(yaml::shape_of(amount), "an amount behind " + in_quotes(name.text),
                                "write, for example, `- " + escaped(name.text) + ": 2 oz` or `- " +
                                    escaped(name.text) + ": to taste`"),
          fields.place(amount.is_nothing() ? name : amount, "amount")));
    } else {
      reading_.problems.attempt([&] { return fields.place(amount, "amount"); },
                                [&] { read_amount_and_preparation(amount.text, line); });
    }
    read_line_options(fields, line);
    fields.finish();
    recipe_.lines.push_back(std::move(line));
  }

  void read_amount_and_preparation(const std::string& text, RecipeLine& line) const {
    const SplitText parts = split_at(text, ", ");
    line.preparation = parts.after;
    if (const SplitText share = split_at(parts.before, " of "); is_share(share)) {
      line.amount = weight_share(share);
      return;
    }
    const LineAmount amount = reading_.line_amount(parts.before);
    if (amount.low() && amount.low()->number <= 0) {
      throw Failure(problems::number_not_positive("an amount", parts.before));
    }
    line.amount = amount;
  }

  static bool is_share(const SplitText& text) {
    return !text.after.empty() && !text.before.empty() && text.before.back() == '%';
  }

  /// `6 % of water`, `2 % of water and meat`.
  static WeightShare weight_share(const SplitText& text) {
    WeightShare out{read_share(text.before), {}};
    if (out.share <= 0) throw Failure(problems::number_not_positive("a share", text.before));
    std::string rest = text.after;
    while (!rest.empty()) {
      const SplitText names = split_at(rest, " and ");
      out.of.push_back(names.before);
      rest = names.after;
    }
    return out;
  }

  static void read_line_options(yaml::Fields& fields, RecipeLine& line) {
    if (const auto rule = fields.read<ScalingRule>(
            "scale", [](const std::string& text) { return scaling_rule_from(text); })) {
      line.scale = *rule;
    }
    line.stage = fields.read<Stage>("as", [](const std::string& text) { return stage_from(text); });
    const auto start = fields.read<Rational>("start with", [](const std::string& text) {
      const Rational share = read_share(text);
      if (share <= 0 || share > 1) {
        throw Failure(problems::share_out_of_range("a share", text, "above 0 and at most 100 %"));
      }
      return share;
    });
    // Half at first where the cook does not say: common practice, no source.
    if (line.scale == ScalingRule::held_back) line.start_share = start.value_or(fraction(1, 2));
  }

  void read_oven() {
    for (const yaml::Node& item : top_.list("oven")) {
      const Place place = top_.place(item, "oven");
      if (!item.is_scalar()) {
        reading_.problems.add(
            at(problems::wrong_shape(yaml::shape_of(item), "an oven setting"), place));
        continue;
      }
      reading_.problems.attempt(place, [&] {
        recipe_.oven.push_back(oven_step(item.text));
        warn_of_oven(recipe_.oven.back().oven, item.text, place);
      });
    }
  }

  /// Ovens of the trade go from a plate warmer to a pizza oven: common practice, no source.
  void warn_of_oven(const Temperature& oven, const std::string& text, const Place& place) const {
    if (oven >= Temperature::fahrenheit(100) && oven <= Temperature::fahrenheit(600)) return;
    reading_.problems.add(as_warning(at(problems::oven_temperature_unusual(text), place)));
  }

  /// Food that is neither hot nor cold keeps for the hours of FDA Food Code 2022, 3-501.19.
  void read_rest(const std::string& text) {
    recipe_.rest = to_duration(reading_.amount(text));
    const auto limit = reading_.book.tables.safety.limit("time as control, hot");
    if (!limit || !limit->within || *recipe_.rest <= *limit->within) return;
    reading_.problems.add(
        as_warning(at(problems::rest_too_long(text, as_mixed(limit->within->in(units::hour)) + " h",
                                              limit->source + ", " + limit->row),
                      top_.place(*top_.find("rest"), "rest"))));
  }

  /// `450 F for 25 min`, `325 F until 130 F inside`, `325 F for 1 h 40 min until 130 F inside`.
  OvenStep oven_step(const std::string& text) const {
    const SplitText until = split_at(text, " until ");
    const SplitText timed = split_at(until.before, " for ");
    OvenStep step;
    step.oven = read_temperature(timed.before);
    if (!timed.after.empty()) step.time = to_duration(reading_.amount(timed.after));
    if (!until.after.empty()) {
      step.until = read_temperature(split_at(until.after, " inside").before);
    }
    if (!step.time && !step.until) throw Failure(problems::oven_step_malformed(text));
    if (step.until) check_inside(step, text);
    return step;
  }

  /// Food holds water, which freezes at 32 F and boils at 212 F (NIST SP 811, B.8), and gets no
  /// hotter than its oven.
  static void check_inside(const OvenStep& step, const std::string& text) {
    if (*step.until < Temperature::celsius(0) || *step.until > Temperature::celsius(100)) {
      throw Failure(problems::inside_temperature_impossible(text));
    }
    if (*step.until > step.oven) throw Failure(problems::inside_above_oven(text));
  }

  const Reading& reading_;
  yaml::Fields& top_;
  Recipe& recipe_;
};

}  // namespace

std::optional<Recipe> recipe_in_file(const Reading& reading) {
  yaml::Fields peek(reading.file.root(), reading.context(), {}, recipe_keys());
  const auto name = peek.name("recipe");
  if (!name) return std::nullopt;
  Recipe recipe;
  recipe.name = *name;
  yaml::Fields top(reading.file.root(), reading.context(), "recipe " + in_quotes(*name),
                   recipe_keys());
  recipe.place = top.place(*top.find("recipe"));
  top.find("measures");
  top.find("kitchen");
  top.find("with");
  RecipeReader(reading, top, recipe).read();
  top.finish();
  return recipe;
}

void take_recipe(const Reading& reading, Recipe recipe) {
  if (const Recipe* first = reading.book.recipes.find_recipe(recipe.name)) {
    report_twice(reading, "recipe", recipe.name, first->place, recipe.place);
    return;
  }
  if (reading.file.named) reading.book.main_recipes.push_back(recipe.name);
  reading.book.recipes.add(std::move(recipe));
}

}  // namespace platewright::reading
