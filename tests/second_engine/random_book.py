"""Books by chance, from a seed. They are written as JSON, which is YAML: so each of the two engines
reads the same files with a reader of its own."""

import json


class BookMaker:
    def __init__(self, random, folder):
        self.random, self.folder = random, folder

    def write(self, name, content):
        (self.folder / f"{name}.yaml").write_text(json.dumps(content) + "\n")

    def number(self, most):
        whole = self.random.randint(1, most)
        return self.random.choice([f"{whole}", f"{whole}.{self.random.randint(0, 99):02}",
                                   f"{whole} {self.random.choice(['1/2', '1/3', '3/4', '5/8'])}"])

    def weight(self):
        unit, most = self.random.choice([("lb", 9), ("oz", 60), ("g", 2500), ("kg", 4)])
        return f"{self.number(most)} {unit}"

    def percent(self, least, most):
        return f"{self.random.randint(least * 4, most * 4) / 4:g} %"

    def money(self, most):
        return f"{self.random.randint(1, most)}.{self.random.randint(0, 99):02}"

    def goods(self):
        entry = {"buy": [{"pack": self.weight(), "price": self.money(40)}], "allergens": "none"}
        if self.random.random() < 0.5:
            entry["buy"][0]["from"] = self.random.choice(["the market", "the mill", "the quay"])
        if self.random.random() < 0.5:
            entry["tested yields"] = [
                {"from": "purchased", "to": "trimmed", "yield": self.percent(40, 99)}]
        if self.random.random() < 0.5:
            entry["weighs"] = {self.random.choice(["1 cup", "1/2 cup", "3 tbsp"]):
                               f"{self.random.randint(20, 300)} g"}
        return entry

    def line(self, name, entry, may_be_fixed):
        text = self.weight()
        if entry is not None and "weighs" in entry and self.random.random() < 0.7:
            text = f"{self.number(9)} {self.random.choice(['cup', 'tbsp', 'qt'])}"
        out = {name: text}
        if may_be_fixed and self.random.random() < 0.2:
            out["scale"] = "fixed"
        return out

    def lines(self, larder, below, is_dish):
        names = self.random.sample(sorted(larder), self.random.randint(1, len(larder)))
        out = [self.line(name, larder[name], is_dish) for name in names]
        for name in below:
            if self.random.random() < 0.6:
                out.append(self.line(name, None, False))
        return out

    def some(self, chance=0.5):
        return self.random.random() < chance

    def rates(self, out):
        """One rate of tax, or two with names; returns what may stand where something is taxed."""
        if self.some():
            out["tax"] = self.percent(0, 20)
            return ["yes", "no"], ["", ", taxed"]
        out["tax"] = {"food": self.percent(1, 12), "service": self.percent(1, 25)}
        first = self.random.randint(1, 99)
        out["price taxed"] = self.random.choice(
            ["food", "service", "no", {"food": f"{first} %", "service": f"{100 - first} %"}])
        return ["food", "service", "no"], ["", ", taxed as food", ", taxed as service"]

    def discounts(self):
        out = []
        if self.some():
            out.append({"discount": "returning", "off": self.percent(1, 20)})
        if self.some():
            out.append({"discount": "goodwill", "off": self.money(90)})
        if self.some():
            out.append({"discount": "no walls", "off": self.random.choice(
                [self.percent(1, 100), self.money(400)]), "of": "tent"})
        return out

    def bill(self, out):
        taxed, charged = self.rates(out)
        out["service"] = self.percent(1, 25) + self.random.choice(charged)
        if self.some():
            out["gratuity"] = self.percent(1, 9) + self.random.choice(charged)
        if self.some():
            out["prices include tax"] = "yes"
        tent = {"item": "tent", "price": self.money(300), "billed": "yes",
                "taxed": self.random.choice(taxed)}
        if self.some():
            tent["count"] = self.random.randint(1, 9)
        out["extras"] = out.get("extras", []) + [tent]
        out["discounts"] = self.discounts()
        for key, most in (("minimum per guest", 60), ("minimum charge", 4000)):
            if self.some(0.3):
                out[key] = self.money(most)
        if self.some():
            out["guaranteed guests"] = self.random.randint(1, 250)
        if self.some():
            out["deposit"] = self.percent(1, 50)
            if self.some():
                out["second deposit"] = self.random.choice([self.percent(1, 50), self.money(900)])
        if self.some(0.3):
            out["payments"] = [{"on": "2027-09-01", "amount": self.money(900)},
                               {"on": "2027-09-20", "amount": self.money(90), "by": "card"}]
        return out

    def terms(self):
        rule = self.random.choice([{"margin": self.percent(5, 60)}, {"mark-up": self.percent(10, 200)},
                                   {"food cost": self.percent(15, 60)}])
        out = {"overhead": self.percent(1, 30), "round up to": self.random.choice(
            ["0.01", "0.25", "0.50", "1"]), **rule}
        if self.random.random() < 0.5:
            out["q factor"] = self.percent(1, 8)
        if self.random.random() < 0.5:
            out["contingency"] = self.percent(1, 10)
        if self.random.random() < 0.7:
            out["labour"] = [{"role": "cook", "time": f"{self.random.randint(1, 12)} h",
                              "workers": self.random.randint(1, 6),
                              "rate": f"{self.money(50)} per hour"}]
        if self.random.random() < 0.7:
            out["extras"] = [{"item": "hire", "price": self.money(300)},
                             {"item": "napkins", "price": self.money(2), "per guest": "yes"}]
        return self.bill(out)

    def invoice(self, guests):
        out = {"invoice number": "7", "invoice date": "2027-10-11", "came": {
            kind: self.random.randint(1, count + 5) for kind, count in guests.items() if self.some()}}
        return out

    def event(self, dishes):
        guests = {"adults": self.random.randint(1, 200), "children": self.random.randint(0, 40),
                  "band": self.random.randint(0, 8)}
        out = {"event": "a supper",
               "with": [f"{dish.replace(' ', '-')}.yaml" for dish in dishes],
               "at": "2027-10-09 18:30", "guests": guests,
               "portion shares": {"children": self.random.choice(["1/2", "1/3", "75 %"])},
               "price shares": {"children": self.random.choice(["1/2", "1/3", "60 %"])},
               "menu": [{dish: self.random.choice(["everyone", self.percent(5, 100)])}
                        for dish in dishes],
               "over": self.percent(0, 15), "quote": self.terms(), "invoice": self.invoice(guests)}
        if self.some():
            out["guest prices"] = {"band": self.money(30)}
        if self.some():
            out["paid by"] = {self.random.choice(["children", "band"]): "another"}
        return out

    def suppliers(self):
        """Each comes on some days of the week, and may charge for it."""
        week = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"]
        out = {}
        for name in ["the market", "the mill", "the quay"]:
            if self.random.random() < 0.6:
                out[name] = {"delivers": self.random.sample(week, self.random.randint(1, 7))}
                if self.random.random() < 0.6:
                    out[name]["delivery charge"] = self.money(20)
        return out

    def make(self):
        larder = {f"goods {i}": self.goods() for i in range(self.random.randint(2, 6))}
        self.write("larder", {"larder": larder, "currency": "USD", "suppliers": self.suppliers()})
        below = []
        for i in range(self.random.randint(0, 3)):
            self.write(f"base-{i}", {"recipe": f"base {i}", "with": ["larder.yaml"] +
                                     [f"base-{k}.yaml" for k in range(i)], "makes": self.weight(),
                                     "ingredients": self.lines(larder, below, False)})
            below.append(f"base {i}")
        dishes = [f"dish {i}" for i in range(self.random.randint(1, 3))]
        for dish in dishes:
            self.write(dish.replace(" ", "-"), {
                "recipe": dish, "with": ["larder.yaml"] + [f"{name.replace(' ', '-')}.yaml"
                                                            for name in below],
                "makes": f"{self.random.randint(4, 40)} portions",
                "ingredients": self.lines(larder, below, True)})
        self.write("event", self.event(dishes))
        return dishes
