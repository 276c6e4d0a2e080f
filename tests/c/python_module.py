"""The Python module beside the program: the same quote, plate cost, yield and words of mistakes.

python_module.py PROGRAM EXAMPLES: with PYTHONPATH naming the module and PLATEWRIGHT_LIBRARY the
shared object.
"""

import gc
import json
import subprocess
import sys
import tempfile
import unittest
from fractions import Fraction
from pathlib import Path

import platewright

PROGRAM, EXAMPLES = sys.argv[1], Path(sys.argv[2])
SUPPER = EXAMPLES / "harvest-supper" / "event.yaml"
LAMB = "lamb leg with a garlic and rosemary rub"


def printed(*arguments):
    return subprocess.run([PROGRAM, *map(str, arguments)], capture_output=True, text=True, check=False)


class Module(unittest.TestCase):
    def setUp(self):
        self.book = platewright.read_book(SUPPER)

    def test_the_quote_is_the_printed_one(self):
        for guests in (None, 96, "120"):
            quote = self.book.quote(guests=guests)
            options = [] if guests is None else ["--guests", guests]
            text = printed("quote", SUPPER, *options).stdout
            self.assertIn(f"{float(quote.price):.2f} {quote.currency}", text)
            total = [line for line in text.splitlines() if line.startswith("TOTAL")]
            self.assertEqual(total[0].split()[-1], f"{float(quote.total):.2f}")
            self.assertEqual(quote.total, quote.subtotal + quote.billed + quote.service +
                             quote.gratuity + quote.tax)

    def test_the_cost_of_a_recipe_is_the_printed_one(self):
        cost = self.book.cost(LAMB, pieces=10)
        sheet = json.loads(printed("cost", SUPPER, "--recipe", LAMB, "--pieces", 10, "--format", "json").stdout)
        self.assertIn(f'{float(cost.total):.2f}', json.dumps(sheet))
        self.assertEqual(cost.total, sum(line.cost for line in cost.lines))
        self.assertEqual(cost.per_portion, cost.total / cost.portions)

    def test_a_factor_of_two_doubles_what_is_in_proportion(self):
        one, two = self.book.scale("chicken stock"), self.book.scale("chicken stock", factor=2)
        for before, after in zip(one.lines, two.lines):
            if before.amount is not None:
                self.assertEqual(after.amount.number, before.amount.number * after.factor / before.factor)
                self.assertEqual(after.amount.unit, before.amount.unit)
        self.assertEqual(two.factor, 2)

    def test_a_yield_walks_down_and_up(self):
        down = platewright.yield_of("lamb leg, bone-in, roasted", buy="12 lb", portion="6 oz")
        self.assertEqual(down.steps[0].weight, platewright.Amount(Fraction(12), "pound"))
        self.assertEqual(down.steps[-1].weight.number, 12 * down.yield_)
        self.assertEqual(down.portions, 12 * 16 * down.yield_ // 6)
        up = platewright.yield_of("lamb leg, bone-in, roasted", guests=100, portion="6 oz")
        self.assertEqual(up.to_buy.number * up.yield_, 600)
        self.assertTrue(down.steps[1].source)

    def test_mistakes_are_the_program_s(self):
        with tempfile.TemporaryDirectory() as folder:
            file = Path(folder) / "slip.yaml"
            file.write_text("recipe: soup\ningrediants:\n  - carrot: 3 lb\n", encoding="utf-8")
            with self.assertRaises(platewright.Problem) as raised:
                platewright.read_book(file)
            self.assertEqual(str(raised.exception), printed("check", file).stderr)
        self.assertIn("key-unknown", str(raised.exception))

    def test_warnings_are_the_program_s(self):
        self.assertIn("warning ", self.book.warnings)
        self.assertEqual(self.book.warnings, printed("check", SUPPER).stderr)

    def test_what_is_not_exact_or_not_one_size_is_refused(self):
        with self.assertRaises(TypeError):
            self.book.scale(factor=0.1)
        with self.assertRaises(TypeError):
            self.book.scale(factor=1, portions=2)
        with self.assertRaises(ValueError):
            self.book.scale("lamb\0leg")
        with self.assertRaises(platewright.Problem):
            self.book.scale("no such recipe")
        self.assertEqual(self.book.scale(LAMB, factor=Fraction(1, 3)).pieces, 1)

    def test_answers_outlive_their_book(self):
        scaled = platewright.read_book(SUPPER).scale(LAMB)
        lines = platewright.read_book(SUPPER).cost(LAMB).lines
        gc.collect()
        self.assertTrue(all(line.name for line in scaled.lines))
        self.assertTrue(all(line.cost >= 0 for line in lines))

    def test_the_version_is_the_program_s(self):
        self.assertIn(platewright.version(), printed("--version").stdout)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
