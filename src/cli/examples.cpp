// SPDX-License-Identifier: MIT
#include "cli/examples.hpp"

namespace platewright::cli {
namespace {

struct ExampleOf {
  const char* command;
  Example example;
};

constexpr ExampleOf all[] = {
    {"card",
     {R"(platewright card lamb-leg.yaml --pieces 10)", "one leg was tested, ten are roasted"}},
    {"card",
     {R"(platewright card event.yaml --large --page-lines 60 --output cards.txt)",
      "every card of the event in large print, into a file that you can print"}},
    {"card", {R"(platewright card event.yaml --labels)", "labels for what is made and kept"}},
    {"timeline", {R"(platewright timeline event.yaml)", "who begins what when"}},
    {"timeline",
     {R"(platewright timeline event.yaml --output supper.ics)",
      "the same as a calendar, for a telephone"}},
    {"day",
     {R"(platewright day summer-supper/event.yaml)",
      "ovens and people through the day; a book whose kitchen is known"}},
    {"day",
     {R"(platewright day summer-supper/event.yaml --guests 120)",
      "the same day if 120 guests come"}},
    {"roast",
     {R"(platewright roast --kind "whole cut" --weight "6 lb" --oven "325 F" --until "130 F")",
      "when a leg of lamb is likely to come out"}},
    {"roast",
     {R"(platewright roast --kind poultry --weight "4 lb" --oven "425 F for 20 min")"
      R"( --oven "375 F" --until "165 F")",
      "a bird that begins in a hotter oven"}},
    {"lethality",
     {R"(platewright lethality core.csv --food meat)", "is the time at that temperature enough?"}},
    {"lethality",
     {R"(platewright lethality core.csv --food turkey --fat "5 %")",
      "turkey is held by how fat it is"}},
    {"cost", {R"(platewright cost lamb-leg.yaml --at-price 24.50)", "the food cost percentage"}},
    {"cost",
     {R"(platewright cost event.yaml --price "lamb leg, bone-in=+12 %")",
      "what if lamb rises by 12 %?"}},
    {"plates", {R"(platewright plates event.yaml)", "the plate cost of everything on a menu"}},
    {"plates",
     {R"(platewright plates lamb-leg.yaml --price "lamb leg, bone-in=+12 %" --output plates.csv)",
      "as a table for a spreadsheet, what if lamb rises by 12 %?"}},
    {"quote", {R"(platewright quote event.yaml)", "what a guest pays, and why"}},
    {"quote",
     {R"(platewright quote event.yaml --client --output quote.txt)",
      "the sheet for the client, without costs"}},
    {"budget",
     {R"(platewright budget event.yaml --price 52 --margin "25 %")"
      R"( --dish "roast chicken" --cut "lamb leg, bone-in")"
      R"( --cut "pork shoulder, boneless" --portion "5 oz" --portion "6 oz")",
      "two cuts in two sizes against what the client will pay"}},
    {"budget",
     {R"(platewright budget event.yaml --price 48 --margin "30 %")"
      R"( --dish "roast chicken" --cut "chicken, whole" --portion "8 oz")",
      "does the bird that is planned fit the price?"}},
    {"recipe",
     {R"(platewright recipe buttered-carrots.json --book larder.yaml)",
      "what can be read of a published recipe, and what is left to you"}},
    {"recipe",
     {R"(platewright recipe buttered-carrots.json --book larder.yaml)"
      R"( --output buttered-carrots.yaml)",
      "the same, kept as a file to finish by hand"}},
    {"workbook",
     {R"(platewright workbook event.yaml --output supper.xlsx)",
      "change one price in it, and the quote follows"}},
    {"workbook",
     {R"(platewright workbook event.yaml --guests 120 --output more-guests.xlsx)",
      "the same for 120 guests"}},
    {"order", {R"(platewright order event.yaml)", "what to buy from whom, and by when"}},
    {"order",
     {R"(platewright order event.yaml --cheapest --output order.csv)",
      "the cheapest offers, for a spreadsheet"}},
    {"prices",
     {R"(platewright prices greengrocer-41.yaml --book larder.yaml --good-rows)",
      "this week's list, held against what you buy"}},
    {"prices",
     {R"(platewright prices greengrocer-41.yaml --book larder.yaml --good-rows)"
      R"( --output prices-41.yaml)",
      "the same, kept as a file that a larder can name"}},
    {"yield",
     {R"(platewright yield "lamb leg, bone-in, roasted" --guests 84 --portion "6 oz")",
      "how much lamb to buy for 84"}},
    {"yield",
     {R"(platewright yield "lamb leg, bone-in, roasted" --buy "12 lb" --portion "6 oz")",
      "how many 12 lb of lamb will feed"}},
    {"worksheet",
     {R"(platewright worksheet beef-rib-with-answers.yaml)",
      "the test worked, your answers marked"}},
    {"worksheet",
     {R"(platewright worksheet --purchased "12 lb at 10 per lb" --usable "9 lb")"
      R"( --waste "bone: 2 lb" --cutting-loss "the rest")",
      "a trim test typed in, without a file"}},
    {"exercise",
     {R"(platewright exercise 7 --output mine.yaml)",
      "a test to work: write your answers into the file"}},
    {"exercise", {R"(platewright exercise 7 --solution)", "the same test, worked line by line"}},
    {"trials",
     {R"(platewright trials pork-shoulder-trials.yaml)", "the average of your own tests"}},
    {"trials",
     {R"(platewright trials pork-shoulder-trials.yaml --tables --output our-cuts.yaml)",
      "the same, kept as a cut of your own"}},
    {"check",
     {R"(platewright check event.yaml)", "every mistake in it, each with what to do about it"}},
    {"check",
     {R"(platewright check event.yaml lamb-shoulder.yaml)", "the files of several jobs at once"}},
    {"measure",
     {R"(platewright measure "2 1/4 cups" g --of "flour, all-purpose")", "cups of flour in grams"}},
    {"measure", {R"(platewright measure "40 tbsp")", "how a kitchen measures forty spoons"}},
    {"tables",
     {R"(platewright tables cuts lamb leg)", "what is known of a leg of lamb, and from whom"}},
    {"tables", {R"(platewright tables safety)", "the temperatures, and whose they are"}},
    {"schema",
     {R"(platewright schema event > event.json)", "an editor that knows it offers the keys"}},
    {"schema",
     {R"(platewright schema sheet)", "what a program finds in what --format json writes"}},
    {"new",
     {R"(platewright new event summer-supper)", "then open summer-supper/event.yaml and read on"}},
    {"new", {R"(platewright new event "Mill supper, June")", "a folder whose name has spaces"}},
    {"answer",
     {R"(platewright answer < jobs.jsonl)",
      R"(a line of them: ["cost", "lamb-leg.yaml", "--pieces", "4"])"}},
    {"answer",
     {R"(platewright answer < jobs.jsonl > answers.jsonl)", "an answer to each line of the file"}},
    {"completions",
     {R"(platewright completions bash > platewright.bash)",
      "then `source platewright.bash`, and the Tab key offers commands, options and names"}},
    {"completions", {R"(platewright completions recipes event.yaml)", "the recipes of this event"}},
    {"manual", {R"(platewright manual > platewright.1)", "then `man -l platewright.1`"}},
    {"manual", {R"(platewright manual | groff -man -Tutf8)", "the same without man"}},
    {"help", {R"(platewright help card)", "what `card` takes"}},
    {"help", {R"(platewright help)", "every command"}},
};

}  // namespace

std::vector<Example> examples_of(std::string_view command) {
  std::vector<Example> out;
  for (const ExampleOf& row : all) {
    if (row.command == command) out.push_back(row.example);
  }
  return out;
}

}  // namespace platewright::cli
