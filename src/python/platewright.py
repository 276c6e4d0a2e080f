"""Platewright in Python: recipes scaled and costed, yields, quotes.

    import platewright
    book = platewright.read_book("supper.yaml")
    print(book.quote(guests=96).price)

It calls the C interface of the library; nothing is compiled. Numbers are exact fractions
(`fractions.Fraction`), money is in units of the currency named. What is wrong is raised as `Problem`
with the text that the program prints. Warnings are in `warnings`, those of the book in the book's and
what an answer adds in the answer's: print them, for an allergen that no one stated, or a roast that
comes out below its minimum temperature, is a warning.

The shared object is that of the environment variable PLATEWRIGHT_LIBRARY, else the one that was
installed beside this file, else the system's.
"""

import ctypes
import os
from collections import namedtuple
from ctypes import POINTER, c_char_p, c_double, c_int, c_size_t, c_void_p
from fractions import Fraction
from pathlib import Path

__all__ = ["Amount", "Book", "Cost", "CostLine", "Problem", "Quote", "Scaled", "ScaledLine", "Yield",
           "YieldStep", "read_book", "version", "yield_of"]

_SONAME = "libplatewright_c.so.0"


class Problem(Exception):
    """What the book or the question got wrong: where, what was found, what to do."""


Amount = namedtuple("Amount", "number unit")
Amount.__str__ = lambda amount: f"{amount.number} {amount.unit}"

ScaledLine = namedtuple("ScaledLine", "name part amount at_most start factor")
ScaledLine.__doc__ = "A line at its new size; `amount` is None where it is to taste."
Scaled = namedtuple("Scaled", "recipe factor portions pieces lines warnings")
YieldStep = namedtuple("YieldStep", "stage weight share source")
Yield = namedtuple("Yield", "row yield_ portions to_buy steps warnings")
Yield.__doc__ = "`yield_` is the last weight over the first; `portions` are whole, rounded down."
CostLine = namedtuple("CostLine", "name part used purchased supplier cost")
Cost = namedtuple("Cost", "recipe currency total portions per_portion lines warnings")
Cost.__doc__ = "What is used, not what must be bought in whole packs; nothing is rounded."
Quote = namedtuple("Quote", "event currency guests food cost price subtotal billed service gratuity tax "
                   "total deposit margin margin_share food_share warnings")


# ---- the values of the C interface, in the order of its header

class _Number(ctypes.Structure):
    _fields_ = [("exact", c_char_p), ("nearest", c_double)]


class _Amount(ctypes.Structure):
    _fields_ = [("number", _Number), ("unit", c_char_p)]


class _ScaledLine(ctypes.Structure):
    _fields_ = [("name", c_char_p), ("part", c_char_p), ("amount", _Amount), ("at_most", _Amount),
                ("start", _Amount), ("factor", _Number)]


class _Scaled(ctypes.Structure):
    _fields_ = [("recipe", c_char_p), ("factor", _Number), ("portions", _Number), ("pieces", _Number),
                ("line_count", c_size_t), ("lines", POINTER(_ScaledLine))]


class _YieldStep(ctypes.Structure):
    _fields_ = [("stage", c_char_p), ("weight", _Amount), ("share", _Number), ("source", c_char_p)]


class _Yield(ctypes.Structure):
    _fields_ = [("row", c_char_p), ("yield_", _Number), ("portions", _Number), ("to_buy", _Amount),
                ("step_count", c_size_t), ("steps", POINTER(_YieldStep))]


class _CostLine(ctypes.Structure):
    _fields_ = [("name", c_char_p), ("part", c_char_p), ("used", _Amount), ("purchased", _Amount),
                ("supplier", c_char_p), ("cost", _Number)]


class _Cost(ctypes.Structure):
    _fields_ = [("recipe", c_char_p), ("currency", c_char_p), ("total", _Number), ("portions", _Number),
                ("per_portion", _Number), ("line_count", c_size_t), ("lines", POINTER(_CostLine))]


class _Quote(ctypes.Structure):
    _fields_ = [(name, c_char_p if name in ("event", "currency") else _Number)
                for name in Quote._fields if name != "warnings"]


_ANSWERS = {"scaled": _Scaled, "cost": _Cost, "yield": _Yield, "quote": _Quote}
_DONE, _HAS_PROBLEMS = 0, 1


def _candidates():
    named = os.environ.get("PLATEWRIGHT_LIBRARY")
    if named:
        return [named]
    # PREFIX/lib/python3/dist-packages/platewright.py, and PREFIX/lib/... beside it.
    lib = Path(__file__).resolve().parent.parent.parent
    beside = [str(found) for found in sorted([*lib.glob(_SONAME), *lib.glob("*/" + _SONAME)])]
    return beside + [_SONAME]


