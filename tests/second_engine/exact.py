"""Numbers as a book writes them, and roundings, in fractions."""

import math
from fractions import Fraction


def amount(text):
    """`2 1/4 lb` is (9/4, "lb")."""
    *numbers, unit = text.split()
    return sum(map(Fraction, numbers), Fraction(0)), unit


def share(text):
    return Fraction(text[:-1].strip()) / 100 if text.endswith("%") else Fraction(text)


def half_up(value, step=Fraction(1, 100)):
    return math.floor(value / step + Fraction(1, 2)) * step


def up_to(value, step):
    return math.ceil(value / step) * step


def down_to(value, step=Fraction(1, 100)):
    return math.floor(value / step) * step


def apportioned(parts, step=Fraction(1, 100)):
    """Whole steps that sum to the rounded sum: the largest remainders are rounded up."""
    out = [down_to(part, step) for part in parts]
    left = int((half_up(sum(parts), step) - sum(out)) / step)
    order = sorted(range(len(parts)), key=lambda i: (out[i] - parts[i], i))
    for i in order[:left]:
        out[i] += step
    return out
