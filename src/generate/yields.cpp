// SPDX-License-Identifier: MIT
// Cuts with their ladders; produce and grains.

#include "generate/row_fields.hpp"
#include "platewright/problem/bought_words.hpp"
#include "platewright/problem/catalogue/numbers.hpp"

namespace platewright::generate {
namespace {

std::string rung_text(yaml::Fields& rung) {
  const auto yield = rung.share("yield");
  if (!yield || *yield <= 0) throw Failure(problems::number_not_positive("yield", "0 or nothing"));
  const auto samples = rung.number("samples");
  std::string out = literal(rung.needed_text("from", "from: purchased").value_or("")) + ", ";
  out += literal(rung.needed_text("to", "to: cooked").value_or("")) + ", " + ratio(*yield) + ", ";
  out += joined(rung.texts("holds")) + ", " + literal_of(rung, "method") + ", ";
  out +=
      (samples ? ratio(*samples) : "not_printed") + ", " + share_or_none(rung, "deviation") + ", ";
  out += share_or_none(rung, "low") + ", " + share_or_none(rung, "high") + ", ";
  return out + source_of(rung) + ", " + literal_of(rung, "row");
}

std::string bought_of(yaml::Fields& fields) {
  const std::string bought = fields.needed_text("bought", "bought: bone-in").value_or("");
  check_bought(bought);
  return literal(bought);
}

}  // namespace

std::string cuts_text(const std::vector<TableFile>& files, ProblemList& problems) {
  NamesSeen seen;
  std::vector<std::string> cuts;
  std::string rungs;
  each_row(files, "cuts", "cut", problems, [&](yaml::Fields& fields) {
    const std::string name = fields.needed_text("cut", "cut: lamb leg").value_or("");
    const auto names = fields.texts("names");
    seen.add("cut", name, fields.place(), problems);
    for (const std::string& other : names) seen.add("cut", other, fields.place(), problems);
    std::string list;
    for (const yaml::Node& node : fields.list("rungs")) {
      yaml::Fields rung(node, fields.context(), fields.path(), yaml::any_keys());
      list += "    {" + rung_text(rung) + "},\n";
      rung.finish();
    }
    const std::string array = "rungs_of_" + identifier(name);
    rungs += "constexpr RungRow " + array + "[] = {\n" + list + "};\n";
    cuts.push_back(literal(name) + ", " + joined(names) + ", " + literal_of(fields, "species") +
                   ", " + literal_of(fields, "safety") + ", " + bought_of(fields) + ", " +
                   literal_of(fields, "imps") + ", " + literal_of(fields, "goods") + ", " +
                   literal_of(fields, "note") + ", " + array);
  });
  return source_file("namespace {\n" + rungs + "}  // namespace\n\n" +
                     array_text("CutRow", "cut_rows", cuts));
}

std::string goods_text(std::string_view table, const std::vector<TableFile>& files,
                       ProblemList& problems) {
  const bool produce = table == "produce";
  NamesSeen seen;
  std::vector<std::string> rows;
  each_row(files, produce ? "produce" : "grains", table, problems, [&](yaml::Fields& fields) {
    const std::string name = fields.needed_text(table, "the name").value_or("");
    const auto names = fields.texts("names");
    seen.add(std::string(table), name, fields.place(), problems);
    for (const std::string& other : names) {
      seen.add(std::string(table), other, fields.place(), problems);
    }
    // A factor is as purchased over edible portion, the way some tables print it.
    const auto factor = fields.number("factor");
    const auto yield = factor ? std::nullopt : fields.share("yield");
    if ((!factor && !yield) || (factor && *factor <= 0) || (yield && *yield <= 0)) {
      throw Failure(problems::number_not_positive("yield", "0 or nothing"));
    }
    rows.push_back(literal(name) + ", " + joined(names) + ", " + literal_of(fields, "trim") + ", " +
                   ratio(factor ? Rational(1) / *factor : *yield) + ", " + source_of(fields) +
                   ", " + literal_of(fields, "row") + ", " + literal_of(fields, "note"));
  });
  return source_file(array_text("GoodsRow", std::string(table) + "_rows", rows));
}

std::string vessels_text(const std::vector<TableFile>& files, ProblemList& problems) {
  std::vector<std::string> rows;
  each_row(files, "vessels", "vessel", problems, [&](yaml::Fields& fields) {
    rows.push_back(literal(fields.needed_text("vessel", "vessel: No. 8 scoop").value_or("")) +
                   ", " + literal_of(fields, "kind") + ", " + joined(fields.texts("names")) + ", " +
                   literal_of(fields, "printed") + ", " + literal_of(fields, "by rule") + ", " +
                   literal_of(fields, "capacity") + ", " + literal_of(fields, "outside") + ", " +
                   source_of(fields) + ", " + literal_of(fields, "note"));
  });
  return source_file(array_text("VesselRow", "vessel_rows", rows));
}

}  // namespace platewright::generate
