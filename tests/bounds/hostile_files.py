"""Files that are made to take long: each function fills a folder and gives the commands to try."""

import itertools

BYTES = 8 << 20  # the most that is read of one file
RECIPE_COMMANDS = ["check", "card", "cost"]
EVENT_COMMANDS = ["check", "card", "cost", "quote", "order", "timeline", "order --cheapest",
                  "quote --movers 10%", "quote --floor 30% --draws 1000000",
                  "quote --guest-table 10,100,1000", "quote --client"]


def up_to(size, lines):
    """Lines for as long as they fit."""
    out, length = [], 0
    for line in lines:
        length += len(line.encode()) + 1
        if length > size:
            break
        out.append(line)
    return "\n".join(out) + "\n"


def write(folder, name, *parts):
    folder.joinpath(name).write_text("".join(parts), encoding="utf-8")


def on(commands, file):
    return [[*command.split(" ")[:1], file, *command.split(" ")[1:]] for command in commands]


def everywhere(file):
    """Whatever the file is, each command that reads one is asked."""
    return (on(["check", "card", "cost", "quote", "order", "timeline", "prices", "worksheet",
                "trials"], file) +
            [["lethality", file, "--food", "meat"], ["measure", "1 lb", "g", "--book", file],
             ["tables", "cuts", "lamb", "--book", file], ["yield", "lamb leg", "--book", file]])


