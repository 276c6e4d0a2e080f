// SPDX-License-Identifier: MIT
#pragma once
// The files that commands read while calls of the system go wrong, and the commands.

#include <string>
#include <utility>
#include <vector>

namespace platewright::test {

/// Where the sheet of a command goes.
enum class SheetGoes {
  to_file,
  to_reader,  ///< of standard output
  to_folder,  ///< which the command makes
};

/// A command line without the program, what its sheet holds, and where it goes.
struct FaultyCommand {
  std::string words;
  std::string prints;
  SheetGoes goes = SheetGoes::to_file;
};

/// Every command that reads a file or writes one, each kind of file at least once.
inline std::vector<FaultyCommand> faulty_commands() {
  return {{"cost soup.yaml", "soup"},
          {"cost soup.yaml", "soup", SheetGoes::to_reader},
          {"plates soup.yaml", "soup"},
          {"card soup.yaml --format json", "soup"},
          {"card event.yaml --format markdown", "soup"},
          {"quote event.yaml --format csv", "event"},
          {"order event.yaml", "salt"},
          {"timeline event.yaml", "a supper"},
          {"timeline zoned.yaml --format icalendar", "VCALENDAR"},
          {"day kitchen.yaml", "Plan of the day"},
          {"budget event.yaml --price 50 --margin 30% --dish 'lamb leg' --cut lamb --portion 6oz",
           "lamb"},
          {"check event.yaml list.yaml", "", SheetGoes::to_reader},
          {"prices list.yaml --book larder.yaml", "offers"},
          {"worksheet sheet.yaml", "shoulder"},
          {"worksheet class", "Worksheets of a class"},
          {"trials trials.yaml", "shoulder"},
          {"lethality log.csv --food meat", "log.csv"},
          {"measure '1 cup' g --of salt --book larder.yaml", "salt"},
          {"tables units cup --book soup.yaml", "cup"},
          {"yield lamb --buy 12lb --portion 6oz --book larder.yaml", "lamb"},
          {"roast --kind 'whole cut' --weight '5 lb' --oven '325 F' --until '130 F'", "oven"},
          {"workbook event.yaml --format xlsx", "xl/workbook.xml"},
          {"recipe found.json --book larder.yaml", "salt"},
          {"exercise 7 --book larder.yaml", "exercise 7"},
          {"new event out/first", "Written into", SheetGoes::to_folder}};
}

inline std::vector<std::pair<std::string, std::string>> fault_books() {
  return {{"larder.yaml",
           "currency: USD\nlarder:\n"
           "  salt: {weighs: {1 cup: 290 g}, buy: [{pack: 3 lb, price: 2.00}], allergens: none}\n"
           "  lamb:\n    cut: lamb leg, bone-in, roasted\n"
           "    buy: [{piece: 7.5 lb, price: 8.95 per lb}]\n    allergens: none\n"},
          {"soup.yaml",
           "recipe: soup\nwith: larder.yaml\nmakes: 10 portions\ningredients:\n  - salt: 1 lb\n"
           "steps:\n  - do: Stir.\n    takes: 10 min\n"},
          {"leg.yaml",
           "recipe: lamb leg\nwith: larder.yaml\nmakes: 10 portions of 6 oz\n"
           "tested on: 1 leg of 7.5 lb\ningredients:\n  - lamb: 7.5 lb\n"},
          {"event.yaml",
           "event: a supper\nwith: [soup.yaml, leg.yaml]\nat: 2027-10-09 18:30\n"
           "guests: {adults: 20}\nmenu: [soup: everyone, lamb leg: everyone]\n"
           "quote: {overhead: 12 %, margin: 30 %}\n"},
          {"zoned.yaml",
           "event: a supper\nwith: soup.yaml\nat: 2027-10-09 18:30 America/Chicago\n"
           "guests: {adults: 20}\nmenu: [soup: everyone]\n"},
          {"kitchen.yaml",
           "event: a supper\nwith: soup.yaml\nat: 2027-10-09 18:30\nguests: {adults: 20}\n"
           "menu: [soup: everyone]\nkitchen: {hobs: 2, people: [{role: cook}]}\n"},
          {"list.yaml",
           "price list: list.csv\nfrom: a supplier\non: 2027-10-04\ncurrency: USD\n"
           "columns: {item: Item, pack: Pack, price: Price}\nitems: {SALT: salt}\n"},
          {"list.csv", "Item,Pack,Price\nSALT,3 lb,2.10\n"},
          {"sheet.yaml",
           "worksheet: shoulder\ncurrency: USD\ntrim test:\n  purchased: 16 lb at 7.20 per lb\n"
           "  usable: 12 lb\n  waste: 4 lb\n"},
          {"class/ana.yaml",
           "worksheet: shoulder\ncurrency: USD\ntrim test:\n  purchased: 16 lb at 7.20 per lb\n"
           "  usable: 12 lb\n  waste: 4 lb\n  answers:\n    yield: 75 %\n"},
          {"trials.yaml",
           "trials: shoulder\nstages: [purchased, cooked]\nweighed:\n  - 10 lb, 7 lb\n"
           "  - 11 lb, 8 lb\n  - 9 lb, 6 lb\n"},
          {"found.json",
           "{\"@context\": \"https://schema.org\", \"@type\": \"Recipe\", \"name\": \"brine\",\n"
           " \"recipeYield\": \"10 servings\", \"recipeIngredient\": [\"1 lb salt\"],\n"
           " \"recipeInstructions\": [\"Stir.\"]}\n"},
          {"log.csv", "minutes,F\n0,130\n10,133\n20,133\n"}};
}

}  // namespace platewright::test
