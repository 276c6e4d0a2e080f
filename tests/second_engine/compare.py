"""Compares the program's sheets with a second engine, to the last digit: compare.py PROGRAM [BOOKS
[SEED]]."""

import functools
import json
import multiprocessing
import pathlib
import random
import subprocess
import sys
import tempfile
from fractions import Fraction

from random_book import BookMaker
from recompute import GRAMS, Book


class Difference(Exception):
    pass


class Comparison:
    """All sheets of a book from one program, which reads it once."""

    def __init__(self, program, folder):
        self.figures = 0
        self.book = Book(folder)
        self.program = subprocess.Popen([program, "answer"], cwd=folder, text=True,
                                        stdin=subprocess.PIPE, stdout=subprocess.PIPE)

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self.program.stdin.close()
        self.program.stdout.close()
        self.program.wait(timeout=60)

    def sheet(self, *words):
        print(json.dumps(words), file=self.program.stdin, flush=True)
        line = self.program.stdout.readline()
        if not line:
            raise Difference(f"{' '.join(words)}: no answer")
        answer = json.loads(line)
        if answer["exit"] != 0:
            raise Difference(f"{' '.join(words)}: exit {answer['exit']}\n{answer.get('problems')}")
        document = answer["sheet"]
        if document["version"] != 1:
            raise Difference(f"JSON of version {document['version']}")
        return document["arrays"]

    @staticmethod
    def facts(rows):
        return {row["key"]: row["value"] for row in rows}

    def same(self, what, cell, wanted, in_grams=False):
        found = Fraction(cell["exact"])
        if in_grams:
            found *= GRAMS[cell["unit"]]
        if found != wanted:
            raise Difference(f"{what}: the program has {found}, the second engine {wanted}")
        self.figures += 1

    def compare_plate(self, dish, factor):
        sheet = self.sheet("cost", f"{dish.replace(' ', '-')}.yaml", "--factor", str(factor))
        wanted = self.book.plate(dish, factor)
        rows, sums = sheet["lines"], self.facts(sheet["cost"])
        if len(rows) != len(wanted["costs"]):
            raise Difference(f"{dish}: {len(rows)} lines")
        for row, line, used, cost in zip(rows, self.book.recipes[dish].lines, wanted["used"],
                                         wanted["costs"]):
            if row["ingredient"] != line.name:
                raise Difference(f"{dish}: {row['ingredient']} instead of {line.name}")
            self.same(f"{dish}, {line.name}, used", row["used"], used)
            self.same(f"{dish}, {line.name}, cost", row["cost"], cost)
        for fact in ("total", "per_portion", "portions"):
            self.same(f"{dish}, {fact}", sums[fact], wanted[fact])

    def compare_order(self):
        sheet, wanted = self.sheet("order", "event.yaml"), self.book.order()
        seen = set()
        for row in sheet["lines"]:
            goods = row["ingredient"]
            seen.add(goods)
            line = wanted["lines"][goods]
            self.same(f"order, {goods}, packs", row["packs"], line["packs"])
            self.same(f"order, {goods}, cost", row["cost"], line["cost"])
            for key in ("need", "left_over"):
                self.same(f"order, {goods}, {key}", row[key], line[key], in_grams=True)
            if (row["supplier"] or "") != line["supplier"]:
                raise Difference(f"order, {goods}: from {row['supplier']}")
            if row["deliver_on"] != wanted["deliver_on"][goods]:
                raise Difference(f"order, {goods}: on {row['deliver_on']}")
        if seen != set(wanted["lines"]):
            raise Difference(f"order: {seen ^ set(wanted['lines'])} in one of the two only")
        sums = self.facts(sheet["sums"])
        for fact in ("total", "used", "left_over", "deliveries"):
            # A sum of nothing is not printed.
            if fact in sums or wanted[fact] != 0:
                self.same(f"order, {fact}", sums[fact], wanted[fact])

    def compare_bill(self, what, sheet, wanted):
        """Lines of the guests, then the sums below them; taxes stand in the order of the rates."""
        rows = {row["line"]: row for row in sheet["bill"]}
        for kind, amount in zip(self.book.event["guests"], wanted["bill"]):
            self.same(f"{what}, {kind}", rows[kind]["amount"], amount)
        taxes = list(wanted["taxes"])
        for row in sheet["bill_totals"]:
            line = row["line"]
            for begin, key in (("Subtotal", "subtotal"), ("Service", "service"),
                               ("Gratuity", "gratuity"), ("TOTAL", "total")):
                if line.startswith(begin):
                    self.same(f"{what}, {key}", row["amount"], wanted[key])
            if line.startswith(("Tax, ", "of which tax, ")):
                self.same(f"{what}, {line}", row["amount"], taxes.pop(0))
        if taxes or not any(row["line"] == "TOTAL" for row in sheet["bill_totals"]):
            raise Difference(f"{what}: no total, or not every tax")

    def compare_payments(self, what, sheet, wanted):
        facts = self.facts(sheet.get("conditions", []))
        for fact in ("deposit", "second_deposit", "balance"):
            if fact in facts:
                self.same(f"{what}, {fact}", facts[fact], wanted[fact])
        if "payments" in sheet:
            self.same(f"{what}, due", sheet["payments_totals"][-1]["amount"], abs(wanted["due"]))
        for row in sheet.get("payers", []):
            self.same(f"{what}, {row['payer']} pays", row["share"], wanted["payers"][row["payer"]])

    def compare_quote(self):
        sheet, wanted = self.sheet("quote", "event.yaml"), self.book.quote()
        self.compare_bill("quote", sheet, wanted)
        price, outcome = self.facts(sheet["price"]), self.facts(sheet["outcome"])
        for fact in ("target", "full_prices", "exact_price", "price"):
            self.same(f"quote, {fact}", price[fact], wanted[fact])
        self.same("quote, food", sheet["costs"][0]["cost"], wanted["food"])
        self.same("quote, cost", sheet["costs_totals"][-1]["cost"], wanted["cost"])
        for fact in ("margin", "margin_share"):
            self.same(f"quote, {fact}", outcome[fact], wanted[fact])
        client = self.sheet("quote", "event.yaml", "--client")
        self.compare_bill("client's quote", client, wanted)
        self.compare_payments("client's quote", client, wanted)

    def compare_event_cost(self):
        """The food, and what its order is charged for deliveries."""
        sheet = self.sheet("cost", "event.yaml")
        wanted, deliveries = self.book.quote(), self.book.order()["deliveries"]
        self.same("event, food", sheet["dishes_totals"][-1]["cost"], wanted["food"])
        if "deliveries" in sheet:
            self.same("event, deliveries", sheet["deliveries_totals"][0]["cost"], deliveries)
        elif deliveries != 0:
            raise Difference(f"event: no deliveries, the second engine has {deliveries}")

    def compare_invoice(self):
        sheet, wanted = self.sheet("quote", "event.yaml", "--invoice"), self.book.invoice()
        self.compare_bill("invoice", sheet, wanted)
        self.compare_payments("invoice", sheet, wanted)


