#!/usr/bin/env python3
"""Puts named bugs back, one at a time, and says which test notices each.

put_back.py --build build/dev [--from N] [--to N] [--list]

Nothing of the project is changed: a copy of its headers has the bug, and the tests of the floor are
compiled against the copy alone, together with the bodies of the bug's floor, without the rest of the
build. What is built already (the libraries and their tables) is linked; a function that both have is
taken from the tests.
"""

import argparse
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

import bugs_of_events
import bugs_of_numbers

BUGS = bugs_of_numbers.BUGS + bugs_of_events.BUGS
ROOT = pathlib.Path(__file__).resolve().parents[2]
TESTS = {
    "number": ["unit/number/*.cpp", "property/numbers.cpp"],
    "yield": ["unit/yield/*.cpp", "property/ladder.cpp"],
    "recipe": ["unit/recipe/*.cpp", "property/scaling.cpp"],
    "costing": ["unit/costing/*.cpp", "property/cost.cpp"],
    "event": ["unit/event/*.cpp", "property/order.cpp"],
    "safety": ["unit/safety/*.cpp"],
}
LIBRARIES = ["-lplatewright_card", "-lplatewright_files", "-lplatewright_book",
             "-lplatewright_core", "-lyaml-cpp",
             "-ldate-tz", "-lutf8proc", "-lrapidcheck"]


def catch_libraries():
    """Version 3 has its own main; version 2 of Debian has it in a library of the old name."""
    names = ["Catch2Main", "Catch2"] if pathlib.Path(
        "/usr/include/catch2/catch_all.hpp").exists() else ["Catch2WithMain"]
    return [f"-l{name}" for name in names]


def compiled(pattern, floor, headers, folder, build):
    """The tests of these files and the floor as one program, or what the compiler says."""
    sources = [ROOT / f"src/core/{floor}.cpp", ROOT / "tests/support/comma_locale.cpp",
               *sorted((ROOT / "tests").glob(pattern))]
    together = folder / "all.cpp"
    together.write_text("".join(f'#include "{path}"\n' for path in sources))
    program = folder / "tests"
    defined = [f'-D{name}="{ROOT / where}"' for name, where in (
        ("UNITS_DATA_DIR", "units-data"), ("YIELDS_DIR", "yields"), ("EXAMPLES_DIR", "examples"))]
    words = ["g++", "-std=c++20", "-O0", "-w", f"-I{headers}", f"-I{build}/generated/include",
             f"-I{ROOT}/tests", f"-I{ROOT}/src", f"-I{ROOT}/src/files", *defined,
             '-DGNU_UNITS=""', str(together), "-o", str(program), f"-L{build}/src", *LIBRARIES,
             *catch_libraries()]
    outcome = subprocess.run(words, capture_output=True, text=True)
    return program, outcome.stderr if outcome.returncode else ""


def error_in(complaint):
    """The first line that says what is wrong."""
    lines = complaint.splitlines()
    return next((line for line in lines if "error" in line or "undefined" in line), lines[0])[:300]


def first_failure(program):
    """The name of the first test that fails; empty where none does."""
    try:
        outcome = subprocess.run([program, "-a", "-r", "console"], capture_output=True, text=True,
                                 timeout=300, env={"RC_PARAMS": "max_success=50"})
    except subprocess.TimeoutExpired:
        return "does not end"
    if outcome.returncode == 0:
        return ""
    found = re.search(r"^-{20,}\n(.+)\n", outcome.stdout, re.MULTILINE)
    return found.group(1) if found else f"ends with {outcome.returncode}"


def text_with(bug):
    """The file that has the bug's line, which is the header or that of its bodies, and its text."""
    _, _, file, right, wrong = bug
    floor, name = file.split("/", 1)
    found = []
    for place in (file, f"{floor}/bodies/{name}"):
        path = ROOT / "include/platewright" / place
        text = path.read_text() if path.exists() else ""
        found += [(place, text.replace(right, wrong))] * text.count(right)
    if len(found) != 1:
        raise SystemExit(f"{bug[0]}: {file} has its line {len(found)} times, not once")
    return found[0]


def put_back(bug, build):
    _, floor, file, _, _ = bug
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        shutil.copytree(ROOT / "include", folder / "include")
        if file:
            place, text = text_with(bug)
            (folder / "include/platewright" / place).write_text(text)
        home = file.split("/")[0] or floor
        for pattern in TESTS[floor]:
            program, complaint = compiled(pattern, home, folder / "include", folder, build)
            if complaint:
                return False, "does not compile: " + error_in(complaint)
            if caught := first_failure(program):
                return True, caught
        return False, ""


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--build", type=pathlib.Path, default=ROOT / "build/dev")
    parser.add_argument("--from", type=int, default=1, dest="first")
    parser.add_argument("--to", type=int, default=len(BUGS), dest="last")
    parser.add_argument("--list", action="store_true")
    options = parser.parse_args()
    for bug in BUGS:
        text_with(bug)
    wanted = list(enumerate(BUGS, 1))[options.first - 1:options.last]
    if options.list:
        for number, bug in wanted:
            print(f"{number:3} {bug[2]}: {bug[0]}")
        return 0
    build = options.build.resolve()
    for floor in sorted({bug[1] for _, bug in wanted}):
        failed, why = put_back(("", floor, "", "", ""), build)
        if failed or why:
            print(f"the tests of {floor} fail without a bug: {why}")
            return 1
    missed = 0
    for number, bug in wanted:
        caught, by = put_back(bug, build)
        missed += not caught
        print(f"{number:3} {'caught' if caught else 'MISSED'}  {bug[0]}: {by}", flush=True)
    print(f"{len(wanted) - missed} of {len(wanted)} caught")
    return 1 if missed else 0


if __name__ == "__main__":
    sys.exit(main())
