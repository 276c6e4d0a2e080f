// SPDX-License-Identifier: MIT
#pragma once
// The words in capitals that stand for what is typed. Each says on the help page how it is written,
// and to a shell what may be put in its place.

#include <array>

namespace platewright::cli {

/// What a shell offers where a value is typed.
enum class Completes { nothing, files, folders, recipes, cuts, commands };

struct Placeholder {
  const char* word;
  const char* written;  ///< examples of it, as they are typed
  Completes completes = Completes::nothing;
};

namespace placeholder {

inline constexpr Placeholder amount{"AMOUNT", R"("2 1/4 cups", "1 lb")"};
inline constexpr Placeholder answer{"LINE", R"(a line of the sheet, as it is printed there)"};
inline constexpr Placeholder by_product{"GOODS", R"("ground: 3 lb at 2 per lb")"};
inline constexpr Placeholder change{"CHANGE", R"("lamb leg=+12 %", "lamb leg=9.40 per lb")"};
inline constexpr Placeholder command{"COMMAND", R"(card, quote, order, ...)", Completes::commands};
inline constexpr Placeholder count{"COUNT", R"(a whole number: 10)"};
inline constexpr Placeholder cut{
    "CUT", R"("lamb leg, bone-in, roasted", as `tables cuts` lists it)", Completes::cuts};
inline constexpr Placeholder date{"DATE", R"(2027-10-09)"};
inline constexpr Placeholder file{"FILE", R"(lamb-leg.yaml)", Completes::files};
inline constexpr Placeholder folder{"FOLDER", R"(summer-supper)", Completes::folders};
inline constexpr Placeholder kind{"KIND", R"("whole cut", poultry, as `tables safety` lists it)"};
inline constexpr Placeholder length{"LENGTH", R"("14 in", "35 cm")"};
inline constexpr Placeholder moment{"MOMENT", R"("2027-10-05 10:00")"};
inline constexpr Placeholder name{"NAME", R"("lamb leg, bone-in", as your file writes it)"};
inline constexpr Placeholder number{"NUMBER", R"(84, 3.48 or "2 1/2")"};
inline constexpr Placeholder numbers{"NUMBERS", R"(40,60,80 with no space between)"};
inline constexpr Placeholder part{"PART", R"("loin: 4 lb", "4 lb" or "the rest")"};
inline constexpr Placeholder portion{"PORTION", R"("6 oz", "2 slices of 3 oz", "1 rib of 7")"};
inline constexpr Placeholder price{"PRICE", R"(24.50)"};
inline constexpr Placeholder purchase{"PURCHASE", R"("12 lb at 10 per lb", "12 lb for 120")"};
inline constexpr Placeholder rate{"RATE", R"("1.00 per lb", "2.20 per kg")"};
inline constexpr Placeholder recipe{"RECIPE", R"("roast chicken", as its file writes it)",
                                    Completes::recipes};
inline constexpr Placeholder rounding{
    "ROUNDING",
    R"("fewest measures", exact, "army card", "usda schools", "nearest 5 g and 1/2 tsp")"};
inline constexpr Placeholder section{"SECTION", R"(lines, sums, as JSON calls it)"};
inline constexpr Placeholder share{"SHARE", R"("28 %")"};
inline constexpr Placeholder short_of{"SHORT", R"("garlic: 3 lb")"};
inline constexpr Placeholder step{"STEP", R"("cooked to served 70 %")"};
inline constexpr Placeholder supplier{"SUPPLIER", R"("the butcher", as your file writes it)"};
inline constexpr Placeholder swap{"SWAP", R"("lamb leg=mutton leg")"};
inline constexpr Placeholder temperature{"TEMPERATURE", R"("325 F", "163 C")"};
inline constexpr Placeholder time{"TIME", R"("20 min", "1 h 30 min")"};
inline constexpr Placeholder timed{"TIMED", R"("5 lb in 150 min")"};
inline constexpr Placeholder unit{"UNIT", R"(g, cup, "fl oz")"};
inline constexpr Placeholder vessel{"VESSEL",
                                    R"("half sheet", "kettle of 80 L", "tub of 22 qt, holds 4")"};
inline constexpr Placeholder weight{"WEIGHT", R"("7.5 lb", "6 oz", "3.2 kg")"};
inline constexpr Placeholder words{"WORDS", R"(lamb leg)"};

}  // namespace placeholder

/// Every placeholder that is explained on a help page.
inline constexpr std::array placeholders{
    placeholder::amount,  placeholder::answer,      placeholder::by_product, placeholder::change,
    placeholder::command, placeholder::count,       placeholder::cut,        placeholder::date,
    placeholder::file,    placeholder::folder,      placeholder::kind,       placeholder::length,
    placeholder::moment,  placeholder::name,        placeholder::number,     placeholder::numbers,
    placeholder::part,    placeholder::portion,     placeholder::price,      placeholder::purchase,
    placeholder::rate,    placeholder::recipe,      placeholder::rounding,   placeholder::section,
    placeholder::share,   placeholder::short_of,    placeholder::step,       placeholder::supplier,
    placeholder::swap,    placeholder::temperature, placeholder::time,       placeholder::timed,
    placeholder::unit,    placeholder::vessel,      placeholder::weight,     placeholder::words};

}  // namespace platewright::cli
