// SPDX-License-Identifier: MIT
// roast, lethality.

#include <algorithm>

#include "cli/commands.hpp"
#include "cli/open_book.hpp"
#include "platewright/card/roast_sheet.hpp"
#include "platewright/files/read_core_log.hpp"
#include "platewright/number/read.hpp"
#include "platewright/problem/catalogue/heat.hpp"
#include "platewright/quantity/read_amount.hpp"
#include "platewright/quantity/read_temperature.hpp"

namespace platewright::cli {
namespace {

Duration time_from(const std::string& text, const Book& book) {
  return to_duration(read_amount(text, book.tables.units, book.measures));
}

/// `450 F for 25 min`, or `325 F`.
RoastOvenStep oven_step(const std::string& text, const Book& book) {
  return from_argument("--oven", [&] {
    const std::size_t timed = text.find(" for ");
    RoastOvenStep step{read_temperature(text.substr(0, timed)), {}};
    if (timed != std::string::npos) step.time = time_from(text.substr(timed + 5), book);
    return step;
  });
}

RoastShape shape_from(const RoastArguments& arguments, const Book& book) {
  const Mass weight = weight_above_zero("--weight", arguments.weight, book);
  const auto length = [&](const std::string& text) {
    return to_length(read_amount(text, book.tables.units, book.measures));
  };
  if (!arguments.girth.empty()) {
    return from_argument("--girth",
                         [&] { return RoastShape::cylinder(weight, length(arguments.girth)); });
  }
  if (!arguments.thickness.empty()) {
    return from_argument("--thickness",
                         [&] { return RoastShape::slab(weight, length(arguments.thickness)); });
  }
  return RoastShape::sphere(weight);
}

RoastTerms terms_from(const RoastArguments& arguments, const Book& book) {
  const auto temperature = [](const char* argument, const std::string& text) {
    return from_argument(argument, [&] { return read_temperature(text); });
  };
  RoastTerms terms{shape_from(arguments, book),
                   arguments.fan ? OvenKind::fan : OvenKind::still,
                   {},
                   temperature("--start", arguments.start),
                   temperature("--until", arguments.until),
                   temperature("--room", arguments.room),
                   from_argument("--rest", [&] { return time_from(arguments.rest, book); }),
                   usual_meat()};
  for (const std::string& step : arguments.oven) terms.oven.push_back(oven_step(step, book));
  return terms;
}

/// `5 lb in 150 min`: a roast of the same shape, oven and end. Nothing where none was timed.
std::optional<Calibration> calibration_from(const RoastArguments& arguments, RoastTerms terms,
                                            const Book& book) {
  if (arguments.timed.empty()) return std::nullopt;
  return from_argument("--timed", [&] {
    const std::size_t in = arguments.timed.find(" in ");
    if (in == std::string::npos) throw Failure(problems::timed_roast_malformed(arguments.timed));
    const Mass weight = weight_above_zero("--timed", arguments.timed.substr(0, in), book);
    terms.shape = similar_shape(terms.shape, weight);
    return calibrated_by(RoastQuestion::of(terms), time_from(arguments.timed.substr(in + 4), book));
  });
}

/// Rows whose name has all the words, and with them those of the rise after the oven.
std::vector<PublishedTime> published_for(const std::vector<std::string>& wanted,
                                         const Tables& tables) {
  std::vector<PublishedTime> out;
  if (wanted.empty()) return out;
  for (const PublishedTime& time : tables.times) {
    const bool named = std::all_of(wanted.begin(), wanted.end(), [&](const std::string& word) {
      return time.of.find(word) != std::string::npos;
    });
    if (time.kind == PublishedTimeKind::carry_over ||
        (time.kind == PublishedTimeKind::roasting && named))
      out.push_back(time);
  }
  return out;
}

}  // namespace

Result run(const RoastArguments& arguments, const CommonOptions& common, ProblemList& problems) {
  const OpenedBook opened = tables_or_book({}, problems);
  const Book& book = *opened;
  const FoodKind kind =
      from_argument("--kind", [&] { return book.tables.safety.kind_called(arguments.kind); });
  const RoastTerms terms = terms_from(arguments, book);
  const RoastQuestion question =
      from_argument("the roast", [&] { return RoastQuestion::of(terms); });
  const auto calibration = calibration_from(arguments, terms, book);
  const RoastBand band =
      from_argument("the roast", [&] { return roast_band(question, calibration); });
  const KitchenView view(kitchen_wanted(common, book, system_for(common, book.measures)));
  return {roast_sheet(question, band, kind, book.tables,
                      published_for(arguments.published, book.tables), view),
          {},
          80};
}

Result run(const LethalityArguments& arguments, const CommonOptions&, ProblemList& problems) {
  const OpenedBook opened = tables_or_book({}, problems);
  const Book& book = *opened;
  std::vector<LethalityStandard> standards;
  const auto add = [&](const char* reduction) {
    standards.push_back(from_argument("--fat", [&] {
      std::optional<Rational> fat;
      if (!arguments.fat.empty()) fat = read_share(arguments.fat);
      return standard_for(book.tables.lethality, arguments.food, reduction, fat);
    }));
  };
  if (arguments.food == "meat") {
    standards.push_back(roast_standard(book.tables.safety));
    add("6.5 log");
  }
  add("7 log");
  const auto curve = read_core_log(arguments.file, problems);
  if (!curve) throw BookHasProblems{};
  return {lethality_sheet(arguments.file, *curve, standards), {}, 80};
}

}  // namespace platewright::cli
