// SPDX-License-Identifier: MIT
// What is cooked from: cards, the clock and the day.

#include "cli/add_commands.hpp"
#include "cli/command_options.hpp"

namespace platewright::cli {
namespace {

/// Whatever sizes or writes a card is of no use for labels; not said at each option of the help.
void refuse_beside(const CLI::App& card, const char* flag) {
  for (const char* other :
       {"--recipe", "--portions", "--pieces", "--factor", "--on-hand", "--short", "--portion-size",
        "--piece-weight", "--pan", "--batches", "--with-sub-recipes", "--cost", "--date",
        "--measures", "--tolerance", "--rounding"}) {
    if (card.get_option(other)->count() > 0) throw CLI::ExcludesError(flag, other);
  }
}

}  // namespace

void add_card_command(CLI::App& program, CardArguments& parsed, CommonOptions& common) {
  CLI::App* card = add_command(program, "card", command_group::kitchen,
                               "A recipe's card at the size wanted, or all cards of an event",
                               common, {"text", "csv", "json", "markdown", "html", "json-ld"});
  argument(*card, "file", placeholder::file, parsed.file, "a recipe's or an event's file");
  add_kitchen_options(*card, common);
  Options(add_scale(*card, parsed.scale), group::size)
      .value("--batches", placeholder::numbers, parsed.batches,
             "several sizes side by side, as factors")
      ->delimiter(',');
  Options shown(*card, group::shown);
  shown.value("--recipe", placeholder::recipe, parsed.recipe, "of several recipes, this one");
  shown.flag("--with-sub-recipes", parsed.sub_recipes, "the cards of what it uses first");
  shown.flag("--cost", parsed.cost, "the food cost, in all and of a portion");
  shown.value("--date", placeholder::date, parsed.date, "the date that is printed on the card");
  auto* labels =
      shown.flag("--labels", parsed.labels, "of an event: labels for what is made and kept");
  auto* buffet = shown.flag("--buffet", parsed.buffet, "of an event: cards that guests read");
  buffet->excludes(labels);
  card->parse_complete_callback([card, labels, buffet] {
    if (labels->count() > 0) refuse_beside(*card, "--labels");
    if (buffet->count() > 0) refuse_beside(*card, "--buffet");
  });
  add_prices(*card, parsed.prices);
  add_changes(*card, parsed.prices);
}

void add_timeline_command(CLI::App& program, TimelineArguments& parsed, CommonOptions& common) {
  CLI::App* timeline = add_command(program, "timeline", command_group::kitchen,
                                   "The kitchen's clock, back from service", common,
                                   {"text", "csv", "json", "markdown", "html", "icalendar"});
  argument(*timeline, "file", placeholder::file, parsed.file, "an event's file");
  add_prices(*timeline, parsed.prices);
  add_changes(*timeline, parsed.prices);
  add_deliveries(*timeline, parsed.prices);
}

void add_day_command(CLI::App& program, DayArguments& parsed, CommonOptions& common) {
  CLI::App* day = add_command(program, "day", command_group::kitchen,
                              "The plan of an event's day: which oven when, who does what", common);
  argument(*day, "file", placeholder::file, parsed.file, "an event's file");
  add_kitchen_options(*day, common);
  add_prices(*day, parsed.prices);
  add_changes(*day, parsed.prices);
}

}  // namespace platewright::cli
