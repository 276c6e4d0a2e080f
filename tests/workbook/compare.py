"""Has a spreadsheet work out what the program's workbooks say: compare.py PROGRAM SPREADSHEET
EXAMPLES [BOOKS [SEED]].

Every formula is stripped of the figure that came with it and worked out again by the spreadsheet;
then one price is changed in its cell, and every figure is held against those of the program for a book
with that price."""

import json
import pathlib
import random
import re
import shutil
import subprocess
import sys
import tempfile
from fractions import Fraction

import xlsx
from random_book import BookMaker

RICH = pathlib.Path(__file__).parent / "rich"
FORMULA_SIGNS = ("=", "+", "-", "@")


class Difference(Exception):
    pass


class Event:
    """An event's file, the change of one of its prices, and the workbooks of both."""

    def __init__(self, name, file):
        self.name, self.file, self.price = name, file, None

    def folder(self):
        return self.file.parent


def run(program, event, *words):
    done = subprocess.run([program, *words], cwd=event.folder(), capture_output=True, text=True,
                          timeout=120, check=False)
    if "workbook-not-built" in done.stderr:
        print("libxlsxwriter is not installed: not compared")
        sys.exit(0)
    if done.returncode != 0:
        raise Difference(f"{' '.join(words)}: exit {done.returncode}\n{done.stderr}")
    return done.stdout


def write_workbook(program, event, target, *options):
    run(program, event, "workbook", event.file.name, "--output", str(target), *options)


def goods_rows(book):
    """The rows of the goods on the sheet of prices: name, number, what the price is for."""
    cells = book["Prices"]
    first = next(int(place[1:]) for place, cell in cells.items()
                 if place[0] == "A" and cell.value == "Goods") + 1
    row = first
    while f"A{row}" in cells:
        yield cells[f"A{row}"].value, row, cells[f"G{row}"].value
        row += 1


def changed_price(book, chance):
    """One of the prices, another figure for it, and how the program is told."""
    # The program's option takes the first sign of equality for its own.
    name, row, per = chance.choice([row for row in goods_rows(book) if "=" not in row[0]])
    old = book["Prices"][f"F{row}"].value
    if book["Prices"][f"I{row}"].value != "USD":
        return f"F{row}", old * 1.25, f"--price={name}=+25 %"
    new = round(old * chance.choice([0.5, 1.1, 1.37, 2]) + 0.01, 2)
    return f"F{row}", new, f"--price={name}={new:.2f}" + ("" if per == "a pack" else f" per {per}")


def same_cells(what, wanted, found):
    """Every cell of the program's workbook in the spreadsheet's; gives the number of formulas."""
    count = 0
    for sheet, cells in wanted.items():
        for place, cell in cells.items():
            other = found[sheet].get(place)
            value = None if other is None else other.value
            if not isinstance(cell.value, float):
                if value != cell.value or cell.formula or (other and other.formula):
                    raise Difference(f"{what}, {sheet}!{place}: {cell.value!r} became {value!r}")
                continue
            if not isinstance(value, float) or abs(value - cell.value) > 1e-6 * max(1, abs(value)):
                raise Difference(f"{what}, {sheet}!{place}: the program has {cell.value!r}, the "
                                 f"spreadsheet {value!r} by {cell.formula}")
            count += cell.formula is not None
    return count


def cents(number):
    return round(Fraction(str(number)) * 100)


def labelled(book, sheet, label, column):
    rows = [place[1:] for place, cell in book[sheet].items()
            if place[0] == "A" and cell.value == label]
    return cents(round(book[sheet][column + rows[-1]].value, 6))


def compare_sheets(program, event, found, *options):
    """The sums that the program prints, against those of the spreadsheet, to the cent."""
    def arrays(command, *more):
        text = run(program, event, command, event.file.name, "--format", "json", *more, *options)
        return json.loads(text)["arrays"]

    def facts(rows):
        return {row["key"]: row["value"] for row in rows}

    def same(what, cell, number):
        if cents(cell["shown"].replace(",", "")) != number:
            raise Difference(f"{what}: the program prints {cell['shown']}, the spreadsheet has "
                             f"{number} cents")

    same("food", arrays("cost")["dishes_totals"][-1]["cost"], labelled(found, "Cost", "Food", "K"))
    sums = facts(arrays("order")["sums"])
    for fact, label in (("total", "Goods"), ("used", "  of it used"),
                        ("left_over", "  of it left over"), ("to_pay", "To pay"),
                        ("deliveries", "Deliveries")):
        if fact in sums:
            same(label, sums[fact], labelled(found, "Order", label, "N"))
    quote = arrays("quote")
    for row in quote["bill_totals"]:
        label = re.sub(r",[^,]* (of|in) .*$", "", row["line"])
        if label.startswith(("Subtotal", "Service charge", "Gratuity", "Tax", "of which", "TOTAL")):
            label = label.split(",")[0] if label.startswith(("Service", "Gratuity")) else label
            same(label, row["amount"], labelled(found, "Quote", label, "H"))
    conditions = facts(arrays("quote", "--client").get("conditions", []))
    for fact, label in (("deposit", "Deposit"), ("second_deposit", "Second deposit"),
                        ("balance", "Balance")):
        if fact in conditions:
            same(label, conditions[fact], labelled(found, "Quote", label, "H"))
    same("cost of the event", quote["costs_totals"][-1]["cost"],
         labelled(found, "Quote", "Cost of the event", "H"))
    for row in quote["costs"]:
        same(row["line"], row["cost"], labelled(found, "Quote", row["line"], "H"))
    same("target", facts(quote["price"])["target"], labelled(found, "Quote", "Asks for", "H"))
    same("margin", facts(quote["outcome"])["margin"], labelled(found, "Quote", "Margin", "H"))


