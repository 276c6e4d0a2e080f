// SPDX-License-Identifier: MIT
#include "cli/add_commands.hpp"
#include "cli/command_options.hpp"

namespace platewright::cli {

void add_roast_command(CLI::App& program, RoastArguments& parsed, CommonOptions& common) {
  CLI::App* roast =
      add_command(program, "roast", command_group::kitchen,
                  "When a roast is likely to be done, and how it rises in the rest", common);
  add_kitchen_options(*roast, common);
  Options asked(*roast, group::asked);
  asked.value("--kind", placeholder::kind, parsed.kind, "of food")->required();
  asked.value("--weight", placeholder::weight, parsed.weight, "of one piece")->required();
  asked
      .each("--oven", placeholder::temperature, parsed.oven,
            "its last step, as \"325 F\"; before it, once for each, steps as \"450 F for 25 min\"")
      ->required();
  asked.value("--until", placeholder::temperature, parsed.until, "inside, when it is taken out")
      ->required();
  asked.value("--start", placeholder::temperature, parsed.start,
              "inside, when it goes in; 40 F if not said");
  asked.value("--rest", placeholder::time, parsed.rest, "20 min if not said");
  asked.value("--room", placeholder::temperature, parsed.room, "where it rests; 70 F if not said");
  asked.flag("--fan", parsed.fan, "the oven's fan is on");
  Options shape(only_one_of(*roast, "shape", "as thick as a ball of its weight if none"),
                group::shape);
  shape.value("--girth", placeholder::length, parsed.girth, "of a long piece, once around");
  shape.value("--thickness", placeholder::length, parsed.thickness, "of a flat piece");
  Options beside(*roast, group::shown);
  beside.value("--timed", placeholder::timed, parsed.timed,
               "your own roast of this shape, oven and end, which the estimate is fitted to");
  beside.value("--published", placeholder::words, parsed.published,
               "published times of this beside it");
}

void add_lethality_command(CLI::App& program, LethalityArguments& parsed, CommonOptions& common) {
  CLI::App* lethality = add_command(program, "lethality", command_group::kitchen,
                                    "Whether a log of the core holds what the tables ask", common);
  argument(*lethality, "file", placeholder::file, parsed.file,
           "a CSV log: a line minutes,F and a line for each reading");
  Options asked(*lethality, group::asked);
  asked.one_of("--food", "FOOD", {"meat", "chicken", "turkey"}, parsed.food, "what was cooked")
      ->required();
  asked.value("--fat", placeholder::share, parsed.fat, "of chicken or turkey");
}

}  // namespace platewright::cli