def _load():
    tried = []
    for name in _candidates():
        try:
            library = ctypes.CDLL(name)
            break
        except OSError as error:
            tried.append(str(error))
    else:
        raise ImportError("the shared object of platewright is not found: " + "; ".join(tried) +
                          "; name it in PLATEWRIGHT_LIBRARY")
    library.platewright_version.restype = c_char_p
    for name, arguments in {"read_book": [POINTER(c_char_p), c_size_t],
                            "scale_recipe": [c_void_p, c_char_p, c_int, c_char_p],
                            "cost_recipe": [c_void_p, c_char_p, c_int, c_char_p],
                            "ask_yield": [c_void_p, c_char_p, c_char_p, c_char_p, c_char_p],
                            "quote_event": [c_void_p, c_char_p],
                            "book_of": [c_void_p], "free_reply": [c_void_p],
                            "status_of": [c_void_p], "text_of": [c_void_p]}.items():
        function = getattr(library, "platewright_" + name)
        function.argtypes = arguments
        function.restype = {"status_of": c_int, "text_of": c_char_p, "free_reply": None}.get(name, c_void_p)
    for name, answer in _ANSWERS.items():
        function = getattr(library, f"platewright_{name}_of")
        function.argtypes = [c_void_p]
        function.restype = POINTER(answer)
    return library


_library = _load()


class _Reply:
    """One reply, freed with this object. Raises what it says went wrong."""

    def __init__(self, pointer):
        self.pointer = pointer
        status = _library.platewright_status_of(pointer)
        self.text = _library.platewright_text_of(pointer).decode()
        if status == _HAS_PROBLEMS:
            raise Problem(self.text)
        if status != _DONE:
            raise RuntimeError(self.text)

    def __del__(self):
        _library.platewright_free_reply(self.pointer)

    def answer(self, kind):
        return getattr(_library, f"platewright_{kind}_of")(self.pointer).contents


def _bytes(text):
    if text is None:
        return None
    encoded = os.fsencode(text) if isinstance(text, os.PathLike) else str(text).encode("utf-8", "surrogateescape")
    if b"\0" in encoded:
        raise ValueError("a text with a zero byte in it")
    return encoded


def _exact(number):
    """As it is typed: a float is refused, since 0.1 is not a tenth."""
    if isinstance(number, float):
        raise TypeError(f"{number!r} is not exact: write it as text, or as a Fraction")
    return _bytes(number)


def _value(item):
    if isinstance(item, _Number):
        return None if item.exact is None else Fraction(item.exact.decode())
    if isinstance(item, _Amount):
        return None if item.unit is None else Amount(_value(item.number), item.unit.decode())
    return item.decode()


def _plain(kind, structure, **more):
    """The named tuple of a structure: its members by their names, and `more`."""
    there = {name for name, _ in structure._fields_}
    return kind(**{name: _value(getattr(structure, name))
                   for name in kind._fields if name in there and name not in more}, **more)


def _rows(kind, first, count):
    return [_plain(kind, first[i]) for i in range(count)]


def _size(factor, portions, pieces):
    given = [(i, number) for i, number in enumerate((factor, portions, pieces)) if number is not None]
    if len(given) > 1:
        raise TypeError("one of factor, portions and pieces says the size")
    by, number = given[0] if given else (0, 1)
    return by, _exact(number)


class Book:
    """A book that was read and checked; see `read_book`."""

    def __init__(self, reply):
        self._reply = reply
        self._pointer = _library.platewright_book_of(reply.pointer)
        self.warnings = reply.text

    def scale(self, recipe=None, *, factor=None, portions=None, pieces=None):
        """A recipe at a size; the first of the files named where no name is given."""
        by, number = _size(factor, portions, pieces)
        reply = _Reply(_library.platewright_scale_recipe(self._pointer, _bytes(recipe), by, number))
        scaled = reply.answer("scaled")
        return _plain(Scaled, scaled, lines=_rows(ScaledLine, scaled.lines, scaled.line_count),
                      warnings=reply.text)

    def cost(self, recipe=None, *, factor=None, portions=None, pieces=None):
        """What a recipe costs at a size."""
        by, number = _size(factor, portions, pieces)
        reply = _Reply(_library.platewright_cost_recipe(self._pointer, _bytes(recipe), by, number))
        cost = reply.answer("cost")
        return _plain(Cost, cost, lines=_rows(CostLine, cost.lines, cost.line_count), warnings=reply.text)

    def quote(self, *, guests=None):
        """The quote of the book's event, for so many guests of the same mix."""
        reply = _Reply(_library.platewright_quote_event(self._pointer, _exact(guests)))
        return _plain(Quote, reply.answer("quote"), warnings=reply.text)

    def yield_of(self, name, *, buy=None, portion=None, guests=None):
        """As `platewright.yield_of`, with the book's own ingredients and tables."""
        return _yield_of(self._pointer, name, buy, portion, guests)


def read_book(*files):
    """Reads the files of a book and all that they name under `with`."""
    names = (c_char_p * len(files))(*[_bytes(file) for file in files])
    return Book(_Reply(_library.platewright_read_book(names, len(files))))


def yield_of(name, *, buy=None, portion=None, guests=None):
    """A cut, produce or grain of the built-in tables from purchased to served: what the weight `buy`
    comes to and how many portions it serves, or what so many guests need of it. Weights are typed:
    "12 lb"."""
    return _yield_of(None, name, buy, portion, guests)


def _yield_of(book, name, buy, portion, guests):
    reply = _Reply(_library.platewright_ask_yield(book, _bytes(name), _bytes(buy), _bytes(portion),
                                                  _exact(guests)))
    answer = reply.answer("yield")
    return _plain(Yield, answer, steps=_rows(YieldStep, answer.steps, answer.step_count),
                  warnings=reply.text)


def version():
    """As "0.1.0"."""
    return _library.platewright_version().decode()
