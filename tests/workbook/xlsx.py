"""Reads the cells of a workbook, and writes it again with some of them changed. Python's own library
alone, so that nothing of the program's is used."""

import re
import zipfile
from xml.etree import ElementTree

MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
RELATIONS = "{http://schemas.openxmlformats.org/officeDocument/2006/relationships}"


class Cell:
    def __init__(self, value, formula):
        self.value, self.formula = value, formula


def parts_of(path):
    with zipfile.ZipFile(path) as archive:
        return {name: archive.read(name) for name in archive.namelist()}


def sheet_files(parts):
    """The part that holds each sheet, by the sheet's name."""
    targets = {relation.get("Id"): relation.get("Target") for relation in
               ElementTree.fromstring(parts["xl/_rels/workbook.xml.rels"])}
    sheets = ElementTree.fromstring(parts["xl/workbook.xml"]).find(f"{MAIN}sheets")
    return {sheet.get("name"): "xl/" + targets[sheet.get(f"{RELATIONS}id")].removeprefix("/xl/")
            for sheet in sheets}


def read(path):
    """Every cell: {sheet: {"F12": Cell}}; numbers are floats, all else is text."""
    parts = parts_of(path)
    strings = []
    if "xl/sharedStrings.xml" in parts:
        for item in ElementTree.fromstring(parts["xl/sharedStrings.xml"]):
            strings.append("".join(text.text or "" for text in item.iter(f"{MAIN}t")))
    book = {}
    for name, part in sheet_files(parts).items():
        book[name] = {}
        for cell in ElementTree.fromstring(parts[part]).iter(f"{MAIN}c"):
            value, formula = cell.find(f"{MAIN}v"), cell.find(f"{MAIN}f")
            kind = cell.get("t", "n")
            content = None if value is None else value.text
            if content is not None:
                content = (strings[int(content)] if kind == "s" else
                           float(content) if kind == "n" else content)
            book[name][cell.get("r")] = Cell(content, None if formula is None else formula.text)
    return book


def write_changed(source, target, changes, drop_figures):
    """The workbook with other numbers in the cells of `changes`, {sheet: {"F12": 9.5}}; with
    `drop_figures` no formula keeps the figure that came with it, so that whoever shows one has
    worked it out."""
    parts = parts_of(source)
    for name, part in sheet_files(parts).items():
        text = parts[part].decode()
        if drop_figures:
            text = re.sub(r"(</f>)<v>[^<]*</v>", r"\1", text)
        for place, number in changes.get(name, {}).items():
            text, count = re.subn(rf'(<c r="{place}"[^>]*><v>)[^<]*(</v>)', rf"\g<1>{number!r}\2",
                                  text)
            if count != 1:
                raise ValueError(f"{name}!{place} is no cell of a number")
        parts[part] = text.encode()
    with zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, content in parts.items():
            archive.writestr(name, content)
