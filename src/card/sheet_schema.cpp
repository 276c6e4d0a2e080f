// SPDX-License-Identifier: MIT
#include "platewright/card/sheet_schema.hpp"

#include "card/json_document.hpp"
#include "platewright/card/writers.hpp"

namespace platewright {
namespace {

Json text_schema(const char* description) {
  return {{"description", description}, {"type", "string"}};
}

Json list_of_texts(const char* description) {
  return {{"description", description}, {"type", "array"}, {"items", {{"type", "string"}}}};
}

Json kinds() {
  Json out = Json::array();
  for (const SheetKind kind : all_sheet_kinds()) out.push_back(name_of(kind));
  return out;
}

Json map_of(const char* description, Json each) {
  return {{"description", description},
          {"type", "object"},
          {"propertyNames", {{"$ref", "#/$defs/key"}}},
          {"additionalProperties", std::move(each)}};
}

Json figure_schema() {
  Json exact = text_schema("the number itself: whole, decimal or a fraction, 7/3");
  exact["pattern"] = "^-?[0-9]+([.][0-9]+|/[0-9]+)?$";
  return {{"description", "a figure"},
          {"type", "object"},
          {"required", {"exact", "shown"}},
          {"additionalProperties", false},
          {"properties",
           {{"exact", std::move(exact)},
            {"shown", text_schema("the same, rounded as the sheet rounds it")},
            {"unit", text_schema("what both are counted in")},
            {"text", text_schema("what a page prints, where that is another number")}}}};
}

Json definitions() {
  Json row =
      map_of("what stands in one row, by column; of a column with sources also their numbers",
             {{"$ref", "#/$defs/value"}});
  return {{"key", {{"type", "string"}, {"pattern", "^[a-z][a-z0-9_]*$"}}},
          {"figure", figure_schema()},
          {"value",
           {{"description", "nothing, words, a figure, or the number of a source, counted from 1"},
            {"anyOf",
             {{{"type", "null"}},
              {{"type", "string"}},
              {{"type", "integer"}, {"minimum", 1}},
              {{"$ref", "#/$defs/figure"}}}}}},
          {"row", std::move(row)}};
}

}  // namespace

std::string sheet_schema() {
  const Json rows{{"type", "array"}, {"items", {{"$ref", "#/$defs/row"}}}};
  const Json properties{
      {"version", {{"description", "of this shape"}, {"const", json_version}}},
      {"sheet", {{"description", "which kind of sheet it is"}, {"enum", kinds()}}},
      {"title", text_schema("what stands on top of the sheet")},
      {"date", text_schema("the day that the sheet is for")},
      {"subtitles", list_of_texts("what stands below the title")},
      {"arrays", map_of("the sheet's tables, lists and boxes, by name", rows)},
      {"titles", map_of("the headings of those that have one", {{"type", "string"}})},
      {"sources", list_of_texts("where figures come from, in the order of their numbers")}};
  return json_document({{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                        {"title", "platewright: a sheet as JSON"},
                        {"type", "object"},
                        {"required", {"version", "sheet", "title", "arrays", "titles", "sources"}},
                        {"additionalProperties", false},
                        {"properties", properties},
                        {"$defs", definitions()}});
}

}  // namespace platewright
