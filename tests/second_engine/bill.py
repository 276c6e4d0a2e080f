"""A bill worked out a second time, from what an event's file says alone."""

from fractions import Fraction

from exact import apportioned, down_to, half_up, share, up_to

CENT = Fraction(1, 100)


class Bill:
    def __init__(self, event, guests):
        self.event, self.terms, self.guests = event, event["quote"], guests
        tax = self.terms["tax"]
        self.rates = ({name: share(rate) for name, rate in tax.items()} if isinstance(tax, dict)
                      else {"": share(tax)})
        self.included = self.terms.get("prices include tax") == "yes"
        self.shares = {kind: share(event.get("price shares", {}).get(kind, "1")) for kind in guests}
        self.own = {kind: Fraction(price) for kind, price in event.get("guest prices", {}).items()}

    def parts(self, taxed):
        """Which share is taxed at which rate."""
        if isinstance(taxed, dict):
            return {name: share(part) for name, part in taxed.items()}
        if taxed == "no":
            return {}
        return {"" if taxed == "yes" else taxed: Fraction(1)}

    def charge_parts(self, text):
        _, _, word = text.partition(",")
        word = word.strip()
        return self.parts(word.removeprefix("taxed as ") if word.startswith("taxed as ")
                          else "yes" if word == "taxed" else "no")

    def price_parts(self):
        return self.parts(self.terms.get("price taxed", "yes"))

    def without_tax(self, parts):
        if not self.included:
            return Fraction(1)
        return 1 - sum(part * self.rates[name] / (1 + self.rates[name])
                       for name, part in parts.items())

    def net(self):
        return self.without_tax(self.price_parts())

    def missing(self):
        paying = sum(count for kind, count in self.guests.items()
                     if self.own.get(kind, self.shares[kind]) > 0)
        return max(Fraction(0), Fraction(self.terms.get("guaranteed guests", 0)) - paying)

    def full_prices(self):
        return self.missing() + sum(count * self.shares[kind] for kind, count in self.guests.items()
                                    if kind not in self.own)

    def own_prices(self):
        return sum((self.guests[kind] * price for kind, price in self.own.items()), Fraction(0))

    def off(self, base, of):
        left = base
        for line in self.terms.get("discounts", []):
            if line.get("of") != of:
                continue
            text = line["off"]
            wanted = down_to(base * share(text)) if text.endswith("%") else Fraction(text)
            left -= min(wanted, left)
        return base - left

    def billed(self):
        for line in self.terms.get("extras", []):
            if line.get("billed") == "yes":
                cost = half_up(Fraction(line["price"]) * line.get("count", 1))
                yield self.parts(line["taxed"]), cost, self.off(cost, line["item"])

    def lost_on_extras(self):
        return sum((off * self.without_tax(parts) for parts, _, off in self.billed()), Fraction(0))

    def taxes(self, sums):
        bases = {name: Fraction(0) for name in self.rates}
        for amount, parts in sums:
            whole = apportioned([amount * part for part in parts.values()]
                                + [amount * (1 - sum(parts.values()))])
            for name, base in zip(parts, whole):
                bases[name] += base
        return [half_up(base * rate / (1 + rate if self.included else 1))
                for base, rate in zip(bases.values(), self.rates.values())]

    def at(self, price):
        lines = []
        for kind, count in self.guests.items():
            lines.append(self.own.get(kind, up_to(price * self.shares[kind], CENT)) * count)
        every = sum(lines) + price * self.missing()
        subtotal = max(every - self.off(every, None), Fraction(self.terms.get("minimum charge", 0)))
        service = half_up(subtotal * share(self.terms["service"].split(",")[0]))
        gratuity_text = self.terms.get("gratuity", "0 %")
        gratuity = half_up(subtotal * share(gratuity_text.split(",")[0]))
        billed = [(cost - off, parts) for parts, cost, off in self.billed()]
        taxes = self.taxes([(subtotal, self.price_parts()), *billed,
                            (service, self.charge_parts(self.terms["service"])),
                            (gratuity, self.charge_parts(gratuity_text))])
        total = subtotal + sum(cost for cost, _ in billed) + service + gratuity
        total += 0 if self.included else sum(taxes)
        out = {"bill": lines, "subtotal": subtotal, "service": service, "gratuity": gratuity,
               "taxes": taxes, "total": total}
        out.update(self.payments(total), payers=self.payers(lines, price, total, billed))
        return out

    def payments(self, total):
        def part(text, left):
            wanted = half_up(total * share(text)) if text.endswith("%") else Fraction(text)
            return min(wanted, left)

        first = part(self.terms.get("deposit", "0 %"), total)
        second = part(self.terms.get("second deposit", "0 %"), total - first)
        received = sum(Fraction(line["amount"]) for line in self.terms.get("payments", []))
        return {"deposit": first, "second_deposit": second, "balance": total - first - second,
                "due": total - received}

    def payers(self, lines, price, total, billed):
        """Extras with their tax are the client's; the rest follows what guests come to."""
        extras = sum((cost * (1 + (0 if self.included else sum(
            part * self.rates[name] for name, part in parts.items())))
                      for cost, parts in billed), Fraction(0))
        sums = {"the client": price * self.missing()}
        for kind, amount in zip(self.guests, lines):
            payer = self.event.get("paid by", {}).get(kind, "the client")
            sums[payer] = sums.get(payer, Fraction(0)) + amount
        whole = sum(sums.values())
        exact = [(total - extras) * part / whole for part in sums.values()]
        exact[0] += extras
        return dict(zip(sums, apportioned(exact)))