def compare_book(program, seed):
    """Whether all is the same, how many figures were compared, and what is not the same."""
    chance = random.Random(seed)
    with tempfile.TemporaryDirectory(prefix="platewright-") as name:
        folder = pathlib.Path(name)
        dishes = BookMaker(chance, folder).make()
        comparison = Comparison(program, folder)
        try:
            with comparison:
                for dish in dishes:
                    factor = Fraction(chance.randint(1, 400), chance.choice([1, 3, 8, 100]))
                    comparison.compare_plate(dish, factor)
                comparison.compare_order()
                comparison.compare_event_cost()
                comparison.compare_quote()
                comparison.compare_invoice()
        except (Difference, KeyError) as difference:
            report = f"book of seed {seed}: {difference!r}"
            for file in sorted(folder.glob("*.yaml")):
                report += f"\n--- {file.name}\n{file.read_text()}"
            return False, comparison.figures, report
        return True, comparison.figures, ""


def main():
    program = str(pathlib.Path(sys.argv[1]).resolve())
    books = int(sys.argv[2]) if len(sys.argv) > 2 else 60
    first = int(sys.argv[3]) if len(sys.argv) > 3 else 1
    compare = functools.partial(compare_book, program)
    # Each works while the program of the other does.
    with multiprocessing.Pool(2) as workers:
        results = workers.map(compare, range(first, first + books), chunksize=4)
    figures = 0
    for good, count, report in results:
        figures += count
        if not good:
            print(report)
    print(f"{books} books, {figures} figures compared")
    # A comparison of nothing would be none.
    return 0 if all(good for good, _, _ in results) and figures > 20 * books else 1


if __name__ == "__main__":
    sys.exit(main())
