// SPDX-License-Identifier: MIT
// Minimum temperatures, holds, limits, lethality and allergens.

#include "generate/row_fields.hpp"
#include "platewright/number/read.hpp"

namespace platewright::generate {

std::string safety_text(const std::vector<TableFile>& files, ProblemList& problems) {
  std::vector<std::string> minimums;
  each_row(files, "minimums", "product", problems, [&](yaml::Fields& fields) {
    minimums.push_back(literal_of(fields, "product") + ", " +
                       literal(fields.needed_text("key", "key: poultry").value_or("")) + ", " +
                       literal_of(fields, "authority") + ", " + literal_of(fields, "audience") +
                       ", " + celsius_of(fields, "at") + ", " + seconds_of(fields, "rest") + ", " +
                       seconds_of(fields, "hold") + ", " + source_of(fields) + ", " +
                       literal_of(fields, "row") + ", " + literal_of(fields, "note"));
  });
  std::vector<std::string> holds;
  each_row(files, "roast holds", "at", problems, [&](yaml::Fields& fields) {
    holds.push_back(celsius_of(fields, "at") + ", " + seconds_of(fields, "hold") + ", " +
                    literal_of(fields, "authority") + ", " + literal_of(fields, "row"));
  });
  std::vector<std::string> limits;
  each_row(files, "limits", "limit", problems, [&](yaml::Fields& fields) {
    limits.push_back(literal_of(fields, "limit") + ", " + literal_of(fields, "key") + ", " +
                     celsius_of(fields, "at") + ", " + literal_of(fields, "bound") + ", " +
                     seconds_of(fields, "within") + ", " + source_of(fields) + ", " +
                     literal_of(fields, "row") + ", " + literal_of(fields, "note"));
  });
  std::vector<std::string> undercooked;
  each_row(files, "undercooked", "kind", problems, [&](yaml::Fields& fields) {
    undercooked.push_back(literal_of(fields, "kind") + ", " +
                          literal(fields.needed_text("rule", "rule: told").value_or("")) + ", " +
                          source_of(fields) + ", " + literal_of(fields, "row"));
  });
  return source_file(array_text("MinimumRow", "minimum_rows", minimums) + "\n" +
                     array_text("UndercookedRow", "undercooked_rows", undercooked) + "\n" +
                     array_text("RoastHoldRow", "roast_hold_rows", holds) + "\n" +
                     array_text("LimitRow", "limit_rows", limits) + "\n" +
                     step_rows_text(files, problems));
}

std::string lethality_text(const std::vector<TableFile>& files, ProblemList& problems) {
  std::vector<std::string> rows;
  each_row(files, "lethality", "row", problems, [&](yaml::Fields& fields) {
    const std::string of = literal(fields.needed_text("food", "food: meat").value_or("")) + ", " +
                           literal_of(fields, "reduction") + ", ";
    const std::string source = ", " + source_of(fields) + ", " + literal_of(fields, "row");
    std::vector<std::string> fats;
    for (const std::string& fat : fields.texts("fat")) fats.push_back(ratio(read_share(fat)));
    if (fats.empty()) fats.emplace_back("not_printed");
    for (const yaml::Node& node : fields.list("steps")) {
      yaml::Fields step(node, fields.context(), fields.path(), yaml::any_keys());
      const std::string at = celsius_of(step, "at");
      const std::vector<std::string> holds = step.texts("hold");
      check_count("a hold", holds.size(), "fat", fats.size());
      for (std::size_t i = 0; i < holds.size(); ++i) {
        std::string row = of;
        row.append(fats[i]).append(", ").append(at).append(", ");
        row.append(seconds_in(holds[i])).append(source);
        rows.push_back(std::move(row));
      }
      step.finish();
    }
  });
  return source_file(array_text("LethalityRow", "lethality_rows", rows));
}

std::string allergens_text(const std::vector<TableFile>& files, ProblemList& problems) {
  std::vector<std::string> rows;
  each_row(files, "allergens", "allergen", problems, [&](yaml::Fields& fields) {
    rows.push_back(literal_of(fields, "allergen") + ", " + literal_of(fields, "scheme") + ", " +
                   literal_of(fields, "key") + ", " + joined(fields.texts("names")) + ", " +
                   joined(fields.texts("implies")) + ", " +
                   (fields.flag("name the kind") ? "true" : "false") + ", " + source_of(fields));
  });
  return source_file(array_text("AllergenRow", "allergen_rows", rows));
}

}  // namespace platewright::generate
