// SPDX-License-Identifier: MIT
#include "platewright/files/take_in_recipe.hpp"

#include "files/schema_line.hpp"
#include "files/schema_recipe.hpp"
#include "files/yaml_text.hpp"
#include "platewright/problem/catalogue/schema_recipes.hpp"
#include "platewright/quantity/read_amount.hpp"
#include "yaml/read_yaml.hpp"

namespace platewright {
namespace reading {
namespace {

const char* const what_is_not_known =
    "Taken in from a recipe of schema.org. Allergens, what each food is, safe temperatures and "
    "times "
    "of keeping are not known from it: state them, and follow your local code.";

/// Another file than one of JSON is not shown: it may be any file at all.
bool may_be_json(const std::string& text) {
  const std::size_t first = text.find_first_not_of(" \t\r\n");
  return first != std::string::npos && (text[first] == '{' || text[first] == '[');
}

/// `of 6 oz`, the size of a portion; empty where it is none.
std::string size_of_portion(std::string_view written, const Book& book) {
  if (written.substr(0, 3) != "of ") return {};
  const Amount size = read_amount(written.substr(3), book.tables.units, book.measures);
  return size.number > 0 ? " " + std::string(written) : "";
}

/// `4 portions` of `4 servings`, `2 qt` of itself; empty for what is neither.
std::string makes_of(const std::string& written, const Book& book) {
  try {
    const NumberPrefix count = read_number_prefix(written);
    const std::string_view after = trimmed_spaces(std::string_view(written).substr(count.length));
    const std::string_view word = after.substr(0, after.find(' '));
    const std::string_view rest = trimmed_spaces(after.substr(word.size()));
    for (const char* portions :
         {"", "serving", "servings", "portion", "portions", "person", "persons", "people"}) {
      if (word != portions || count.value <= 0) continue;
      const std::string size = rest.empty() ? "" : size_of_portion(rest, book);
      if (size.empty() != rest.empty()) break;
      return as_mixed(count.value) + (count.value > 1 ? " portions" : " portion") + size;
    }
    const Amount amount = read_amount(written, book.tables.units, book.measures);
    return amount.dimension() == UnitDimension::pieces || amount.number <= 0 ? "" : written;
  } catch (const Failure&) {
    return {};
  }
}

class RecipeTaker {
 public:
  RecipeTaker(const yaml::Node& recipe, const std::string& file, const Book& book,
              ProblemList& problems)
      : recipe_(recipe), file_(file), book_(book), problems_(problems) {}

  TakenRecipe take() {
    out_.text = "recipe: " + yaml_text(property(recipe_, "name")->text) + "\n";
    out_.text += "# with: the file that has its goods, to be written by hand\n";
    add_yield();
    add_lines();
    add_steps();
    out_.text += "notes:\n  - " + yaml_text(what_is_not_known) + "\n" + notes_;
    return std::move(out_);
  }

 private:
  void warn(const Problem& problem, const yaml::Node& node) {
    problems_.add(as_warning(at(problem, place_of(node, file_))));
  }

  void add_yield() {
    const std::string written = schema_yield(recipe_);
    const std::string makes = makes_of(written, book_);
    if (!makes.empty()) {
      out_.text += "makes: " + yaml_text(makes) + "\n";
      return;
    }
    const yaml::Node* value = property(recipe_, "recipeYield");
    warn(problems::schema_yield_unread(written), value == nullptr ? recipe_ : *value);
    out_.text += "# makes: is not known\n";
    if (!written.empty()) add_note("Makes, to be written by hand: " + written);
  }

  void add_note(const std::string& text) { notes_ += "  - " + yaml_text(text) + "\n"; }

  void add_lines() {
    std::string lines;
    for (const yaml::Node* node : property_texts(recipe_, "recipeIngredient")) {
      const auto line = read_schema_line(node->text, book_);
      if (!line) {
        ++out_.unread;
        warn(problems::schema_line_unread(node->text), *node);
        lines += "  - " + yaml_text(node->text) + ": \"?\"  # to be written by hand\n";
        continue;
      }
      ++out_.taken;
      if (!line->known) {
        ++out_.unmatched;
        warn(problems::schema_name_unmatched(line->name), *node);
      }
      const std::string& how = line->preparation;
      lines += "  - " + yaml_text(line->name) + ": " +
               yaml_text(line->amount + (how.empty() ? "" : ", " + how)) + "\n";
      if (line->stage) lines += "    as: " + std::string(name_of(*line->stage)) + "\n";
    }
    out_.text += lines.empty() ? "ingredients: []\n" : "ingredients:\n" + lines;
  }

  void add_steps() {
    std::string steps;
    for (const yaml::Node* node : property_texts(recipe_, "recipeInstructions")) {
      if (!node->text.empty()) steps += "  - do: " + yaml_text(node->text) + "\n";
    }
    if (!steps.empty()) out_.text += "steps:\n" + steps;
  }

  const yaml::Node& recipe_;
  const std::string& file_;
  const Book& book_;
  ProblemList& problems_;
  TakenRecipe out_;
  std::string notes_;
};

}  // namespace
}  // namespace reading

std::optional<TakenRecipe> take_in_recipe(const std::string& file, const Book& book,
                                          ProblemList& problems) {
  const auto text = yaml::read_named(file, problems);
  if (!text) return std::nullopt;
  const Place whole{file, 1, 1, {}};
  if (!reading::may_be_json(*text)) {
    problems.add(at(problems::schema_recipe_missing(0), whole));
    return std::nullopt;
  }
  const auto root = yaml::read_yaml(*text, file, problems);
  if (!root) return std::nullopt;
  const auto recipes = reading::schema_recipes(*root);
  if (recipes.size() != 1) {
    problems.add(at(problems::schema_recipe_missing(recipes.size()), whole));
    return std::nullopt;
  }
  return reading::RecipeTaker(*recipes.front(), file, book, problems).take();
}

}  // namespace platewright
