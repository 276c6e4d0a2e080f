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

    def terms(self):
        rule = self.random.choice([{"margin": self.percent(5, 60)}, {"mark-up": self.percent(10, 200)},
                                   {"food cost": self.percent(15, 60)}])
        out = {"overhead": self.percent(1, 30), "round up to": self.random.choice(
            ["0.01", "0.25", "0.50", "1"]), "tax": self.percent(0, 20), **rule}
        out["service"] = self.percent(1, 25) + self.random.choice(["", ", taxed"])
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
        return out

    def make(self):
        larder = {f"goods {i}": self.goods() for i in range(self.random.randint(2, 6))}
        self.write("larder", {"larder": larder, "currency": "USD"})
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
        self.write("event", {
            "event": "a supper", "with": [f"{dish.replace(' ', '-')}.yaml" for dish in dishes],
            "at": "2027-10-09 18:30",
            "guests": {"adults": self.random.randint(1, 200), "children": self.random.randint(0, 40)},
            "portion shares": {"children": self.random.choice(["1/2", "1/3", "75 %"])},
            "price shares": {"children": self.random.choice(["1/2", "1/3", "60 %"])},
            "menu": [{dish: self.random.choice(["everyone", self.percent(5, 100)])}
                     for dish in dishes],
            "over": self.percent(0, 15), "quote": self.terms()})
        return dishes
