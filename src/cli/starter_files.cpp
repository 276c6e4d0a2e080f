// SPDX-License-Identifier: MIT
// The files of a starter folder. Everything in them is invented; a test checks and prints them.

#include "cli/starter_files.hpp"

namespace platewright::cli {

const std::vector<StarterFile>& starter_event() {
  static const std::vector<StarterFile> files{
      {"event.yaml", FileKind::event, "who comes, the menu, the terms of the quote",
       R"yaml(# An event: who comes, what they eat, what it costs them. All of it is invented: write
# your own over it. What stands behind a # is for you; the program does not read it.
event: a summer supper

# The other files that this event needs. They lie in the same folder.
with: [roast-pork.yaml, carrots.yaml, larder.yaml, prices.yaml, kitchen.yaml]

# Day and hour at which the food is served, and the time zone.
at: 2028-06-10 18:30 America/Chicago

# Who comes. Call the kinds of guests what you like.
guests: {adults: 40, children: 8}
portion shares: {children: 1/2}          # a child is served half a portion
price shares: {children: 1/2}            # and pays half the price
may not eat: {children: [peanuts, tree nuts]}

# The dishes, by the names in their files, and who takes them: a share of the guests, or everyone.
menu:
  - roast pork shoulder: everyone
  - carrots in the oven: everyone
over: 5 %                                # so much more is made, for those who come back for more

quote:
  q factor: 4 %                          # the salt, the oil and the bread that no one measures
  labour:
    - {role: cook, workers: 2, time: 7 h, rate: 26.00 per hour}
    - {role: server, workers: 2, time: 5 h, rate: 20.00 per hour}
  extras:
    - {item: linen hire, price: 120.00}
    - {item: napkins and cups, price: 0.80, per guest: yes}
  overhead: 12 %                         # rent, power, the van: a share of all costs above
  margin: 30 %                           # of the price. Or "mark-up: 43 %", or "food cost: 28 %"
  round up to: 0.50
  service: 18 %, taxed
  tax: 8.25 %
  deposit: 30 %
)yaml"},
      {"roast-pork.yaml", FileKind::recipe, "a recipe for a roast",
       R"yaml(# A recipe, as you tested it. Its card for four shoulders:
# platewright card roast-pork.yaml --pieces 4
recipe: roast pork shoulder
with: [larder.yaml, prices.yaml]
makes: 10 portions of 5 oz
tested on: 1 shoulder of 6 lb            # only whole pieces are planned, never half a shoulder
pan: full-size hotel pan, 4 in, holds 2 shoulders
stands: 7 in                             # height of the loaded pan, for the racks of the oven

# Amounts as on a recipe card: 2 1/4 cups, 2 lb 3 oz, 8 cloves. "scale" says how a line grows:
# a rub covers a surface, twine is wanted by the piece. A line without it grows in proportion.
ingredients:
  - pork shoulder, boneless: 6 lb
  - salt: 1 tbsp
    scale: by surface
  - black pepper: 2 tsp
    scale: by surface
  - garlic: 6 cloves, grated
    scale: by surface
  - olive oil: 2 tbsp
    scale: by surface
  - butcher's twine: 6 ft
    scale: by piece

oven:
  - 450 F for 20 min
  - 300 F for 3 h until 185 F inside     # sliced when tender, far above the minimum
rest: 30 min

steps:
  - do: Rub with salt, pepper, garlic and oil. Tie. Cover and refrigerate.
    kind: dry-salt
    uses: ["pork shoulder, boneless", salt, black pepper, garlic, olive oil, butcher's twine]
    at: 38 F
    takes: 12 h to 24 h
    hands: 10 min per shoulder
  - do: Roast until the thickest part has reached the temperature. Rest under foil.
    oven: yes
  - do: Slice across the grain.
    kind: carve
    takes: 10 min per shoulder
)yaml"},
      {"carrots.yaml", FileKind::recipe, "a recipe for what goes with it",
       R"yaml(# A dish that goes with it.
recipe: carrots in the oven
with: [larder.yaml, prices.yaml]
makes: 12 portions of 4 oz
pan: full sheet pan, holds 24            # portions, for the plan of the ovens
stands: 2 in
ingredients:
  - carrot: 3 lb 8 oz, in sticks
  - olive oil: 3 tbsp
  - salt: 2 tsp
  - parsley: 1/4 cup, chopped
oven:
  - 400 F for 35 min
steps:
  - do: Toss the carrots with oil and salt on sheet pans.
    uses: [carrot, olive oil, salt]
    takes: 20 min
  - do: Roast until brown at the edges.
    oven: yes
  - do: Strew with parsley.
    uses: [parsley]
    takes: 5 min
)yaml"},
      {"larder.yaml", FileKind::larder, "what you cook with, and its allergens",
       R"yaml(# The larder: what you cook with. What it costs stands in prices.yaml.
currency: USD
measures: us                             # what a bare cup, pint or ounce means

larder:
  pork shoulder, boneless:
    # What roasting takes: a row that "platewright tables cuts pork shoulder" lists.
    cut: pork shoulder, boneless, roasted
    tested yields:                           # your own figures win over the table's
      - {from: cooked, to: served, yield: 92 %, source: "our slicing test, two shoulders"}
    allergens: none                          # say it, or every card prints NOT KNOWN

  carrot:
    produce: carrot, peeled                  # what peeling takes: "platewright tables produce"
    allergens: none

  garlic:
    produce: garlic, peeled
    allergens: none

  parsley:
    produce: parsley, trimmed
    weighs: {1 cup: 60 g}                    # your own weighing
    allergens: none

  olive oil: {allergens: none}

  salt:
    weighs as: salt, table                   # a row of "platewright tables densities"
    allergens: none

  black pepper:
    weighs as: black pepper, ground
    allergens: none

  butcher's twine: {allergens: none}
)yaml"},
      {"prices.yaml", FileKind::prices, "what a supplier asks",
       R"yaml(# What a supplier asks. One file for each supplier, or "buy:" in the larder itself.
prices: the wholesale market
currency: USD
on: 2028-05-01                           # the day of this list; the newest before the event counts
offers:
  pork shoulder, boneless: {piece: 6 lb, price: 4.20 per lb, days: 3}   # from order to delivery
  carrot: {pack: 25 lb, price: 20.00}
  garlic: {pack: 1 lb, price: 4.10}
  parsley: {pack: 1 bunch, weighs: 3 oz, price: 1.40}
  olive oil: {pack: 1 L, price: 9.50}
  salt: {pack: 3 lb, price: 1.90}
  black pepper: {pack: 4 oz, price: 4.40}
  butcher's twine: {pack: 420 ft, price: 6.80}
)yaml"},
      {"kitchen.yaml", FileKind::tables, "measures, ovens and people",
       R"yaml(# What your kitchen has. The plan of its ovens and people:
# platewright day event.yaml
tables: our kitchen
kitchen:
  owns: 1/4 tsp, 1/2 tsp, 1 tsp, 1 tbsp, 1/4 cup, 1/3 cup, 1/2 cup, 1 cup, 1 qt
  ovens:
    - oven: upper oven
      racks: 5 of full sheet pan
      apart: 4 in
      to: 500 F
    - oven: lower oven
      racks: 5 of full sheet pan
      apart: 4 in
      to: 500 F
  hobs: 4
  people:
    - {role: cook, workers: 2, hours: 10:00 to 21:00}
)yaml"}};
  return files;
}

}  // namespace platewright::cli