def recalculate(spreadsheet, folder, files):
    """All files in one run of the spreadsheet, which writes them anew."""
    target = folder / "recalculated"
    done = subprocess.run([spreadsheet, f"-env:UserInstallation=file://{folder}/profile",
                           "--headless", "--convert-to", "xlsx", "--outdir", str(target),
                           *map(str, files)], capture_output=True, text=True, timeout=240,
                          check=False)
    missing = [file.name for file in files if not (target / file.name).is_file()]
    if done.returncode != 0 or missing:
        raise Difference(f"the spreadsheet made no {missing}\n{done.stderr}")
    return {file.name: xlsx.read(target / file.name) for file in files}


def prepare(program, event, folder, chance):
    """The workbook as it is, the one of the other price, and both to be worked out again."""
    own = folder / f"{event.name}.xlsx"
    write_workbook(program, event, own)
    again = folder / "again.xlsx"
    write_workbook(program, event, again)
    if own.read_bytes() != again.read_bytes():
        raise Difference(f"{event.name}: two runs give two files")
    place, number, event.price = changed_price(xlsx.read(own), chance)
    write_workbook(program, event, folder / f"{event.name}-changed.xlsx", event.price)
    out = [folder / "stripped" / f"{event.name}.xlsx",
           folder / "stripped" / f"{event.name}-changed.xlsx"]
    xlsx.write_changed(own, out[0], {}, True)
    xlsx.write_changed(own, out[1], {"Prices": {place: number}}, True)
    return out


def without_plan(book):
    """The sums as planned are words of the program: they do not follow a price."""
    planned = {"Cost": "L", "Order": "O", "Quote": "I"}
    return {sheet: {place: cell for place, cell in cells.items()
                    if cell.formula or isinstance(cell.value, str) or
                    re.match(r"[A-Z]+", place)[0] != planned.get(sheet)}
            for sheet, cells in book.items()}


def compare_event(program, event, folder, found):
    own = xlsx.read(folder / f"{event.name}.xlsx")
    count = same_cells(event.name, own, found[f"{event.name}.xlsx"])
    compare_sheets(program, event, found[f"{event.name}.xlsx"])
    changed = without_plan(xlsx.read(folder / f"{event.name}-changed.xlsx"))
    what = f"{event.name} with {event.price}"
    count += same_cells(what, changed, found[f"{event.name}-changed.xlsx"])
    compare_sheets(program, event, found[f"{event.name}-changed.xlsx"], event.price)
    if event.file.parent == RICH:
        names = [cell for cells in own.values() for cell in cells.values()
                 if isinstance(cell.value, str) and cell.value.startswith(FORMULA_SIGNS)]
        if len(names) < 6 or any(cell.formula for cell in names):
            raise Difference(f"{event.name}: names that begin like a formula are no longer words")
    return count


def main():
    program, spreadsheet, examples = sys.argv[1], sys.argv[2], pathlib.Path(sys.argv[3])
    if not shutil.which(spreadsheet):
        print("A spreadsheet is not installed: not compared")
        return 0
    books = int(sys.argv[4]) if len(sys.argv) > 4 else 5
    chance = random.Random(int(sys.argv[5]) if len(sys.argv) > 5 else 1)
    with tempfile.TemporaryDirectory(prefix="platewright-") as name:
        folder = pathlib.Path(name)
        (folder / "stripped").mkdir()
        events = [Event("supper", examples / "harvest-supper" / "event.yaml"),
                  Event("wedding", examples / "mill-wedding" / "event.yaml"),
                  Event("rich", RICH / "event.yaml")]
        for number in range(books):
            place = folder / f"book-{number}"
            place.mkdir()
            BookMaker(chance, place).make()
            events.append(Event(f"random-{number}", place / "event.yaml"))
        files = [file for event in events for file in prepare(program, event, folder, chance)]
        found = recalculate(spreadsheet, folder, files)
        count = sum(compare_event(program, event, folder, found) for event in events)
        print(f"{len(events)} events, {count} formulas worked out again")
        return 0 if count > 100 * len(events) else 1


if __name__ == "__main__":
    try:
        sys.exit(main())
    except Difference as difference:
        print(difference)
        sys.exit(1)
