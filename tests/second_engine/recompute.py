"""What a book costs, worked out a second time: with Python's fractions, from the books' files alone,
by published formulas and not by anything of the program's.

As purchased = edible portion / yield: USDA, Food Buying Guide, appendix B. Price = cost / (1 - margin), and
food / food cost percentage: Holt, MTH 81 lecture notes, chapter 11. The pound is 0.45359237 kg: NIST
Handbook 44, appendix C.
"""

import datetime
import json
import math
from fractions import Fraction

from bill import Bill
from exact import amount, share, up_to

POUND = Fraction("453.59237")
GRAMS = {"g": Fraction(1), "kg": Fraction(1000), "lb": POUND, "oz": POUND / 16,
         "gram": Fraction(1), "kilogram": Fraction(1000), "pound": POUND, "ounce": POUND / 16}
WEEK = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"]
TABLESPOONS = {"tbsp": Fraction(1), "cup": Fraction(16), "qt": Fraction(64)}


class Goods:
    def __init__(self, entry):
        offer = entry["buy"][0]
        number, unit = amount(offer["pack"])
        self.pack = number * GRAMS[unit]
        self.price = Fraction(offer["price"])
        self.supplier = offer.get("from", "")
        self.kept = Fraction(1)
        for test in entry.get("tested yields", []):
            self.kept *= share(test["yield"])
        self.of_tablespoon = None
        for measure, weight in entry.get("weighs", {}).items():
            volume, unit = amount(measure)
            number, weight_unit = amount(weight)
            self.of_tablespoon = number * GRAMS[weight_unit] / (volume * TABLESPOONS[unit])

    def grams(self, number, unit):
        if unit in GRAMS:
            return number * GRAMS[unit]
        return number * TABLESPOONS[unit] * self.of_tablespoon

    def cost(self, purchased):
        return purchased / self.pack * self.price


class Line:
    def __init__(self, written):
        (self.name, text), *_ = ((key, value) for key, value in written.items() if key != "scale")
        self.number, self.unit = amount(text)
        self.fixed = written.get("scale") == "fixed"

    def scaled(self, factor):
        return self.number if self.fixed else self.number * factor


class Recipe:
    def __init__(self, file):
        self.name = file["recipe"]
        number, unit = amount(file["makes"])
        self.portions = number if unit == "portions" else None
        self.weight = None if self.portions else number * GRAMS[unit]
        self.lines = [Line(written) for written in file["ingredients"]]