def text_cases():
    """Text that is hard on whoever reads YAML: one file each."""
    head = "larder:\n"
    size = BYTES - 200
    return {
        "one_long_line": "recipe: " + "a" * (size - 8),
        "one_long_word_of_many": "recipe: " + "ab " * (size // 3 - 8),
        "one_long_quotation": 'recipe: "' + "a" * (size - 12) + '"\n',
        "quotation_never_closed": head + '  a: "' + "b\n" * (size // 2 - 20),
        "brackets": head + "  a: " + "[" * (size - 30),
        "braces": head + "  a: " + "{a: " * (size // 4 - 30),
        "dashes": head + "  " + "- " * (size // 2 - 30),
        "question_marks": head + "  " + "? " * (size // 2 - 30),
        "colons": head + "  " + "a: " * (size // 3 - 30),
        "commas": head + "  a: [" + "," * (size - 30) + "]\n",
        "steps_of_indent": head + up_to(size - 20, (" " * (i + 2) + "a:" for i in range(9999))),
        "blanks": head + " " * (size - 30),
        "empty_lines": head + "\n" * (size - 30),
        "remarks": head + "# a\n" * (size // 4 - 10) + "  a: [\n",
        "tabs": head + "\ta: b\n" * (size // 6 - 10),
        "one_wrong_at_the_end": head + "  a: {}\n  b: {}\n" + "#\n" * (size // 2 - 40) + "  c: [\n",
        "anchors": head + up_to(size - 20, (f"  a{i}: &a{i} b" for i in itertools.count())),
        "aliases": head + "  a: &a [a]\n" + up_to(size - 40, (f"  b{i}: *a" for i in
                                                             itertools.count())),
        "keys_twice": head + "  salt: {}\n" * (size // 11 - 10),
        "keys_unknown": up_to(size, itertools.chain(
            ["recipe: a"], (f"k{i}: 1" for i in range(190_000)))),
        "keys_without_value": up_to(size, itertools.chain(
            ["larder:"], (f"  k{i}:" for i in range(190_000)))),
        "other_script": "recipe: " + "\u0430a" * 20_000 + "\n",
        "marks_on_a_letter": "recipe: a" + "\u0301\u0323" * 15_000 + "\nmakes: 2 qt\n",
        "not_utf8_at_the_end": head + "  a: {}\n" * 500_000,
        "many_texts": up_to(size, itertools.chain(["recipe: a", "makes: 2 qt", "steps:"], (
            "  - do: " + "word " * 12_000 for _ in itertools.count()))),
        "long_numbers": up_to(size, itertools.chain(["recipe: a", "makes: 2 qt", "ingredients:"], (
            "  - salt: " + "1" * 60_000 + " lb" for _ in itertools.count()))),
        "steps": up_to(size, itertools.chain(
            ["recipe: a", "with: many.yaml", "makes: 2 qt", "ingredients:"],
            (f"  - a{i}: 1 lb" for i in range(4_900)), ["steps:"],
            (f"  - {{do: stir, uses: [{', '.join(f'a{j}' for j in range(i % 50))}]}}"
             for i in range(4_900)))),
        "shares": up_to(size, itertools.chain(
            ["recipe: a", "with: many.yaml", "makes: 2 qt", "ingredients:"],
            (f"  - a{i}: 1 lb" for i in range(2_400)),
            (f"  - b{i}: 1 % of [a{i}, a{i + 1}]" for i in range(2_399)))),
        "marks_in_many": up_to(size, itertools.chain(
            ["recipe: a", "notes:"], ("  - a" + "\u0301\u0323" * 7_000
                                      for _ in itertools.count()))),
    }


def texts(folder):
    commands = []
    write(folder, "many.yaml", "currency: USD\nlarder:\n",
          *(f"  {letter}{i}: {{buy: [{{pack: 1 lb, price: 1}}], allergens: none}}\n"
            for letter in "ab" for i in range(4_900)))
    for name, text in text_cases().items():
        folder.joinpath(name + ".yaml").write_text(text, encoding="utf-8")
        if name == "not_utf8_at_the_end":
            with folder.joinpath(name + ".yaml").open("ab") as file:
                file.write(b"\xff")
        commands += everywhere(name + ".yaml") if name == "one_long_line" else on(
            ["check", "cost", "worksheet"], name + ".yaml")
    return commands


def larder_lines(numbers, price="1.07"):
    return (f"  a{i}: {{buy: [{{pack: 1 lb, price: {price}}}], allergens: none}}" for i in numbers)


def event_text(name, files, menu, guests="{adults: 84}"):
    return (f"event: {name}\nwith: [{', '.join(files)}]\nat: 2027-10-09 18:30 America/Chicago\n"
            f"guests: {guests}\nmenu: [{menu}]\nquote:\n  overhead: 12 %\n  margin: 30 %\n")


def recipes_of(folder, names, lines_of_each=4_900, called="recipe"):
    """As many recipes as it takes for a line of each name; their files."""
    files = []
    for first in range(0, len(names), lines_of_each):
        files.append(f"{called}{first}.yaml")
        write(folder, files[-1], f"recipe: soup {first}\nwith: larder.yaml\nmakes: 100 portions\n"
              "ingredients:\n", *(f"  - {name}\n" for name in names[first:first + lines_of_each]))
    return files


def many_ingredients(folder, count=48_000, used=19_500):
    """Tens of thousands of ingredients, each with its offer; the recipes of one event use some."""
    firsts = range(0, count, 30_000)
    for first in firsts:
        write(folder, f"larder{first}.yaml", "currency: USD\nlarder:\n",
              up_to(BYTES - 100, larder_lines(range(first, min(first + 30_000, count)))))
    larders = ", ".join(f"larder{first}.yaml" for first in firsts)
    write(folder, "larder.yaml", f"currency: USD\nwith: [{larders}]\nlarder: {{}}\n")
    files = recipes_of(folder, [f"a{i}: 1 oz" for i in range(used)])
    menu = ", ".join(f"soup {file[6:-5]}: 50 %" for file in files)
    write(folder, "event.yaml", event_text("an event", files, menu))
    return on(RECIPE_COMMANDS, files[0]) + on(EVENT_COMMANDS, "event.yaml")


def at_all_bounds(folder):
    """As many ingredients with offers as a run may read, and as many of them used as may be."""
    return many_ingredients(folder, 83_000)


def above_all_bounds(folder):
    commands = many_ingredients(folder, 100_000, 100_000)
    return [command for command in commands if command[0] in ("check", "quote")][:2]


def misspelt_names(folder):
    """10^5 names that are no ingredient's, beside 10^5 that are; then 10^5 units."""
    write(folder, "larder.yaml", "currency: USD\nlarder:\n",
          up_to(BYTES - 100, (f"  goods {i}: {{}}" for i in range(100_000))))
    names = recipes_of(folder, [f"godos {i}: 1 oz" for i in range(100_000)])
    write(folder, "event.yaml", event_text("an event", names, "soop 0: 40 %"))
    units = recipes_of(folder, [f"goods {i}: 1 lbb{i}" for i in range(50_000)], called="units")
    write(folder, "units.yaml", event_text("an event", units, "soop 0: 40 %"))
    return on(["check", "cost"], names[0]) + on(["check", "quote"], "event.yaml") + on(
        ["check"], "units.yaml")


def chain(folder, count=30_000):
    """Each recipe is made of the next."""
    write(folder, "larder.yaml", "currency: USD\nlarder:\n", *larder_lines([1]), "\n")
    for i in range(count):
        below = f"r{i + 1}: 1 lb" if i + 1 < count else "a1: 1 lb"
        file = f"r{i + 1}.yaml" if i + 1 < count else "larder.yaml"
        write(folder, f"r{i}.yaml", f"recipe: r{i}\nwith: {file}\nmakes: 3 lb, 10 portions\n"
              f"ingredients: [{below}]\n")
    write(folder, "event.yaml", event_text("an event", ["r0.yaml"], "r0: 50 %"))
    return on(RECIPE_COMMANDS, "r0.yaml") + on(EVENT_COMMANDS, "event.yaml")


def diamonds(folder, depth=30, width=30):
    """Each recipe of a layer is made of all of the next."""
    write(folder, "larder.yaml", "currency: USD\nlarder:\n", *larder_lines([1]), "\n")
    for i in range(depth):
        for j in range(width):
            last = i + 1 == depth
            lines = ["a1: 1 lb"] if last else [f"r{i + 1}x{k}: 1 lb" for k in range(width)]
            files = ["larder.yaml"] if last else [f"r{i + 1}x{k}.yaml" for k in range(width)]
            write(folder, f"r{i}x{j}.yaml", f"recipe: r{i}x{j}\nwith: [{', '.join(files)}]\n"
                  f"makes: 31 lb, 10 portions\ningredients: [{', '.join(lines)}]\n")
    write(folder, "event.yaml", event_text("an event", ["r0x0.yaml"], "r0x0: 50 %"))
    return on(RECIPE_COMMANDS, "r0x0.yaml") + on(EVENT_COMMANDS, "event.yaml")
