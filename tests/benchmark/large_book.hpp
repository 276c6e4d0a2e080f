// SPDX-License-Identifier: MIT
#pragma once
// The files of a book as large as a house may have: ten thousand recipes, one a file.

#include <filesystem>
#include <fstream>
#include <random>
#include <string>

namespace platewright::benchmarks {

/// Recipes as they are typed: some with steps, notes, quotation marks, remarks, parts of others.
/// Names and prices are invented; the same seed makes the same book.
class LargeBook {
 public:
  static constexpr int recipes = 10'000;
  static constexpr int goods = 500;
  static constexpr int chapters = 100;  ///< files that name the recipes

  explicit LargeBook(std::filesystem::path folder) : folder_(std::move(folder)) {}

  /// Writes all files; what is to be read is `event.yaml`.
  void write() {
    write_larder();
    for (int recipe = 0; recipe < recipes; ++recipe) write_recipe(recipe);
    std::string names;
    for (int chapter = 0; chapter < chapters; ++chapter) {
      names += (chapter > 0 ? ", " : "") + write_chapter(chapter);
    }
    save("event.yaml", "event: a gala\nwith: [" + names +
                           "]\nat: 2027-10-09 18:30 America/Chicago\n"
                           "guests: {adults: 84}\nmenu: [dish 3: 100 %, dish 4: 100 %, dish 7001: "
                           "100 %]\nquote:\n  overhead: 12 %\n  margin: 30 %\n");
  }

 private:
  int any(int first, int last) {
    return first + static_cast<int>(random_() % static_cast<unsigned>(last - first + 1));
  }

  template <std::size_t Count>
  std::string any_of(const char* const (&texts)[Count]) {
    return texts[random_() % Count];
  }

  void save(const std::string& name, const std::string& text) const {
    std::ofstream(folder_ / name, std::ios::binary) << text;
  }

  void write_larder() {
    std::string text = "currency: USD\nlarder:\n";
    for (int i = 0; i < goods; ++i) {
      text += "  goods " + std::to_string(i) +
              ": {weighs: {1 cup: " + std::to_string(any(80, 300)) +
              " g}, buy: [{pack: " + any_of({"1 lb", "5 lb", "25 lb", "2 kg", "10 kg"}) +
              ", price: " + std::to_string(any(2, 99)) + "." + std::to_string(any(10, 99)) +
              ", from: the market}], allergens: none}\n";
    }
    save("larder.yaml", text);
  }

  void write_recipe(int number) {
    std::string text = "recipe: " + name_of(number) +
                       "\nwith: [larder.yaml]\nmakes: " + std::to_string(any(4, 60)) +
                       " portions of " + std::to_string(any(2, 9)) + " oz, whole dish\n" +
                       (number % 8 == 0 ? "# as we made it for the fair\n" : "") + "ingredients:\n";
    const int first = any(0, goods - 1);
    for (int line = 0; line < 12; ++line) {
      text += "  - goods " + std::to_string((first + 37 * line) % goods) + ": " +
              any_of({"1/2 lb", "12 oz", "1 1/4 lb, chopped", "300 g", "2.5 kg", "3 oz", "2 cups",
                      "1 1/2 cups, sliced thin"}) +
              (any(0, 15) == 0 ? "  # more in winter\n" : "\n");
    }
    if (number % 8 == 1) text += "  - " + name_of(number - 1) + ": 8 oz\n";
    if (number % 4 == 0) {
      text += "steps:\n  - Chop what is to be chopped.\n  - do: \"Cook it slowly: no hurry.\"\n";
      text += "    takes: " + std::to_string(any(1, 9) * 5) + " min\n";
    }
    if (number % 16 == 0) text += "notes:\n  - Keeps well.\n  - \"Serves as a side, too\"\n";
    save(file_of(number), text);
  }

  std::string write_chapter(int number) {
    const int size = recipes / chapters;
    std::string text = "currency: USD\nwith: [";
    for (int i = 0; i < size; ++i) text += (i > 0 ? ", " : "") + file_of(number * size + i);
    const std::string name = "chapter" + std::to_string(number) + ".yaml";
    save(name, text + "]\nlarder: {}\n");
    return name;
  }

  static std::string name_of(int number) { return "dish " + std::to_string(number); }
  static std::string file_of(int number) { return "dish" + std::to_string(number) + ".yaml"; }

  std::filesystem::path folder_;
  std::mt19937 random_{5};
};

}  // namespace platewright::benchmarks
