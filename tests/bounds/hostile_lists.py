"""Lists, worksheets, logs and events that are made to take long."""

import itertools

from hostile_files import BYTES, EVENT_COMMANDS, RECIPE_COMMANDS, event_text, on, up_to, write


def price_lists(folder):
    header = ("price list: {}\nfrom: a supplier\non: 2027-10-04\ncurrency: USD\n"
              "columns: {{item: Item, pack: Pack, price: Price}}\nitems:\n")
    items = up_to(BYTES - 400, (f"  goods {i}: goods {i}" for i in range(100_000)))
    rows = {
        "matched": up_to(BYTES, itertools.chain(["Item,Pack,Price"], (
            f"goods {i},1 lb,1.00" for i in range(100_000)))),
        "unmatched": up_to(BYTES, itertools.chain(["Item,Pack,Price"], (
            f"godos {i},1 lb,1.00" for i in range(300_000)))),
        "one_row": "Item,Pack,Price\n" + "," * (BYTES - 100) + "\n",
        "one_header": "Item,Pack,Price" + "," * (BYTES - 100) + "\n",
        "one_field": "Item,Pack,Price\n" + "a" * (BYTES - 100) + ",1 lb,1\n",
        "same_item": "Item,Pack,Price\n" + "goods 1,1 lb,1.00\n" * 400_000,
        "never_closed": 'Item,Pack,Price\n"' + "a,b\n" * (BYTES // 4 - 20),
        "quotes": "Item,Pack,Price\n" + '"""",' * (BYTES // 5 - 20),
        "short_rows": "Item,Pack,Price\n" + "a,b\n" * (BYTES // 4 - 20),
    }
    commands = []
    for name, text in rows.items():
        write(folder, name + ".csv", text)
        write(folder, name + ".yaml", header.format(name + ".csv"), items)
        commands += [["prices", name + ".yaml"], ["prices", name + ".yaml", "--good-rows"]]
    return commands + [["check", "matched.yaml"]]


def logs(folder):
    cases = {
        "rising": up_to(BYTES, itertools.chain(["seconds,F"], (
            f"{i},{100 + i / 20000:.4f}" for i in range(1_200_000)))),
        "jumping": up_to(BYTES, itertools.chain(["seconds,F"], (
            f"{i}.{i % 997:03},{130 + i % 7}" for i in range(1_200_000)))),
        "falling_back": "seconds,F\n" + "1,130\n" * (BYTES // 6 - 10),
        "nothing": "seconds,F\n" + "x,y\n" * (BYTES // 4 - 10),
    }
    for name, text in cases.items():
        write(folder, name + ".csv", text)
    return [["lethality", name + ".csv", "--food", "meat"] for name in cases]


def worksheets(folder):
    write(folder, "trim.yaml", "worksheet: a cut\ncurrency: USD\ntrim test:\n"
          "  purchased: 999999 lb at 7.20 per lb\n  usable: 1 lb\n  by-products:\n",
          up_to(BYTES - 300, (f"    part {i}: 1 lb at 1/{1000 + i}" for i in range(100_000))),
          "  waste: the rest\n")
    write(folder, "trials.yaml", "trials: a cut\nstages: [purchased, cooked]\nweighed:\n",
          up_to(BYTES - 300, (f"  - 10.{i} lb, 7.{i} lb" for i in range(1000, 5990))))
    return on(["worksheet", "check"], "trim.yaml") + on(["trials", "check"], "trials.yaml")


def fractions(folder, count=4_900):
    """Amounts whose sum has a denominator without end."""
    write(folder, "larder.yaml", "currency: USD\nlarder:\n  a: {buy: [{pack: 1 lb, price: 1.07}], "
          "allergens: none}\n")
    write(folder, "recipe.yaml", "recipe: a soup\nwith: larder.yaml\nmakes: 100 portions\n"
          "ingredients:\n", up_to(BYTES - 200, (
              f"  - a: 1/{10 ** 15 + 2 * i + 1} lb" for i in range(count))))
    write(folder, "event.yaml", event_text("an event", ["recipe.yaml"], "a soup: 50 %"))
    return on(RECIPE_COMMANDS, "recipe.yaml") + on(EVENT_COMMANDS, "event.yaml")


def events(folder):
    write(folder, "larder.yaml", "currency: USD\nlarder:\n  a: {buy: [{pack: 1 lb, price: 1.07}], "
          "allergens: none}\n")
    write(folder, "recipe.yaml", "recipe: a soup\nwith: larder.yaml\nmakes: 100 portions\n"
          "ingredients: [a: 1 lb]\n")
    big = event_text("many kinds", ["recipe.yaml"], "a soup: 50 %", "\n" + up_to(
        BYTES - 400, (f"  kind {i}: 1" for i in range(100_000))).rstrip())
    write(folder, "kinds.yaml", big.replace("quote:", "portion shares:\n" + up_to(
        BYTES // 2, (f"  kind {i}: 1/2" for i in range(90_000))) + "quote:"))
    menu = up_to(BYTES - 400, ("  - a soup: 50 %" for _ in range(4_900)))
    write(folder, "menu.yaml", "event: a long menu\nwith: recipe.yaml\nguests: {adults: 84}\n"
          "menu:\n", menu, "quote:\n  margin: 30 %\n")
    labour = up_to(BYTES - 400, ("    - {role: cook, time: 1/7 h, rate: 20 per hour}"
                                 for _ in range(4_900)))
    write(folder, "labour.yaml", event_text("much labour", ["recipe.yaml"], "a soup: 50 %"),
          "  labour:\n", labour)
    write(folder, "crowd.yaml", event_text("a crowd", ["recipe.yaml"], "a soup: 50 %",
                                           "{adults: 10000000}"))
    return [command for name in ["kinds", "menu", "labour", "crowd"]
            for command in on(EVENT_COMMANDS, name + ".yaml")]


def own_rows(folder):
    rung = "{from: purchased, to: cooked, yield: 70 %, source: own}"
    write(folder, "cuts.yaml", "tables: own\ncuts:\n", up_to(BYTES - 300, (
        f"  - {{cut: cut {i}, rungs: [{rung}]}}" for i in range(4_900))))
    write(folder, "units.yaml", "tables: own\nunits:\n", up_to(BYTES - 300, (
        f"  - {{unit: unit {i}, is: {i + 1} mL, source: own}}" for i in range(4_900))))
    write(folder, "kitchen.yaml", "currency: USD\nmeasures: metric\nlarder:\n"
          "  salt: {weighs: {1 mL: 1.2 g}, buy: [{pack: 1 kg, price: 1.07}], allergens: none}\n"
          "kitchen:\n  owns: ", ", ".join(f"{i}.{i} mL" for i in range(1, 1500)), "\n")
    write(folder, "measured.yaml", "recipe: a soup\nwith: kitchen.yaml\nmakes: 10 portions\n"
          "ingredients:\n", *(f"  - salt: {i}.37 mL\n" for i in range(1, 500)))
    return [command for name in ["cuts", "units"] for command in
            on(["check"], name + ".yaml") + [["tables", name, "--book", name + ".yaml"]]] + on(
                RECIPE_COMMANDS, "measured.yaml")