class Book:
    def __init__(self, folder):
        self.goods, self.recipes, self.event, self.suppliers = {}, {}, None, {}
        for path in sorted(folder.glob("*.yaml")):
            file = json.loads(path.read_text())
            if "larder" in file:
                self.goods = {name: Goods(entry) for name, entry in file["larder"].items()}
                self.suppliers = file["suppliers"]
            elif "recipe" in file:
                self.recipes[file["recipe"]] = Recipe(file)
            else:
                self.event = file

    def line_cost(self, line, factor):
        number = line.scaled(factor)
        if line.name in self.recipes:
            other = self.recipes[line.name]
            whole = sum(self.line_cost(own, Fraction(1)) for own in other.lines)
            return whole * (number * GRAMS[line.unit] / other.weight)
        goods = self.goods[line.name]
        return goods.cost(goods.grams(number, line.unit) / goods.kept)

    def plate(self, name, factor):
        recipe = self.recipes[name]
        costs = [self.line_cost(line, factor) for line in recipe.lines]
        portions = recipe.portions * factor
        return {"used": [line.scaled(factor) for line in recipe.lines], "costs": costs,
                "total": sum(costs), "portions": portions, "per_portion": sum(costs) / portions}

    def dishes(self):
        event = self.event
        shares = event.get("portion shares", {})
        heads = sum(Fraction(count) * share(shares.get(kind, "1"))
                    for kind, count in event["guests"].items())
        for line in event["menu"]:
            (name, part), = line.items()
            wanted = heads * (1 if part == "everyone" else share(part)) * (1 + share(event["over"]))
            yield name, wanted / self.recipes[name].portions

    def needs(self):
        """Grams of each of the goods as purchased."""
        out = {}

        def add(name, factor):
            for line in self.recipes[name].lines:
                number = line.scaled(factor)
                if line.name in self.recipes:
                    add(line.name, number * GRAMS[line.unit] / self.recipes[line.name].weight)
                else:
                    goods = self.goods[line.name]
                    bought = goods.grams(number, line.unit) / goods.kept
                    out[line.name] = out.get(line.name, Fraction(0)) + bought

        for name, factor in self.dishes():
            add(name, factor)
        return out

    def order(self):
        lines, total, left = {}, Fraction(0), Fraction(0)
        for name, need in self.needs().items():
            goods = self.goods[name]
            packs = math.ceil(need / goods.pack)
            over = packs * goods.pack - need
            lines[name] = {"packs": packs, "need": need, "left_over": over,
                           "cost": packs * goods.price, "supplier": goods.supplier}
            total += packs * goods.price
            left += goods.cost(over)
        return {"lines": lines, "total": total, "left_over": left, "used": total - left,
                "deliver_on": {name: self.delivery_day(line["supplier"])
                               for name, line in lines.items()},
                "deliveries": self.delivery_charges({line["supplier"] for line in lines.values()})}

    def delivery_day(self, supplier):
        """No step has a time: goods are there on the day before the event, or the supplier's last day
        before that."""
        served = datetime.date.fromisoformat(self.event["at"].split()[0])
        days = self.suppliers.get(supplier, {}).get("delivers", WEEK)
        return next(str(day) for day in (served - datetime.timedelta(back) for back in range(1, 8))
                    if WEEK[day.weekday()] in days)

    def delivery_charges(self, suppliers):
        """One delivery of each, since all goods are needed on one day."""
        return sum((Fraction(self.suppliers.get(name, {}).get("delivery charge", "0"))
                    for name in suppliers), Fraction(0))

    def guests(self, came=None):
        return {kind: Fraction((came or {}).get(kind, count))
                for kind, count in self.event["guests"].items()}

    def cost(self, food):
        terms, heads = self.event["quote"], sum(self.guests().values())
        direct = food * (1 + share(terms.get("q factor", "0")))
        for line in terms.get("labour", []):
            hours, _ = amount(line["time"])
            direct += hours * line.get("workers", 1) * Fraction(line["rate"].split()[0])
        for line in terms.get("extras", []):
            if line.get("billed") != "yes":
                each = heads if line.get("per guest") == "yes" else 1
                direct += Fraction(line["price"]) * each
        direct += self.order()["deliveries"]
        return (direct * (1 + share(terms.get("overhead", "0")))
                * (1 + share(terms.get("contingency", "0"))))

    def target(self, food, cost):
        terms = self.event["quote"]
        if "margin" in terms:
            return cost / (1 - share(terms["margin"]))
        if "mark-up" in terms:
            return cost * (1 + share(terms["mark-up"]))
        return food * (1 + share(terms.get("q factor", "0"))) / share(terms["food cost"])

    def quote(self):
        event, terms = self.event, self.event["quote"]
        food = sum(self.plate(name, factor)["total"] for name, factor in self.dishes())
        cost = self.cost(food)
        target, bill = self.target(food, cost), Bill(event, self.guests())
        full, own = bill.full_prices(), bill.own_prices()
        exact = max(Fraction(0), (target / bill.net() - own) / full)
        price = max(up_to(exact, Fraction(terms["round up to"])),
                    Fraction(terms.get("minimum per guest", "0")))
        out = bill.at(price)
        income = out["subtotal"] * bill.net() - bill.lost_on_extras()
        out.update(food=food, cost=cost, target=target, full_prices=full, exact_price=exact,
                   price=price, margin=income - cost)
        out["margin_share"] = (income - cost) / income * 100 if income > 0 else Fraction(0)
        return out

    def invoice(self):
        """Who came pays the price that was quoted."""
        return Bill(self.event, self.guests(self.event["invoice"]["came"])).at(self.quote()["price"])
